package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/** Silica control against table 1 of 29 CFR 1926.1153(c), rows for hand grinders and for walk-behind floor grinders. */
class SilicaValidationTest {
    private final Silica silica = Silica.of(Parameters.standard());

    /** 25 cfm or more for each inch of wheel diameter. */
    @ParameterizedTest
    @CsvSource({"1, 25", "4, 100", "4.5, 112.5", "5, 125", "7, 175"})
    void a_hand_grinder_needs_25_cfm_for_each_inch_of_wheel(double inches, double cfm) {
        Airflow needed = silica.handGrinderAirflow(Length.of(inches, Unit.INCH));
        assertThat(needed.in(Unit.CUBIC_FOOT_PER_MINUTE).doubleValue()).isCloseTo(cfm, Offset.offset(1e-3));
    }

    /** Hand grinder with shroud and collector: none outdoors; indoors none up to 4 h, protection factor 10 above. */
    @ParameterizedTest
    @CsvSource({
        "false, 4, NONE_BY_TABLE_1", "false, 8, NONE_BY_TABLE_1", "true, 1, NONE_BY_TABLE_1",
        "true, 4, NONE_BY_TABLE_1", "true, 4.01, BY_TABLE_1", "true, 8, BY_TABLE_1"
    })
    void a_dry_hand_grinder_indoors_for_over_4_hours_needs_a_respirator(
            boolean indoors, double hours, RespiratorNeed need) {
        SilicaControl control =
                silica.control(task(GrindingTool.HAND_GRINDER, collector(99, 125), indoors, hours, true));
        assertThat(control.verdict()).isEqualTo(SilicaVerdict.TABLE_1_MET);
        assertThat(control.respirator()).isEqualTo(need);
        assertThat(control.protectionFactor().map(Limit::value))
                .isEqualTo(need == RespiratorNeed.BY_TABLE_1 ? Optional.of(new Count(10)) : Optional.empty());
    }

    /** Hand grinder with integrated water delivery: listed for tasks outdoors only, without respirator. */
    @Test
    void a_wet_hand_grinder_is_listed_outdoors_only() {
        SilicaControl outdoors =
                silica.control(task(GrindingTool.HAND_GRINDER, new DustControl.WaterFed(), false, 8, false));
        assertThat(outdoors.verdict()).isEqualTo(SilicaVerdict.TABLE_1_MET);
        assertThat(outdoors.respirator()).isEqualTo(RespiratorNeed.NONE_BY_TABLE_1);
        SilicaControl indoors =
                silica.control(task(GrindingTool.HAND_GRINDER, new DustControl.WaterFed(), true, 1, true));
        assertThat(indoors.verdict()).isEqualTo(SilicaVerdict.OWN_ASSESSMENT_NEEDED);
        assertThat(indoors.respirator()).isEqualTo(RespiratorNeed.BY_ASSESSMENT);
    }

    /** Floor grinder with water fed to the cutting surface: no respirator, in or out, however long. */
    @ParameterizedTest
    @CsvSource({"true, 8", "false, 8", "true, 1"})
    void a_floor_grinder_with_water_at_the_cutting_face_needs_no_respirator(boolean indoors, double hours) {
        SilicaControl control =
                silica.control(task(GrindingTool.FLOOR_GRINDER, new DustControl.WaterFed(), indoors, hours, false));
        assertThat(control.verdict()).isEqualTo(SilicaVerdict.TABLE_1_MET);
        assertThat(control.respirator()).isEqualTo(RespiratorNeed.NONE_BY_TABLE_1);
        assertThat(control.missing()).isEmpty();
    }

    /** Floor grinder with collector: the maker's airflow, filter 99 %, filter cleaning, indoors a HEPA vacuum between. */
    @ParameterizedTest
    @CsvSource({
        "true, true, 99, 500, TABLE_1_MET", "true, false, 99, 500, TABLE_1_NOT_MET",
        "false, false, 99, 500, TABLE_1_MET", "true, true, 98.9, 500, TABLE_1_NOT_MET",
        "true, true, 99, 499, TABLE_1_NOT_MET", "true, true, 99.97, 600, TABLE_1_MET"
    })
    void a_dry_floor_grinder_needs_airflow_filter_and_a_vacuum_between_passes(
            boolean indoors, boolean vacuum, double filter, double airflow, SilicaVerdict verdict) {
        SilicaControl control =
                silica.control(task(GrindingTool.FLOOR_GRINDER, collector(filter, airflow), indoors, 8, vacuum));
        assertThat(control.verdict()).isEqualTo(verdict);
        assertThat(control.neededAirflow()).contains(Airflow.of(500, Unit.CUBIC_FOOT_PER_MINUTE));
        assertThat(control.respirator() == RespiratorNeed.NONE_BY_TABLE_1)
                .isEqualTo(verdict == SilicaVerdict.TABLE_1_MET);
    }

    /**
     * Whatever a house may set, what is said in the table's name holds by the table: 25 cfm an inch, 99 %, 4 h and
     * protection factor 10 stand here as the regulation has them.
     */
    @Property(seed = "1955")
    void house_numbers_never_win_a_claim_that_the_table_does_not_give(
            @ForAll @DoubleRange(min = 20, max = 40) double cfmAnInch,
            @ForAll @DoubleRange(min = 98, max = 100) double houseFilter,
            @ForAll @DoubleRange(min = 0.5, max = 6) double longTask,
            @ForAll @IntRange(min = 5, max = 50) int factor,
            @ForAll @DoubleRange(min = 98, max = 100) double filter,
            @ForAll @DoubleRange(min = 80, max = 250) double cfm,
            @ForAll @DoubleRange(min = 0.5, max = 8) double hours) {
        Parameters house = Parameters.standard();
        house = set(
                house, "silica.airflow-per-inch", Airflow.of(cfmAnInch, Unit.CUBIC_FOOT_PER_MINUTE), cfmAnInch >= 25);
        house = set(house, "silica.filter", new Share(houseFilter), new Share(houseFilter).percent() >= 99);
        TimeSpan limit = TimeSpan.of(longTask, Unit.HOUR);
        house = set(house, "silica.long-task", limit, limit.minutes() <= 240);
        house = set(house, "silica.protection-factor", new Count(factor), factor >= 10);
        SilicaControl control =
                Silica.of(house).control(task(GrindingTool.HAND_GRINDER, collector(filter, cfm), true, hours, true));
        if (control.verdict() == SilicaVerdict.TABLE_1_MET) {
            assertThat(new Share(filter).percent()).isGreaterThanOrEqualTo(99);
            assertThat(cfm).isGreaterThanOrEqualTo(125 - 1e-2);
        }
        if (control.respirator() == RespiratorNeed.NONE_BY_TABLE_1) {
            assertThat(hours).isLessThanOrEqualTo(4 + 1e-5);
        }
        assertThat(control.protectionFactor().map(Limit::value).orElse(new Count(10)))
                .isGreaterThanOrEqualTo(new Count(10));
    }

    /** The set with the number, where the table is kept; otherwise the number has to be refused. */
    private static Parameters set(Parameters parameters, String name, Quantity value, boolean asStrict) {
        if (asStrict || value.equals(Parameters.standard().parameter(name).value())) {
            return parameters.with(name, value);
        }
        assertThatThrownBy(() -> parameters.with(name, value))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(name + ": ");
        return parameters;
    }

    private static DustControl collector(double filter, double cfm) {
        return new DustControl.Collector(
                true,
                Airflow.of(cfm, Unit.CUBIC_FOOT_PER_MINUTE),
                Optional.of(Airflow.of(500, Unit.CUBIC_FOOT_PER_MINUTE)),
                new Share(filter),
                true);
    }

    /** The wheel is 5 inches. */
    private static SilicaTask task(
            GrindingTool tool, DustControl control, boolean indoors, double hours, boolean vacuum) {
        return new SilicaTask(tool, control, Length.of(5, Unit.INCH), indoors, TimeSpan.of(hours, Unit.HOUR), vacuum);
    }
}
