package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

class LiftingTest {
    private final Lifting lifting = Lifting.of(Parameters.standard());

    @Property(seed = "1955")
    void a_lift_that_is_worse_in_any_way_never_allows_more(
            @ForAll @DoubleRange(min = 1, max = 70) double reach,
            @ForAll @DoubleRange(max = 75) double below,
            @ForAll @DoubleRange(max = 180) double travel,
            @ForAll @DoubleRange(max = 140) double turn,
            @ForAll @DoubleRange(max = 16) double often,
            @ForAll @DoubleRange(min = 0.1, max = 8) double hours,
            @ForAll @DoubleRange(max = 10) double worse) {
        Lifts lift = new Lifts(10, reach, below, travel, turn, often, hours, Coupling.FAIR);
        double limit = recommended(lift);
        assertThat(recommended(lift.reach(reach + worse))).isLessThanOrEqualTo(limit);
        assertThat(recommended(lift.height(Math.max(0, below - worse)))).isLessThanOrEqualTo(limit);
        assertThat(recommended(lift.travel(travel + worse))).isLessThanOrEqualTo(limit);
        assertThat(recommended(lift.turn(turn + worse))).isLessThanOrEqualTo(limit);
        assertThat(recommended(lift.often(often + worse))).isLessThanOrEqualTo(limit);
        assertThat(recommended(lift.hours(Math.min(8, hours + worse)))).isLessThanOrEqualTo(limit);
        assertThat(recommended(lift.coupling(Coupling.POOR))).isLessThanOrEqualTo(limit);
        assertThat(limit).isLessThanOrEqualTo(23);
    }

    @Property(seed = "1955")
    void a_heavier_load_never_has_a_milder_verdict(
            @ForAll @DoubleRange(min = 1, max = 60) double mass,
            @ForAll @DoubleRange(max = 60) double more,
            @ForAll @DoubleRange(min = 20, max = 70) double reach) {
        Lifts lift = Lifts.BEST.mass(mass).reach(reach);
        assertThat(verdict(lift.mass(mass + more))).isGreaterThanOrEqualTo(verdict(lift));
    }

    @Property(seed = "1955")
    void units_do_not_matter(@ForAll @DoubleRange(min = 10, max = 24) double inches) {
        Lift metric = Lifts.BEST.reach(inches * 2.54).lift();
        Lift us = new Lift(
                Mass.of(23 / 0.45359237, Unit.POUND),
                Length.of(inches, Unit.INCH),
                Length.of(75 / 30.48, Unit.FOOT),
                Length.of(25 / 2.54, Unit.INCH),
                new Angle(0),
                new Count(3),
                TimeSpan.of(0.25, Unit.HOUR),
                new TimeSpan(60),
                Coupling.GOOD);
        assertThat(lifting.limit(us).recommended().kilograms())
                .isCloseTo(lifting.limit(metric).recommended().kilograms(), Offset.offset(2e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "23, WITHIN_LIMIT, 100",
        "23.001, OVER_LIMIT, 100.0043",
        "69, OVER_LIMIT, 300",
        "69.01, FAR_OVER_LIMIT, 300.0435"
    })
    void the_verdict_follows_the_index(double mass, LiftVerdict verdict, double index) {
        LiftingLimit limit = lifting.limit(Lifts.BEST.mass(mass).lift());
        assertThat(limit.verdict()).isEqualTo(verdict);
        assertThat(limit.index().orElseThrow().percent()).isEqualTo(index);
    }

    @Test
    void what_lies_beyond_the_equation_is_no_lift_for_one_person() {
        for (Lifts beyond : List.of(
                Lifts.BEST.reach(64),
                Lifts.BEST.height(176),
                Lifts.BEST.travel(176),
                Lifts.BEST.turn(136),
                Lifts.BEST.often(16))) {
            LiftingLimit limit = lifting.limit(beyond.mass(1).lift());
            assertThat(limit.recommended()).isEqualTo(new Mass(0));
            assertThat(limit.index()).isEmpty();
            assertThat(limit.verdict()).isEqualTo(LiftVerdict.FAR_OVER_LIMIT);
        }
    }

    @Test
    void between_two_rows_the_next_higher_frequency_counts() {
        assertThat(lifting.limit(Lifts.BEST.often(1.1).lift()).multipliers().frequency())
                .isEqualTo(0.91);
        assertThat(lifting.limit(Lifts.BEST.often(0).lift()).multipliers().frequency())
                .isEqualTo(1);
    }

    /** A slip of the pen in the table would show: multipliers fall down each column, with duration and with low hands. */
    @Test
    void the_table_of_frequencies_falls_in_every_direction() {
        List<Tsv.Row> rows = Tsv.read(Lifting.class, "lifting-frequency.tsv");
        assertThat(rows).hasSize(17);
        for (int i = 0; i < rows.size(); i++) {
            Tsv.Row row = rows.get(i);
            for (String side : List.of("low-", "high-")) {
                assertThat(row.number(side + "1")).isGreaterThanOrEqualTo(row.number(side + "2"));
                assertThat(row.number(side + "2")).isGreaterThanOrEqualTo(row.number(side + "8"));
            }
            for (String hours : List.of("1", "2", "8")) {
                assertThat(row.number("high-" + hours)).isGreaterThanOrEqualTo(row.number("low-" + hours));
                if (i > 0) {
                    assertThat(row.number("high-" + hours))
                            .isLessThanOrEqualTo(rows.get(i - 1).number("high-" + hours));
                    assertThat(row.number("low-" + hours))
                            .isLessThanOrEqualTo(rows.get(i - 1).number("low-" + hours));
                    assertThat(row.number("frequency"))
                            .isGreaterThan(rows.get(i - 1).number("frequency"));
                }
            }
        }
    }

    @Test
    void what_cannot_be_a_lift_is_refused() {
        assertThatThrownBy(() -> Lifts.BEST.hours(8.1).lift())
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("lift.duration: ");
        assertThatThrownBy(() -> Lifts.BEST.hours(0).lift())
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("lift.duration: ");
        assertThatThrownBy(() -> Lifts.BEST.turn(181).lift())
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("lift.turn: '181 deg' is not accepted; accepted: 0 to 180 deg");
        assertThatThrownBy(() -> new Lift(
                        new Mass(1),
                        new Length(1),
                        new Length(1),
                        new Length(1),
                        new Angle(0),
                        new Count(1),
                        new TimeSpan(0),
                        new TimeSpan(1),
                        Coupling.GOOD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("lift.counted: ");
    }

    private double recommended(Lifts lifts) {
        return lifting.limit(lifts.lift()).recommended().kilograms();
    }

    private LiftVerdict verdict(Lifts lifts) {
        return lifting.limit(lifts.lift()).verdict();
    }
}
