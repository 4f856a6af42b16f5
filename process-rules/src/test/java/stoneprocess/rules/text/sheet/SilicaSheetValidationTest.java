package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.exposure.DustControl;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.rules.text.document.Texts;

/** What the sheet of silica prints against table 1 of 29 CFR 1926.1153(c). */
class SilicaSheetValidationTest {
    /** 25 cfm or more for each inch of wheel diameter. */
    @ParameterizedTest
    @CsvSource({"4, 100 cfm", "4.5, 112.5 cfm", "5, 125 cfm", "7, 175 cfm"})
    void a_hand_grinder_needs_25_cfm_for_each_inch_of_wheel(double inches, String airflow) {
        String sheet = sheet(GrindingTool.HAND_GRINDER, collector(99, 10), inches, true, 2, false);
        assertThat(Printed.row(sheet, "extractor draws at least").get(0)).startsWith(airflow + ", for a wheel");
        assertThat(sheet).contains("TABLE 1 NOT MET: do not start.").contains("More airflow: at least " + airflow);
    }

    /** Hand grinder with shroud and collector indoors: protection factor 10 over 4 h, none up to 4 h. */
    @ParameterizedTest
    @CsvSource({"4, none required by Table 1", "4.5, assigned protection factor of at least 10"})
    void dry_hand_grinding_indoors_for_over_4_hours_needs_a_respirator(double hours, String need) {
        String sheet = sheet(GrindingTool.HAND_GRINDER, collector(99, 125), 5, true, hours, false);
        assertThat(sheet).contains("TABLE 1 MET").doesNotContain("Missing");
        assertThat(Printed.row(sheet, "respirator").get(0)).contains(need);
    }

    /** Hand grinder with water: listed for tasks outdoors only. Floor grinder with water at the cutting face: always. */
    @Test
    void water_at_the_cutting_face_is_enough_for_a_floor_grinder_and_for_a_hand_grinder_outdoors_only() {
        DustControl water = new DustControl.WaterFed();
        assertThat(sheet(GrindingTool.FLOOR_GRINDER, water, 20, true, 8, false)).contains("TABLE 1 MET");
        assertThat(sheet(GrindingTool.HAND_GRINDER, water, 5, false, 8, false)).contains("TABLE 1 MET");
        String indoors = sheet(GrindingTool.HAND_GRINDER, water, 5, true, 1, false);
        assertThat(indoors)
                .contains("NOT IN TABLE 1")
                .contains("A shroud with a dust extractor: for this tool, water is listed outdoors only.");
        assertThat(Printed.row(indoors, "respirator").get(0)).contains("the employer's own assessment");
    }

    /** Only an integrated water delivery system is listed: a bucket is not, and dry with nothing is not. */
    @Test
    void a_bucket_is_no_listed_control_and_nothing_is_none() {
        String bucket = sheet(GrindingTool.FLOOR_GRINDER, new DustControl.BucketWater(), 20, true, 8, false);
        assertThat(bucket)
                .contains("NOT IN TABLE 1")
                .contains("Water fed by the tool to the cutting face, or a dust extractor.");
        assertThat(sheet(GrindingTool.FLOOR_GRINDER, new DustControl.Nothing(), 20, true, 8, false))
                .contains("TABLE 1 NOT MET: do not start.");
    }

    /** Floor grinder with collector: maker's airflow, filter of 99 %, filter cleaning, indoors a vacuum between passes. */
    @Test
    void all_that_a_dry_floor_grinder_lacks_is_named() {
        DustControl poor = new DustControl.Collector(false, new Airflow(0), Optional.empty(), new Share(0), false);
        String sheet = sheet(GrindingTool.FLOOR_GRINDER, poor, 20, true, 8, false);
        assertThat(sheet)
                .contains("The shroud and collection system made for the tool.")
                .contains("The airflow that the grinder's manufacturer requires is not known.")
                .contains("A filter that retains 99 % or more.")
                .contains("Filter cleaning")
                .contains("Vacuuming of loose dust between passes");
        assertThat(Printed.row(sheet, "airflow")).containsExactly("not known, taken as none");
        String full = sheet(GrindingTool.FLOOR_GRINDER, collector(99, 500), 20, true, 8, true);
        assertThat(full).contains("TABLE 1 MET").doesNotContain("Missing");
        assertThat(Printed.row(full, "extractor draws at least"))
                .containsExactly("500 cfm, as the grinder's manufacturer requires");
    }

    @Test
    void source_and_decider_are_printed() {
        assertThat(Printed.joined(sheet(GrindingTool.FLOOR_GRINDER, new DustControl.WaterFed(), 20, true, 8, false)))
                .contains("Table 1: US OSHA, 29 CFR 1926.1153")
                .contains("An occupational hygienist; on the job the employer's competent person")
                .contains("not that the air is clean");
    }

    private static DustControl collector(double filter, double cfm) {
        return new DustControl.Collector(
                true,
                Airflow.of(cfm, Unit.CUBIC_FOOT_PER_MINUTE),
                Optional.of(Airflow.of(500, Unit.CUBIC_FOOT_PER_MINUTE)),
                new Share(filter),
                true);
    }

    private static String sheet(
            GrindingTool tool, DustControl control, double inches, boolean indoors, double hours, boolean vacuum) {
        return Texts.english()
                .in(UnitSystem.US)
                .page(SilicaSheet.of(new SilicaTask(
                        tool, control, Length.of(inches, Unit.INCH), indoors, TimeSpan.of(hours, Unit.HOUR), vacuum)));
    }
}
