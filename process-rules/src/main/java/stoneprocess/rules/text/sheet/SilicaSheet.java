package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.row;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.exposure.DustControl;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.Silica;
import stoneprocess.core.exposure.SilicaControl;
import stoneprocess.core.exposure.SilicaGap;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** Grinding held against Table 1 of the silica rule for construction. */
final class SilicaSheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private static final Silica SILICA = Silica.of(PARAMETERS);

    private SilicaSheet() {}

    static Document of(SilicaTask task) {
        SilicaControl control = SILICA.control(task);
        Draft draft = ExposureWords.sheet("silica.title").paragraph(verdict(control));
        ExposureWords.given(draft, rows(task));
        if (!control.missing().isEmpty()) {
            ExposureWords.items(
                    draft,
                    "silica.missing",
                    control.missing().stream().map(gap -> gap(gap, control)).toList());
        }
        ExposureWords.result(
                draft,
                List.of(
                        row("silica.collector-draws", neededAirflow(task, control)),
                        row("silica.respirator", respirator(control))));
        ExposureWords.limit(draft, phrase("silica.limit").with("source", source(control.source())));
        return ExposureWords.close(
                draft,
                List.of(phrase("silica.rests.given"), phrase("silica.rests.table")),
                List.of(
                        phrase("silica.caution.listed"),
                        phrase("silica.caution.works"),
                        phrase("silica.caution.stones"),
                        phrase("silica.caution.sweep")),
                control.decides());
    }

    /** The verdict; a respirator that the table requires is part of it. */
    private static Wording verdict(SilicaControl control) {
        return control.protectionFactor()
                .<Wording>map(factor -> phrase("silica.met-with-respirator")
                        .with("factor", Wording.number(factor.value().decimal())))
                .orElseGet(() -> Wording.of(control.verdict()));
    }

    private static List<List<Wording>> rows(SilicaTask task) {
        List<List<Wording>> rows = new ArrayList<>();
        boolean floor = task.tool() == GrindingTool.FLOOR_GRINDER;
        rows.add(row("silica.tool", Wording.of(task.tool())));
        rows.add(row("silica.wheel", given(task.wheel())));
        rows.add(row("silica.place", phrase(task.indoors() ? "silica.indoors" : "silica.outdoors")));
        rows.add(row("silica.time", given(task.time())));
        rows.add(row("silica.control", control(task.control())));
        if (task.control() instanceof DustControl.Collector collector) {
            rows.add(row("silica.shroud", known(collector.shroud())));
            rows.add(row(
                    "silica.airflow",
                    collector.airflow().cubicMetresPerHour() > 0
                            ? given(collector.airflow())
                            : phrase("silica.read-as-none")));
            if (floor || collector.makersAirflow().isPresent()) {
                rows.add(row(
                        "silica.makers-airflow",
                        collector
                                .makersAirflow()
                                .map(ExposureWords::given)
                                .orElseGet(() -> phrase("silica.not-known"))));
            }
            rows.add(row(
                    "silica.filter",
                    collector.filter().percent() > 0 ? given(collector.filter()) : phrase("silica.read-as-none")));
            rows.add(row("silica.filter-cleaning", known(collector.filterCleaning())));
        }
        if (floor || task.hepaBetweenPasses()) {
            rows.add(row("silica.vacuum-between", known(task.hepaBetweenPasses())));
        }
        return rows;
    }

    private static Wording known(boolean there) {
        return phrase(there ? "silica.yes" : "silica.no");
    }

    private static Wording control(DustControl control) {
        if (control instanceof DustControl.WaterFed) {
            return phrase("silica.water-fed");
        }
        if (control instanceof DustControl.BucketWater) {
            return phrase("silica.bucket-water");
        }
        return phrase(control instanceof DustControl.Collector ? "silica.with-collector" : "silica.with-nothing");
    }

    private static Wording neededAirflow(SilicaTask task, SilicaControl control) {
        if (control.neededAirflow().isPresent()) {
            Wording.Phrase needed = phrase(
                            task.tool() == GrindingTool.HAND_GRINDER
                                    ? "silica.needed-for-wheel"
                                    : "silica.needed-by-maker")
                    .with("airflow", given(control.neededAirflow().get()));
            return task.tool() == GrindingTool.HAND_GRINDER ? needed.with("wheel", given(task.wheel())) : needed;
        }
        return phrase(
                task.control() instanceof DustControl.Collector
                        ? "silica.needed-not-known"
                        : "silica.needed-not-asked");
    }

    private static Wording respirator(SilicaControl control) {
        Wording asked = Wording.of(control.respirator());
        return control.protectionFactor()
                .<Wording>map(limit -> phrase("silica.respirator-factor")
                        .with("asked", asked)
                        .with("factor", Wording.number(limit.value().decimal()))
                        .with("time", given(PARAMETERS.get("silica.long-task", TimeSpan.class))))
                .orElse(asked);
    }

    private static Wording gap(SilicaGap gap, SilicaControl control) {
        return switch (gap) {
            case AIRFLOW ->
                control.neededAirflow()
                        .map(airflow -> phrase("silica.gap-of-airflow").with("airflow", given(airflow)))
                        .orElseGet(() -> Wording.of(gap));
            case FILTER -> Wording.of(gap).with("filter", given(PARAMETERS.get("silica.filter", Share.class)));
            default -> Wording.of(gap);
        };
    }
}
