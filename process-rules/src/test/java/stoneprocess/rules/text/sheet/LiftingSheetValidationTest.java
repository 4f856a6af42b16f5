package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.Lift;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.rules.text.document.Texts;

/**
 * What the sheet of lifting prints against the Applications Manual of the revised lifting equation, NIOSH 94-110. Load
 * constant, equation and the table of asymmetry were read; the other tables of multipliers are from memory.
 */
class LiftingSheetValidationTest {
    /** Load constant 23 kg, in the manual also 51 lb: the best lift there is. */
    @Test
    void the_best_lift_may_weigh_23_kilograms() {
        Lift best = lift(23, 25, 75, 25, 0, 3);
        String metric = Texts.english().page(LiftingSheet.of(best));
        assertThat(Printed.row(metric, "recommended limit")).containsExactly("23 kg");
        assertThat(metric).contains("WITHIN THE LIMIT.").doesNotContain("costs most");
        String us = Texts.english().in(UnitSystem.US).page(LiftingSheet.of(best));
        assertThat(Printed.number(Printed.row(us, "recommended limit").get(0))).isCloseTo(51, Offset.offset(0.5));
    }

    /** Multipliers of the manual's tables, in percent: H 40 cm .63, V 10 cm .81, D 70 cm .88, A 30 degrees .90. */
    @ParameterizedTest
    @CsvSource({"reach, 63", "height of the hands, 81", "vertical travel, 88", "turn, 90", "frequency, 94", "hold, 95"})
    void each_part_leaves_what_the_manual_says(String part, double percent) {
        String sheet = Texts.english().page(LiftingSheet.of(poorer()));
        assertThat(Printed.number(Printed.row(sheet, part).get(1))).isCloseTo(percent, Offset.offset(0.51));
    }

    /** The product of the six multipliers of the manual, .63 x .81 x .88 x .90 x .94 x .95 x 23 kg, to its two digits. */
    @Test
    void limit_and_verdict_follow_from_the_parts() {
        double product = 23 * .63 * .81 * .88 * .90 * .94 * .95;
        String sheet = Texts.english().page(LiftingSheet.of(poorer()));
        double limit = Printed.number(Printed.row(sheet, "recommended limit").get(0));
        assertThat(limit).isCloseTo(product, Offset.offset(0.02 * product));
        assertThat(sheet).contains("OVER THE LIMIT: use more people").contains("The reach costs most");
        assertThat(Printed.number(Printed.row(sheet, "load as a share of it").get(0)))
                .isCloseTo(100 * 20 / product, Offset.offset(5.0));
    }

    /** NIOSH 94-110: beyond 63 cm of reach or 135 degrees of turn the multiplier is zero. */
    @Test
    void a_lift_beyond_the_equation_is_not_for_one_person() {
        for (Lift beyond : new Lift[] {lift(5, 63.1, 75, 25, 0, 3), lift(5, 25, 75, 25, 135.1, 3)}) {
            String sheet = Texts.english().page(LiftingSheet.of(beyond));
            assertThat(sheet).contains("NOT BY ONE PERSON").contains("beyond the equation");
            assertThat(Printed.row(sheet, "recommended limit")).containsExactly("0 kg");
        }
    }

    /** An index over 3 is far over (NIOSH 94-110, from memory). */
    @Test
    void three_times_the_limit_and_more_is_far_over() {
        assertThat(Texts.english().page(LiftingSheet.of(lift(69, 25, 75, 25, 0, 3))))
                .contains("\nOVER THE LIMIT");
        assertThat(Texts.english().page(LiftingSheet.of(lift(69.1, 25, 75, 25, 0, 3))))
                .contains("\nFAR OVER THE LIMIT");
    }

    @Test
    void what_the_equation_does_not_hold_for_is_said() {
        assertThat(Printed.joined(Texts.english().page(LiftingSheet.of(poorer()))))
                .contains("Not for one hand, sitting, kneeling")
                .contains("On a wet stone floor lift less")
                .contains("23 kg (US NIOSH, publication 94-110")
                .contains("NOT VERIFIED", "not verified: look the figure up there")
                .contains("advised by an ergonomist or safety officer");
    }

    /** One lift a minute for an hour, held fairly: frequency .94, coupling .95 for low hands. */
    private static Lift poorer() {
        Lift lift = lift(20, 40, 10, 70, 30, 15);
        return new Lift(
                lift.load(),
                lift.reach(),
                lift.height(),
                lift.travel(),
                lift.turn(),
                lift.lifts(),
                lift.counted(),
                lift.duration(),
                Coupling.FAIR);
    }

    private static Lift lift(double mass, double reach, double height, double travel, double turn, int lifts) {
        return new Lift(
                new Mass(mass),
                Length.of(reach, Unit.CENTIMETRE),
                Length.of(height, Unit.CENTIMETRE),
                Length.of(travel, Unit.CENTIMETRE),
                new Angle(turn),
                new Count(lifts),
                new TimeSpan(15),
                TimeSpan.of(1, Unit.HOUR),
                Coupling.GOOD);
    }
}
