package stoneprocess.core.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.source.Sources;

/**
 * Silica dust from grinding, by Table 1 of 29 CFR 1926.1153(c): the rows for hand grinders other than for mortar
 * removal, and for walk-behind floor grinders. Says whether a listed control is complete, never that the air is clean.
 * Stone low in silica is not free of it. Immutable and safe to share between threads.
 */
public final class Silica {
    private static final String TABLE_1 = "29-CFR-1926.1153";

    private final Parameters parameters;

    private Silica(Parameters parameters) {
        this.parameters = parameters;
    }

    /**
     * Reads its limits from the parameters named {@code silica.}. A house may make them stricter than the table but
     * never looser, see {@link stoneprocess.core.parameter.HouseBound}. So a control that meets them meets the table.
     */
    public static Silica of(Parameters parameters) {
        return new Silica(Objects.requireNonNull(parameters, "parameters"));
    }

    /**
     * Airflow that a hand grinder's collector has to draw: 25 cfm for every inch of wheel diameter, in proportion. The
     * airflow for one inch is rounded to 0.001 cfm, so that exactly 125 cfm is enough for a wheel of 5 inches.
     *
     * @param wheel diameter of the wheel
     */
    public Airflow handGrinderAirflow(Length wheel) {
        BigDecimal perInch = parameters
                .get("silica.airflow-per-inch", Airflow.class)
                .in(Unit.CUBIC_FOOT_PER_MINUTE)
                .setScale(3, RoundingMode.HALF_EVEN);
        double cubicFeetPerMinute = wheel.in(Unit.INCH).multiply(perInch).doubleValue();
        return Airflow.of(cubicFeetPerMinute, Unit.CUBIC_FOOT_PER_MINUTE);
    }

    /**
     * Compares a task with the table.
     *
     * <p>Floor grinder: water fed to the cutting face; or a collector with the maker's airflow, a filter of 99 % or
     * better and filter cleaning, and indoors a high-efficiency vacuum between passes. Hand grinder: water fed,
     * outdoors only; or a shroud and a collector with 25 cfm an inch, the same filter, and filter cleaning or a
     * cyclone. Dry hand grinding indoors for more than 4 h also needs a respirator of protection factor 10. Bucket
     * water, and wet hand grinding indoors, are not listed and need the employer's own assessment.
     *
     * <p>Stricter house numbers may give "not met" for a control that the table itself accepts. "Met" and "no
     * respirator" are given only where the table's own conditions hold.
     */
    public SilicaControl control(SilicaTask task) {
        boolean hand = task.tool() == GrindingTool.HAND_GRINDER;
        DustControl control = task.control();
        List<SilicaGap> missing;
        boolean wet = true;
        if (control instanceof DustControl.WaterFed) {
            missing = hand && task.indoors() ? List.of(SilicaGap.COLLECTOR) : List.of();
        } else if (control instanceof DustControl.Collector collector) {
            wet = false;
            missing = missing(task, collector);
        } else {
            wet = control instanceof DustControl.BucketWater;
            missing = List.of(hand && task.indoors() ? SilicaGap.COLLECTOR : SilicaGap.WATER_FED_OR_COLLECTOR);
        }
        SilicaVerdict verdict = SilicaVerdict.TABLE_1_MET;
        if (!missing.isEmpty()) {
            verdict = wet ? SilicaVerdict.OWN_ASSESSMENT_NEEDED : SilicaVerdict.TABLE_1_NOT_MET;
        }
        RespiratorNeed respirator = respirator(task, verdict);
        Optional<Limit<Count>> factor = respirator == RespiratorNeed.BY_TABLE_1
                ? Optional.of(Limit.of(parameters, "silica.protection-factor", Count.class, Role.COMPETENT_PERSON))
                : Optional.empty();
        return new SilicaControl(
                verdict,
                missing,
                neededAirflow(task),
                respirator,
                factor,
                Sources.standard().get(TABLE_1),
                Role.COMPETENT_PERSON);
    }

    private List<SilicaGap> missing(SilicaTask task, DustControl.Collector collector) {
        List<SilicaGap> missing = new ArrayList<>();
        if (!collector.shroud()) {
            missing.add(SilicaGap.SHROUD);
        }
        Optional<Airflow> needed = neededAirflow(task);
        if (needed.isEmpty()) {
            missing.add(SilicaGap.MAKERS_AIRFLOW);
        } else if (collector.airflow().compareTo(needed.get()) < 0) {
            missing.add(SilicaGap.AIRFLOW);
        }
        if (collector.filter().compareTo(parameters.get("silica.filter", Share.class)) < 0) {
            missing.add(SilicaGap.FILTER);
        }
        if (!collector.filterCleaning()) {
            missing.add(SilicaGap.FILTER_CLEANING);
        }
        if (task.tool() == GrindingTool.FLOOR_GRINDER && task.indoors() && !task.hepaBetweenPasses()) {
            missing.add(SilicaGap.HEPA_BETWEEN_PASSES);
        }
        return missing;
    }

    private Optional<Airflow> neededAirflow(SilicaTask task) {
        if (task.tool() == GrindingTool.HAND_GRINDER) {
            return Optional.of(handGrinderAirflow(task.wheel()));
        }
        return task.control() instanceof DustControl.Collector collector ? collector.makersAirflow() : Optional.empty();
    }

    private RespiratorNeed respirator(SilicaTask task, SilicaVerdict verdict) {
        if (verdict != SilicaVerdict.TABLE_1_MET) {
            return RespiratorNeed.BY_ASSESSMENT;
        }
        boolean dryByHandIndoors = task.tool() == GrindingTool.HAND_GRINDER
                && task.indoors()
                && task.control() instanceof DustControl.Collector;
        boolean isLong = task.time().compareTo(parameters.get("silica.long-task", TimeSpan.class)) > 0;
        return dryByHandIndoors && isLong ? RespiratorNeed.BY_TABLE_1 : RespiratorNeed.NONE_BY_TABLE_1;
    }
}
