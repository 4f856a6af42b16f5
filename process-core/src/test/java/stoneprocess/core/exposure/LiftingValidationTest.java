package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Unit;

/**
 * The revised lifting equation against the Applications Manual of NIOSH, publication 94-110. Load constant, equation and
 * the table of asymmetry were read; the other tables of multipliers are from memory.
 */
class LiftingValidationTest {
    private static final Offset<Double> TWO_DIGITS = Offset.offset(0.0051);

    private final Lifting lifting = Lifting.of(Parameters.standard());

    /** Load constant 23 kg, which the manual also gives as 51 lb: the best lift there is. */
    @Test
    void the_best_lift_may_weigh_23_kilograms() {
        LiftingLimit best = lifting.limit(Lifts.BEST.lift());
        assertThat(best.recommended()).isEqualTo(new Mass(23));
        assertThat(best.recommended().in(Unit.POUND).doubleValue()).isCloseTo(51, Offset.offset(0.5));
        assertThat(best.limit().sourceId()).isEqualTo("NIOSH-94-110");
        assertThat(best.limit().decides()).isEqualTo(Role.ERGONOMIST);
    }

    @ParameterizedTest
    @CsvSource({
        "25, 1.00",
        "28, .89",
        "30, .83",
        "36, .69",
        "40, .63",
        "44, .57",
        "50, .50",
        "56, .45",
        "60, .42",
        "63, .40",
        "63.1, 0"
    })
    void horizontal_multipliers_are_those_of_the_manual(double centimetres, double multiplier) {
        assertThat(multipliers(Lifts.BEST.reach(centimetres)).horizontal()).isCloseTo(multiplier, TWO_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "0, .78",
        "10, .81",
        "30, .87",
        "50, .93",
        "70, .99",
        "75, 1.00",
        "80, .99",
        "100, .93",
        "120, .87",
        "150, .78",
        "175, .70",
        "175.1, 0"
    })
    void vertical_multipliers_are_those_of_the_manual(double centimetres, double multiplier) {
        assertThat(multipliers(Lifts.BEST.height(centimetres)).vertical()).isCloseTo(multiplier, TWO_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1.00",
        "25, 1.00",
        "40, .93",
        "55, .90",
        "70, .88",
        "85, .87",
        "100, .87",
        "115, .86",
        "145, .85",
        "175, .85",
        "175.1, 0"
    })
    void distance_multipliers_are_those_of_the_manual(double centimetres, double multiplier) {
        assertThat(multipliers(Lifts.BEST.travel(centimetres)).distance()).isCloseTo(multiplier, TWO_DIGITS);
    }

    /** Read in a reprint of the table. */
    @ParameterizedTest
    @CsvSource({
        "0, 1.00",
        "15, .95",
        "30, .90",
        "45, .86",
        "60, .81",
        "75, .76",
        "90, .71",
        "105, .66",
        "120, .62",
        "135, .57",
        "135.1, 0"
    })
    void asymmetry_multipliers_are_those_of_the_manual(double degrees, double multiplier) {
        assertThat(multipliers(Lifts.BEST.turn(degrees)).asymmetry()).isCloseTo(multiplier, TWO_DIGITS);
    }

    /** Both ends of each column of the table of frequencies; the column for 1 h and high hands was read in a reprint. */
    @ParameterizedTest
    @CsvSource({
        "0.2, 1, 75, 1.00",
        "0.5, 1, 75, .97",
        "1, 1, 75, .94",
        "5, 1, 75, .80",
        "9, 1, 74, .52",
        "12, 1, 74, .37",
        "13, 1, 74, 0",
        "15, 1, 75, .28",
        "16, 1, 75, 0",
        "0.2, 2, 75, .95",
        "3, 2, 75, .79",
        "10, 2, 74, .26",
        "11, 2, 74, 0",
        "12, 2, 75, .21",
        "13, 2, 75, 0",
        "0.2, 8, 75, .85",
        "0.5, 8, 75, .81",
        "1, 8, 75, .75",
        "2, 8, 75, .65",
        "3, 8, 75, .55",
        "8, 8, 74, .18",
        "9, 8, 74, 0",
        "10, 8, 75, .13",
        "11, 8, 75, 0"
    })
    void frequency_multipliers_are_those_of_the_manual(
            double liftsPerMinute, double hours, double height, double multiplier) {
        Lifts lift = Lifts.BEST.often(liftsPerMinute).hours(hours).height(height);
        assertThat(multipliers(lift).frequency()).isEqualTo(multiplier);
    }

    @ParameterizedTest
    @CsvSource({
        "GOOD, 74.9, 1.00",
        "GOOD, 75, 1.00",
        "FAIR, 74.9, .95",
        "FAIR, 75, 1.00",
        "POOR, 74.9, .90",
        "POOR, 75, .90"
    })
    void coupling_multipliers_are_those_of_the_manual(Coupling coupling, double height, double multiplier) {
        assertThat(multipliers(Lifts.BEST.coupling(coupling).height(height)).coupling())
                .isEqualTo(multiplier);
    }

    /**
     * The manual's US form, 51 lb x 10/H x (1 - 0.0075 |V - 30|) x (0.82 + 1.8/D) x (1 - 0.0032 A) with inches, is not
     * the metric form in other units: its constants are rounded anew. Both agree within 4 %.
     */
    @ParameterizedTest
    @CsvSource({"10, 30, 10, 0", "20, 6, 16, 0", "15, 20, 30, 45", "24, 60, 40, 90", "12, 0, 36, 30", "18, 45, 68, 135"
    })
    void the_metric_form_agrees_with_the_us_form(double reach, double height, double travel, double turn) {
        double pounds = 51
                * (10 / reach)
                * (1 - 0.0075 * Math.abs(height - 30))
                * Math.min(1, 0.82 + 1.8 / travel)
                * (1 - 0.0032 * turn);
        Lifts lift = Lifts.BEST
                .reach(reach * 2.54)
                .height(height * 2.54)
                .travel(travel * 2.54)
                .turn(turn);
        assertThat(lifting.limit(lift.lift()).recommended().in(Unit.POUND).doubleValue())
                .isCloseTo(pounds, Offset.offset(0.04 * pounds));
    }

    private LiftMultipliers multipliers(Lifts lifts) {
        return lifting.limit(lifts.lift()).multipliers();
    }
}
