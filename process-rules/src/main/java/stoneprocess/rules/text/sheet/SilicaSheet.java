package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import stoneprocess.core.exposure.DustControl;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.Silica;
import stoneprocess.core.exposure.SilicaControl;
import stoneprocess.core.exposure.SilicaGap;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** Grinding held against Table 1 of the silica rule for construction. */
final class SilicaSheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private SilicaSheet() {}

    static Document of(SilicaTask task) {
        SilicaControl control = Silica.of(PARAMETERS).control(task);
        Draft draft = ExposureWords.sheet("silica.title").paragraph(verdict(control));
        given(draft, task);
        draft.list("silica.missing", control.missing(), gap -> gap(gap, control))
                .section("exposure.result")
                .row("silica.collector-draws", neededAirflow(task, control))
                .row("silica.respirator", respirator(control))
                .section("exposure.limit")
                .bullet(phrase("silica.limit").with("source", source(control.source())))
                .section("exposure.rests-on")
                .bullets("silica.rests.given", "silica.rests.table")
                .section("exposure.cautions")
                .bullets("silica.caution.listed", "silica.caution.works")
                .bullets("silica.caution.stones", "silica.caution.sweep");
        return ExposureWords.decidedBy(draft, control.decides());
    }

    /** The verdict; a respirator that the table requires is part of it. */
    private static Wording verdict(SilicaControl control) {
        return control.protectionFactor()
                .<Wording>map(factor -> phrase("silica.met-with-respirator")
                        .with("factor", Wording.number(factor.value().decimal())))
                .orElseGet(() -> Wording.of(control.verdict()));
    }

    private static void given(Draft draft, SilicaTask task) {
        boolean floor = task.tool() == GrindingTool.FLOOR_GRINDER;
        draft.section("exposure.given")
                .row("silica.tool", Wording.of(task.tool()))
                .row("silica.wheel", ExposureWords.given(task.wheel()))
                .row("silica.place", phrase(task.indoors() ? "silica.indoors" : "silica.outdoors"))
                .row("silica.time", ExposureWords.given(task.time()))
                .row("silica.control", control(task.control()));
        if (task.control() instanceof DustControl.Collector collector) {
            draft.row("silica.shroud", known(collector.shroud())).row("silica.airflow", orNone(collector.airflow()));
            if (floor || collector.makersAirflow().isPresent()) {
                Wording makers =
                        collector.makersAirflow().map(ExposureWords::given).orElseGet(() -> phrase("silica.not-known"));
                draft.row("silica.makers-airflow", makers);
            }
            draft.row("silica.filter", orNone(collector.filter()))
                    .row("silica.filter-cleaning", known(collector.filterCleaning()));
        }
        if (floor || task.hepaBetweenPasses()) {
            draft.row("silica.vacuum-between", known(task.hepaBetweenPasses()));
        }
    }

    private static Wording orNone(Quantity ofCollector) {
        return ofCollector.decimal().signum() > 0 ? ExposureWords.given(ofCollector) : phrase("silica.read-as-none");
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
        boolean byHand = task.tool() == GrindingTool.HAND_GRINDER;
        boolean collected = task.control() instanceof DustControl.Collector;
        return control.neededAirflow()
                .map(ExposureWords::given)
                .map(airflow -> byHand
                        ? phrase("silica.needed-for-wheel")
                                .with("airflow", airflow)
                                .with("wheel", ExposureWords.given(task.wheel()))
                        : phrase("silica.needed-by-maker").with("airflow", airflow))
                .orElseGet(() -> phrase(collected ? "silica.needed-not-known" : "silica.needed-not-asked"));
    }

    private static Wording respirator(SilicaControl control) {
        Wording asked = Wording.of(control.respirator());
        return control.protectionFactor()
                .<Wording>map(limit -> phrase("silica.respirator-factor")
                        .with("asked", asked)
                        .with("factor", Wording.number(limit.value().decimal()))
                        .with("time", ExposureWords.given(PARAMETERS.get("silica.long-task", TimeSpan.class))))
                .orElse(asked);
    }

    private static Wording gap(SilicaGap gap, SilicaControl control) {
        return switch (gap) {
            case AIRFLOW ->
                control.neededAirflow()
                        .map(ExposureWords::given)
                        .map(airflow -> phrase("silica.gap-of-airflow").with("airflow", airflow))
                        .orElseGet(() -> Wording.of(gap));
            case FILTER ->
                Wording.of(gap).with("filter", ExposureWords.given(PARAMETERS.get("silica.filter", Share.class)));
            default -> Wording.of(gap);
        };
    }
}
