package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Rotation;

/** Sliding speeds against paths that are followed point by point, without the formula for the speed. */
class MotionTest {
    private static final int INSTANTS = 100_000;

    @ParameterizedTest
    @CsvSource({
        "600, 0, SAME_WAY",
        "600, 60, SAME_WAY",
        "600, 60, OPPOSITE_WAY",
        "60, 60, OPPOSITE_WAY",
        "90, 40, SAME_WAY",
        "1300, 100, OPPOSITE_WAY",
    })
    void a_planetary_head_slides_as_far_as_its_points_travel(double head, double carrier, Motion.Turning turning) {
        Motion motion = new Motion.Planetary(
                new Rotation(head), new Rotation(carrier), turning, new Length(120), new Length(240), new Length(440));
        double spin = turning == Motion.Turning.SAME_WAY ? head + carrier : carrier - head;
        double sum = 0;
        int rings = 12;
        for (int ring = 0; ring < rings; ring++) {
            double lever = Math.sqrt(0.06 * 0.06 + (ring + 0.5) / rings * (0.12 * 0.12 - 0.06 * 0.06));
            sum += travelled(carrier, 0.22, spin, lever);
        }
        assertThat(motion.meanSlidingSpeed().metresPerMinute()).isCloseTo(sum / rings, Percentage.withPercentage(0.2));
    }

    /** Metres in a minute of a point on an arm that turns at the end of another arm, averaged over starting angles. */
    private static double travelled(double carrier, double arm, double spin, double lever) {
        double sum = 0;
        int starts = 8;
        for (int start = 0; start < starts; start++) {
            double angle = 2 * Math.PI * start / starts;
            double x = arm + lever * Math.cos(angle);
            double y = lever * Math.sin(angle);
            for (int i = 1; i <= INSTANTS; i++) {
                double minute = (double) i / INSTANTS;
                double a = 2 * Math.PI * carrier * minute;
                double b = angle + 2 * Math.PI * spin * minute;
                double nextX = arm * Math.cos(a) + lever * Math.cos(b);
                double nextY = arm * Math.sin(a) + lever * Math.sin(b);
                sum += Math.hypot(nextX - x, nextY - y);
                x = nextX;
                y = nextY;
            }
        }
        return sum / starts;
    }

    /** Plain geometry: a full disc slides at two thirds of its rim speed, a thin ring at its rim speed. */
    @Test
    void a_full_disc_slides_at_two_thirds_of_its_rim_speed_and_a_thin_ring_at_all_of_it() {
        double rim = Math.PI * 0.4 * 160;
        assertThat(disc(0, 400).meanSlidingSpeed().metresPerMinute()).isCloseTo(rim * 2 / 3, within(1e-5));
        assertThat(disc(399.9, 400).meanSlidingSpeed().metresPerMinute()).isCloseTo(rim, within(0.05));
    }

    private static Motion disc(double inner, double outer) {
        return new Motion.Disc(new Rotation(160), new Length(inner), new Length(outer));
    }

    @Test
    void heads_that_stand_still_against_the_floor_slide_with_the_carrier() {
        Motion motion = new Motion.Planetary(
                new Rotation(60),
                new Rotation(60),
                Motion.Turning.OPPOSITE_WAY,
                new Length(0),
                new Length(240),
                new Length(440));
        assertThat(motion.meanSlidingSpeed().metresPerMinute()).isCloseTo(Math.PI * 0.44 * 60, within(1e-3));
    }

    @Property(seed = "1955", tries = 200)
    void faster_heads_that_turn_with_the_carrier_never_slide_slower(
            @ForAll @DoubleRange(min = 1, max = 1500) double head,
            @ForAll @DoubleRange(min = 0, max = 200) double more,
            @ForAll @DoubleRange(min = 0, max = 150) double carrier) {
        assertThat(planetary(head + more, carrier).meanSlidingSpeed())
                .isGreaterThanOrEqualTo(planetary(head, carrier).meanSlidingSpeed());
    }

    private static Motion planetary(double head, double carrier) {
        return new Motion.Planetary(
                new Rotation(head),
                new Rotation(carrier),
                Motion.Turning.SAME_WAY,
                new Length(120),
                new Length(240),
                new Length(440));
    }

    @Test
    void a_ring_without_width_is_refused() {
        assertThatThrownBy(() -> disc(400, 400))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("motion.outer: '400 mm'");
    }
}
