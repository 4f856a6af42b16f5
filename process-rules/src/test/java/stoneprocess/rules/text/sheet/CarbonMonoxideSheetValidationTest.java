package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.exposure.RoomAir;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.quantity.Volume;
import stoneprocess.rules.text.document.Texts;

/**
 * What the sheet of carbon monoxide prints against the model study of a 5-hp petrol concrete saw in a room of 2,332
 * cubic feet by Earnest and others of NIOSH (AIHA Journal 58, 787, 1997), with 836 cfm of fresh air, and against the
 * limits of NIOSH and of 29 CFR 1910.1000.
 */
class CarbonMonoxideSheetValidationTest {
    private static final Texts US = Texts.english().in(UnitSystem.US);

    /** The study: nearly 5000 cfm, 120 air changes an hour, would have been needed to stay under 200 ppm. */
    @Test
    void a_five_horsepower_engine_needs_about_5000_cfm() {
        String sheet = US.page(
                CarbonMonoxideSheet.ofEngine(room(836), Power.of(5, Unit.HORSEPOWER), TimeSpan.of(1, Unit.HOUR)));
        var ceiling = Printed.row(sheet, "NIOSH, never over 200 ppm");
        assertThat(ceiling.get(0)).endsWith(" cfm");
        assertThat(Printed.number(ceiling.get(0))).isCloseTo(5000, Offset.offset(250.0));
        assertThat(ceiling.get(1)).endsWith(" s");
        assertThat(3600 / Printed.number(ceiling.get(1))).isCloseTo(120, Offset.offset(10.0));
        assertThat(Printed.row(sheet, "engine").get(0)).startsWith("5 hp of a small four-stroke petrol engine");
        assertThat(sheet).contains("OVER THE CEILING");
    }

    /** 0.818 cfm of the study into 836 cfm settle at 0.818/836, which is 978 ppm; 21.5 changes in the hour get there. */
    @Test
    void the_gas_measured_in_the_study_settles_where_gas_over_air_says() {
        Airflow measured = Airflow.of(0.818, Unit.CUBIC_FOOT_PER_MINUTE);
        String sheet = US.page(CarbonMonoxideSheet.ofSource(room(836), measured, TimeSpan.of(1, Unit.HOUR)));
        assertThat(Printed.number(Printed.row(sheet, "air when it stops").get(0)))
                .isCloseTo(1e6 * 0.818 / 836, Offset.offset(1.0));
        assertThat(Printed.joined(sheet)).contains("Gas from the engine: as given.");
    }

    /** Airing is the logarithm of the excess: one change of 2,332 cubic feet by 836 cfm takes 2.79 min. */
    @Test
    void airing_takes_as_long_as_the_balance_says() {
        Airflow measured = Airflow.of(0.818, Unit.CUBIC_FOOT_PER_MINUTE);
        String sheet = US.page(CarbonMonoxideSheet.ofSource(room(836), measured, TimeSpan.of(1, Unit.HOUR)));
        double minutes = 2332.0 / 836 * Math.log(1e6 * 0.818 / 836 / 35);
        assertThat(Printed.number(
                        Printed.row(sheet, "NIOSH, mean over 8 h 35 ppm").get(2)))
                .isCloseTo(minutes, Offset.offset(0.02));
    }

    /** NIOSH 96-118: however small the source and large the air, nothing clears an engine indoors. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 0.01, 1, 10})
    void no_sheet_clears_an_engine(double cubicMetresPerHour) {
        String sheet = US.page(
                CarbonMonoxideSheet.ofSource(room(5000), new Airflow(cubicMetresPerHour), TimeSpan.of(1, Unit.HOUR)));
        assertThat(sheet)
                .contains("NOT CLEARED: no calculation clears an engine indoors.")
                .doesNotContain("within", "WITHIN", "safe to", "allowed");
        assertThat(Printed.joined(sheet))
                .contains("Open doors and fans do not guarantee safety.")
                .contains("it is worse at the machine")
                .contains("wear an alarm throughout")
                .contains("An occupational hygienist");
    }

    /** Without fresh air nothing is aired, and the sheet says so. */
    @Test
    void a_closed_room_is_never_aired() {
        String sheet =
                US.page(CarbonMonoxideSheet.ofEngine(room(0), Power.of(5, Unit.HORSEPOWER), TimeSpan.of(1, Unit.HOUR)));
        assertThat(Printed.row(sheet, "fresh air")).containsExactly("none known");
        assertThat(Printed.row(sheet, "OSHA, mean over 8 h 50 ppm").get(2)).isEqualTo("not possible with this air");
    }

    /** NIOSH 35 ppm and 200 ppm, 29 CFR 1910.1000 table Z-1 50 ppm; 40 CFR 90.103 519 g for a kilowatt-hour. */
    @Test
    void limits_and_emission_are_printed_with_their_sources() {
        String sheet = US.page(
                CarbonMonoxideSheet.ofEngine(room(836), Power.of(5, Unit.HORSEPOWER), TimeSpan.of(1, Unit.HOUR)));
        assertThat(Printed.joined(sheet))
                .contains("NIOSH, never over 200 ppm: US NIOSH")
                .contains("NIOSH, mean over 8 h 35 ppm: US NIOSH")
                .contains("OSHA, mean over 8 h 50 ppm: US OSHA, 29 CFR 1910.1000")
                .contains("0.519 kg for each kilowatt-hour, an emission standard (US EPA, 40 CFR 90.103");
    }

    private static RoomAir room(double cfm) {
        return new RoomAir(
                Volume.of(2332, Unit.CUBIC_FOOT), Airflow.of(cfm, Unit.CUBIC_FOOT_PER_MINUTE), new Concentration(0));
    }
}
