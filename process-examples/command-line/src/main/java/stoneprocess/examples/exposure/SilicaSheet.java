package stoneprocess.examples.exposure;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.exposure.DustControl;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.Silica;
import stoneprocess.core.exposure.SilicaControl;
import stoneprocess.core.exposure.SilicaGap;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.exposure.SilicaVerdict;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.UnitSystem;

/** Grinding held against Table 1 of the silica rule for construction. */
public final class SilicaSheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private final Silica silica = Silica.of(PARAMETERS);
    private final Figures figures;

    /** The sheet in the reader's units. */
    public SilicaSheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /** The text. */
    public String render(SilicaTask task) {
        SilicaControl control = silica.control(task);
        Sheet sheet = new Sheet("Silica dust of grinding");
        sheet.answer(sentence(control.verdict()));
        sheet.rows("Given", given(task));
        if (!control.missing().isEmpty()) {
            sheet.items(
                    "Missing from what Table 1 lists",
                    control.missing().stream().map(gap -> gap(gap, control)).toList());
        }
        sheet.rows(
                "Result",
                List.of(
                        List.of("collector draws at least", neededAirflow(task, control)),
                        List.of("respirator", respirator(control))));
        sheet.items("Limit", List.of("Table 1: " + Sheet.source(control.source()) + "."));
        return sheet.close(
                List.of(
                        "Tool and control as given; what was not given is read as not there, and the place as"
                                + " indoors. Nothing was measured here.",
                        "The published table, rows for walk-behind floor grinders and for hand grinders other than"
                                + " mortar removal. "
                                + Figures.ROUNDING),
                List.of(
                        "Table 1 met means that the listed control is there in full, not that the air is clean.",
                        "It holds only while the control works: water on and no dust in sight, or shroud on the floor"
                                + " and filter whole.",
                        "Marble and limestone are poor in silica, not free of it; granite, sandstone, quartzite and"
                                + " concrete are rich in it.",
                        "Never sweep dry and never blow down: vacuum with a high-efficiency filter, or wash."),
                control.decides());
    }

    private List<List<String>> given(SilicaTask task) {
        List<List<String>> rows = new ArrayList<>();
        boolean floor = task.tool() == GrindingTool.FLOOR_GRINDER;
        rows.add(List.of("tool", floor ? "floor grinder" : "hand grinder"));
        rows.add(List.of("wheel or pad", figures.given(task.wheel())));
        rows.add(List.of("place", task.indoors() ? "indoors or enclosed" : "outdoors"));
        rows.add(List.of("time in the shift", figures.given(task.time())));
        rows.add(List.of("dust control", control(task.control())));
        if (task.control() instanceof DustControl.Collector collector) {
            rows.add(List.of("shroud", known(collector.shroud())));
            rows.add(List.of(
                    "airflow",
                    collector.airflow().cubicMetresPerHour() > 0
                            ? figures.given(collector.airflow())
                            : "not known, read as none"));
            if (floor || collector.makersAirflow().isPresent()) {
                rows.add(List.of(
                        "maker's airflow",
                        collector.makersAirflow().map(figures::given).orElse("not known")));
            }
            rows.add(List.of(
                    "filter",
                    collector.filter().percent() > 0 ? figures.given(collector.filter()) : "not known, read as none"));
            rows.add(List.of("filter cleaning", known(collector.filterCleaning())));
        }
        if (floor || task.hepaBetweenPasses()) {
            rows.add(List.of("vacuum between passes", known(task.hepaBetweenPasses())));
        }
        return rows;
    }

    private static String known(boolean there) {
        return there ? "yes" : "no, or not known";
    }

    private static String control(DustControl control) {
        if (control instanceof DustControl.WaterFed) {
            return "water fed by the tool to the cutting face";
        }
        if (control instanceof DustControl.BucketWater) {
            return "water by bucket, spray or mop";
        }
        return control instanceof DustControl.Collector ? "dry, with a collector" : "dry, with nothing";
    }

    private String neededAirflow(SilicaTask task, SilicaControl control) {
        if (control.neededAirflow().isPresent()) {
            String airflow = figures.atLeast(control.neededAirflow().get());
            return task.tool() == GrindingTool.HAND_GRINDER
                    ? airflow + ", for a wheel of " + figures.given(task.wheel())
                    : airflow + ", as the grinder's maker asks";
        }
        return task.control() instanceof DustControl.Collector
                ? "what the grinder's maker asks for: find it out"
                : "not asked for with this control";
    }

    private String respirator(SilicaControl control) {
        String asked = switch (control.respirator()) {
            case NONE_BY_TABLE_1 -> "none asked for by Table 1";
            case BY_TABLE_1 -> "asked for by Table 1";
            case BY_ASSESSMENT -> "Table 1 does not answer: by the employer's own assessment";
        };
        return asked
                + control.protectionFactor()
                        .map(limit -> ", assigned protection factor of at least "
                                + limit.value().decimal().toPlainString() + ", as dry hand grinding indoors lasts over "
                                + figures.given(PARAMETERS.get("silica.long-task", TimeSpan.class)))
                        .orElse("");
    }

    private static String sentence(SilicaVerdict verdict) {
        return switch (verdict) {
            case TABLE_1_MET -> "TABLE 1 MET: the control is one that it lists, in full.";
            case OWN_ASSESSMENT_NEEDED ->
                "NOT IN TABLE 1: water is used in a way that it does not list. The employer"
                        + " needs an assessment of his own, with measured air, before the work.";
            case TABLE_1_NOT_MET -> "TABLE 1 NOT MET: do not start.";
        };
    }

    private String gap(SilicaGap gap, SilicaControl control) {
        return switch (gap) {
            case WATER_FED_OR_COLLECTOR -> "Water fed by the tool to the cutting face, or a collector.";
            case COLLECTOR -> "A shroud with a collector: for this tool water is listed outdoors only.";
            case SHROUD -> "The shroud and collection system made for the tool.";
            case MAKERS_AIRFLOW -> "The airflow that the grinder's maker asks for is not known.";
            case AIRFLOW ->
                "More airflow"
                        + control.neededAirflow()
                                .map(airflow -> ": at least " + figures.atLeast(airflow))
                                .orElse("")
                        + ".";
            case FILTER ->
                "A filter that holds back " + figures.given(PARAMETERS.get("silica.filter", Share.class)) + " or more.";
            case FILTER_CLEANING -> "Filter cleaning, or for a hand grinder a cyclone before the filter.";
            case HEPA_BETWEEN_PASSES -> "Vacuuming of loose dust between passes, with a high-efficiency filter.";
        };
    }
}
