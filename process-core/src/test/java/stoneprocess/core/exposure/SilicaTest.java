package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

class SilicaTest {
    private final Silica silica = Silica.of(Parameters.standard());

    @Property(seed = "1955")
    void wider_pads_never_need_less_air(
            @ForAll @DoubleRange(min = 1, max = 2000) double one,
            @ForAll @DoubleRange(min = 1, max = 2000) double other) {
        assertThat(silica.handGrinderAirflow(new Length(Math.max(one, other))))
                .isGreaterThanOrEqualTo(silica.handGrinderAirflow(new Length(Math.min(one, other))));
    }

    @Property(seed = "1955")
    void the_unit_of_the_wheel_does_not_matter(@ForAll @DoubleRange(min = 1, max = 20) double inches) {
        assertThat(silica.handGrinderAirflow(Length.of(inches, Unit.INCH)).cubicMetresPerHour())
                .isCloseTo(
                        silica.handGrinderAirflow(Length.of(inches * 2.54, Unit.CENTIMETRE))
                                .cubicMetresPerHour(),
                        Offset.offset(2e-3));
    }

    @Property(seed = "1955")
    void a_better_collector_or_less_time_never_makes_the_verdict_worse(
            @ForAll GrindingTool tool,
            @ForAll boolean indoors,
            @ForAll boolean vacuum,
            @ForAll @DoubleRange(max = 800) double airflow,
            @ForAll @DoubleRange(max = 400) double more,
            @ForAll @DoubleRange(min = 97, max = 100) double filter) {
        SilicaControl weak = control(tool, indoors, 8, vacuum, collector(airflow, filter));
        SilicaControl strong = control(tool, indoors, 2, true, collector(airflow + more, 100));
        assertThat(strong.verdict()).isLessThanOrEqualTo(weak.verdict());
        assertThat(strong.missing()).isSubsetOf(weak.missing());
        assertThat(strong.protectionFactor()).isEmpty();
    }

    @Property(seed = "1955")
    void the_table_is_met_exactly_when_nothing_is_missing(
            @ForAll GrindingTool tool,
            @ForAll boolean indoors,
            @ForAll boolean vacuum,
            @ForAll boolean shroud,
            @ForAll boolean cleaning,
            @ForAll boolean makerKnown,
            @ForAll @DoubleRange(max = 800) double airflow,
            @ForAll @DoubleRange(min = 97, max = 100) double filter) {
        Optional<Airflow> maker = makerKnown ? Optional.of(new Airflow(400)) : Optional.empty();
        SilicaControl control = control(
                tool,
                indoors,
                8,
                vacuum,
                new DustControl.Collector(shroud, new Airflow(airflow), maker, new Share(filter), cleaning));
        assertThat(control.missing().isEmpty()).isEqualTo(control.verdict() == SilicaVerdict.TABLE_1_MET);
        assertThat(control.missing()).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({
        "FLOOR_GRINDER, true, WATER_FED_OR_COLLECTOR",
        "FLOOR_GRINDER, false, WATER_FED_OR_COLLECTOR",
        "HAND_GRINDER, true, COLLECTOR",
        "HAND_GRINDER, false, WATER_FED_OR_COLLECTOR"
    })
    void bucket_water_needs_an_assessment_and_dry_without_anything_is_not_started(
            GrindingTool tool, boolean indoors, SilicaGap gap) {
        SilicaControl bucket = control(tool, indoors, 1, true, new DustControl.BucketWater());
        assertThat(bucket.verdict()).isEqualTo(SilicaVerdict.OWN_ASSESSMENT_NEEDED);
        SilicaControl dry = control(tool, indoors, 1, true, new DustControl.Nothing());
        assertThat(dry.verdict()).isEqualTo(SilicaVerdict.TABLE_1_NOT_MET);
        for (SilicaControl control : new SilicaControl[] {bucket, dry}) {
            assertThat(control.missing()).containsExactly(gap);
            assertThat(control.respirator()).isEqualTo(RespiratorNeed.BY_ASSESSMENT);
            assertThat(control.protectionFactor()).isEmpty();
        }
    }

    @Test
    void a_wet_hand_grinder_indoors_misses_the_collector_of_the_table() {
        SilicaControl control = control(GrindingTool.HAND_GRINDER, true, 1, true, new DustControl.WaterFed());
        assertThat(control.missing()).containsExactly(SilicaGap.COLLECTOR);
    }

    @Test
    void everything_that_a_bare_vacuum_lacks_is_named() {
        DustControl bare = new DustControl.Collector(false, new Airflow(100), Optional.empty(), new Share(90), false);
        assertThat(control(GrindingTool.FLOOR_GRINDER, true, 1, false, bare).missing())
                .containsExactly(
                        SilicaGap.SHROUD,
                        SilicaGap.MAKERS_AIRFLOW,
                        SilicaGap.FILTER,
                        SilicaGap.FILTER_CLEANING,
                        SilicaGap.HEPA_BETWEEN_PASSES);
        assertThat(control(GrindingTool.HAND_GRINDER, true, 1, false, bare).missing())
                .containsExactly(SilicaGap.SHROUD, SilicaGap.AIRFLOW, SilicaGap.FILTER, SilicaGap.FILTER_CLEANING);
    }

    @Test
    void the_answer_names_the_table_and_who_decides() {
        SilicaControl control = control(GrindingTool.HAND_GRINDER, true, 5, true, collector(400, 99));
        assertThat(control.source().id()).isEqualTo("29-CFR-1926.1153");
        assertThat(control.decides()).isEqualTo(Role.COMPETENT_PERSON);
        assertThat(control.protectionFactor().orElseThrow().sourceId()).isEqualTo("29-CFR-1926.1153");
    }

    @Test
    void what_cannot_be_a_task_is_refused() {
        for (double wheel : new double[] {0, 2000.1}) {
            assertThatThrownBy(() -> new SilicaTask(
                            GrindingTool.HAND_GRINDER,
                            new DustControl.Nothing(),
                            new Length(wheel),
                            true,
                            new TimeSpan(1),
                            false))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("silica.wheel: ");
        }
        assertThatThrownBy(() -> control(GrindingTool.HAND_GRINDER, true, 24.1, true, new DustControl.Nothing()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("silica.time: ");
        assertThatThrownBy(() -> collector(1, 100.1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("collector.filter: '100.1 %' is not accepted; accepted: 0 to 100 %");
        assertThatThrownBy(() -> new DustControl.Collector(
                        true, new Airflow(1), Optional.of(new Airflow(0)), new Share(99), true))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("collector.makers-airflow: ");
    }

    private static DustControl collector(double airflow, double filter) {
        return new DustControl.Collector(
                true, new Airflow(airflow), Optional.of(new Airflow(600)), new Share(filter), true);
    }

    /** The wheel is 125 mm. */
    private SilicaControl control(
            GrindingTool tool, boolean indoors, double hours, boolean vacuum, DustControl control) {
        return silica.control(
                new SilicaTask(tool, control, new Length(125), indoors, TimeSpan.of(hours, Unit.HOUR), vacuum));
    }
}
