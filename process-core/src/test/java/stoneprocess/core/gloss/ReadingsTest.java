package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

class ReadingsTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final Share P95 = new Share(95);

    private static List<Gloss> values(double... values) {
        return DoubleStream.of(values).mapToObj(Gloss::new).toList();
    }

    private static Reading reading(String zone, double gloss, Geometry geometry, FaceState state) {
        return new Reading("a", zone, Direction.ALONG, geometry, new Gloss(gloss), state);
    }

    private static ReadingSet set(String zone, double... values) {
        return ReadingSet.of(
                DoubleStream.of(values)
                        .mapToObj(value -> reading(zone, value, Geometry.DEG_60, FaceState.CLEAN_DRY))
                        .toList(),
                Geometry.DEG_60);
    }

    private static ReadingSet floor(double[] centre, double[] edge) {
        List<Reading> all = new ArrayList<>(set("field", centre).used());
        all.addAll(set("wall", edge).used());
        return ReadingSet.of(all, Geometry.DEG_60);
    }

    @Test
    void wet_soiled_and_other_readings_are_set_aside_and_stay_visible() {
        Reading good = reading("lane", 30, Geometry.DEG_60, FaceState.CLEAN_DRY);
        Reading wet = reading("lane", 55, Geometry.DEG_85, FaceState.WET);
        Reading soiled = reading("lane", 12, Geometry.DEG_60, FaceState.SOILED);
        Reading flat = reading("lane", 70, Geometry.DEG_85, FaceState.CLEAN_DRY);
        ReadingSet set = ReadingSet.of(List.of(wet, good, soiled, flat), Geometry.DEG_60);
        assertThat(set.used()).containsExactly(good);
        assertThat(set.setAside())
                .containsExactly(
                        new SetAside(wet, SetAside.Reason.WET),
                        new SetAside(soiled, SetAside.Reason.SOILED),
                        new SetAside(flat, SetAside.Reason.OTHER_GEOMETRY));
    }

    @Test
    void zones_are_counted_apart_in_the_order_in_which_they_occur() {
        var byZone = ZoneStatistics.byZone(floor(new double[] {40, 42, 44}, new double[] {30}), P95);
        assertThat(byZone).containsOnlyKeys("field", "wall");
        assertThat(byZone.keySet()).first().isEqualTo("field");
        assertThat(byZone.get("field").mean()).isEqualTo(new Gloss(42));
        assertThat(byZone.get("field").deviation()).contains(new Gloss(2));
        assertThat(byZone.get("wall").count()).isEqualTo(1);
        assertThat(byZone.get("wall").deviation()).isEmpty();
        assertThat(byZone.get("wall").meanInterval()).isEmpty();
        assertThat(byZone.get("field").lowest()).isEqualTo(new Gloss(40));
        assertThat(byZone.get("field").spread()).isEqualTo(new Gloss(4));
    }

    @Test
    void single_readings_prove_no_gain_and_say_what_is_missing() {
        Gain gain = Gain.of(values(20), values(60), STANDARD);
        assertThat(gain.verdict()).isEqualTo(GainVerdict.NOT_ENOUGH_READINGS);
        assertThat(gain.change()).isEqualTo(new GlossChange(40));
        assertThat(gain.missingBefore()).isEqualTo(1);
        assertThat(gain.missingAfter()).isEqualTo(1);
        assertThat(gain.interval()).isEmpty();
        assertThat(Gain.of(values(20, 21), values(60), STANDARD).missingBefore())
                .isZero();
    }

    @Test
    void a_gain_is_real_beyond_the_scatter_and_the_meter_only() {
        assertThat(Gain.of(values(30, 31, 32), values(40, 41, 42), STANDARD).verdict())
                .isEqualTo(GainVerdict.REAL);
        assertThat(Gain.of(values(25, 31, 37), values(35, 41, 47), STANDARD).verdict())
                .isEqualTo(GainVerdict.WITHIN_SCATTER);
        assertThat(Gain.of(values(30, 30, 30), values(30.2, 30.2, 30.2), STANDARD)
                        .verdict())
                .isEqualTo(GainVerdict.WITHIN_SCATTER);
        assertThat(Gain.of(values(30, 30, 30), values(30.3, 30.3, 30.3), STANDARD)
                        .verdict())
                .isEqualTo(GainVerdict.REAL);
        Gain loss = Gain.of(values(40, 41, 42), values(30, 31, 32), STANDARD);
        assertThat(loss.verdict()).isEqualTo(GainVerdict.WITHIN_SCATTER);
        assertThat(loss.interval().orElseThrow().high().glossUnits()).isNegative();
    }

    @Property(tries = 1000, seed = "1955")
    void wider_scatter_never_gives_a_firmer_verdict(
            @ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = 36, max = 44) Double> before,
            @ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = 36, max = 44) Double> after,
            @ForAll @DoubleRange(min = 0, max = 20) double gain,
            @ForAll @DoubleRange(min = 1, max = 5) double widerBefore,
            @ForAll @DoubleRange(min = 1, max = 5) double widerAfter) {
        Gain narrow = Gain.of(spread(before, 1, 0), spread(after, 1, gain), STANDARD);
        Gain wide = Gain.of(spread(before, widerBefore, 0), spread(after, widerAfter, gain), STANDARD);
        double narrowMargin = margin(narrow);
        assertThat(margin(wide)).isGreaterThanOrEqualTo(narrowMargin - 1e-3);
        if (Math.abs(narrow.change().glossUnits() - narrowMargin) > 0.01) {
            assertThat(wide.verdict()).isLessThanOrEqualTo(narrow.verdict());
        }
    }

    private static double margin(Gain gain) {
        Range<GlossChange> interval = gain.interval().orElseThrow();
        return (interval.high().glossUnits() - interval.low().glossUnits()) / 2;
    }

    private static List<Gloss> spread(List<Double> values, double factor, double gain) {
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        return values.stream()
                .map(value -> new Gloss(60 + gain + factor * (value - mean)))
                .toList();
    }

    @Property(tries = 500, seed = "1955")
    void the_needed_number_of_readings_is_the_least_that_serves(
            @ForAll @DoubleRange(min = 0, max = 20) double deviation,
            @ForAll @DoubleRange(min = 0.5, max = 20) double halfWidth) {
        int needed = ZoneStatistics.readingsNeeded(new Gloss(deviation), new Gloss(halfWidth), P95);
        assertThat(needed).isGreaterThanOrEqualTo(2);
        assertThat(half(deviation, needed)).isLessThanOrEqualTo(halfWidth + 1e-3);
        if (needed > 2) {
            assertThat(half(deviation, needed - 1)).isGreaterThan(halfWidth - 1e-3);
        }
    }

    private static double half(double deviation, int count) {
        return Sample.t(count - 1, 0.975) * deviation / StrictMath.sqrt(count);
    }

    @Property(tries = 500, seed = "1955")
    void wider_scatter_never_asks_for_fewer_readings(
            @ForAll @DoubleRange(min = 0, max = 20) double one, @ForAll @DoubleRange(min = 0, max = 20) double other) {
        Gloss half = new Gloss(1.5);
        assertThat(ZoneStatistics.readingsNeeded(new Gloss(Math.max(one, other)), half, P95))
                .isGreaterThanOrEqualTo(ZoneStatistics.readingsNeeded(new Gloss(Math.min(one, other)), half, P95));
    }

    /** Test area 50 GU: floor mean at 45 or more, spots at 80 % of the mean, edges at 85 % of the centre. */
    @ParameterizedTest
    @CsvSource({
        "50, 50, 48, ACCEPTED, ''",
        "45.1, 45.1, 44.8, ACCEPTED, ''",
        "44, 44, 44, REFUSED, MEAN_TOO_LOW",
        "56, 56, 47, REFUSED, EDGES_TOO_LOW",
        "56, 38, 47, REFUSED, SPOT_TOO_LOW",
    })
    void a_floor_is_held_against_its_test_area(
            double most, double spot, double edge, AcceptanceVerdict verdict, String finding) {
        AcceptanceCheck check = AcceptanceCheck.of(
                floor(new double[] {most, most, most, spot}, new double[] {edge, edge}),
                Set.of("wall"),
                set("test", 50, 50, 50),
                STANDARD);
        assertThat(check.verdict()).isEqualTo(verdict);
        assertThat(check.findings().stream().map(Enum::name))
                .isEqualTo(finding.isEmpty() ? List.of() : List.of(finding));
    }

    @Test
    void the_limits_themselves_are_accepted() {
        AcceptanceCheck check = AcceptanceCheck.of(
                floor(new double[] {100, 100}, new double[] {85, 85}), Set.of("wall"), set("test", 92.5), STANDARD);
        assertThat(check.verdict()).isEqualTo(AcceptanceVerdict.ACCEPTED);
        assertThat(check.edgeShare()).contains(new Share(85));
        assertThat(check.meanShare()).contains(new Share(100));
        assertThat(AcceptanceCheck.of(
                                floor(new double[] {100, 100}, new double[] {84.9, 84.9}),
                                Set.of("wall"),
                                set("test", 92.5),
                                STANDARD)
                        .findings())
                .containsExactly(AcceptanceFinding.EDGES_TOO_LOW);
    }

    @Test
    void what_was_not_read_leaves_the_acceptance_open() {
        ReadingSet nothing = ReadingSet.of(List.of(), Geometry.DEG_60);
        AcceptanceCheck noEdge = AcceptanceCheck.of(set("field", 50, 51), Set.of("wall"), set("test", 50), STANDARD);
        assertThat(noEdge.verdict()).isEqualTo(AcceptanceVerdict.INCOMPLETE);
        assertThat(noEdge.findings()).containsExactly(AcceptanceFinding.EDGES_NOT_READ);
        assertThat(noEdge.edgeShare()).isEmpty();
        AcceptanceCheck noArea =
                AcceptanceCheck.of(floor(new double[] {50}, new double[] {20}), Set.of("wall"), nothing, STANDARD);
        assertThat(noArea.verdict()).isEqualTo(AcceptanceVerdict.REFUSED);
        assertThat(noArea.findings()).contains(AcceptanceFinding.TEST_AREA_NOT_READ, AcceptanceFinding.EDGES_TOO_LOW);
        assertThat(AcceptanceCheck.of(nothing, Set.of(), nothing, STANDARD).verdict())
                .isEqualTo(AcceptanceVerdict.INCOMPLETE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {49.9, 99.95, 0})
    void a_confidence_that_makes_no_sense_is_refused(double percent) {
        assertThatThrownBy(() -> ZoneStatistics.of(values(1, 2), new Share(percent)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("confidence: ");
    }

    @Test
    void what_cannot_be_counted_is_refused() {
        assertThatThrownBy(() -> ZoneStatistics.of(List.of(), P95))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("readings: 'none'");
        assertThatThrownBy(() -> Gain.of(List.of(), values(3), STANDARD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("before: ");
        assertThatThrownBy(() -> ZoneStatistics.readingsNeeded(new Gloss(3), new Gloss(0), P95))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("half-width: ");
        assertThatThrownBy(() -> ZoneStatistics.readingsNeeded(new Gloss(30), new Gloss(0.001), P95))
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> reading(" ", 3, Geometry.DEG_60, FaceState.WET))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("zone: ");
        assertThatThrownBy(() -> reading("lane", 162, Geometry.DEG_85, FaceState.WET))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("gloss: ");
        assertThatThrownBy(() -> new GlossChange(Double.NaN)).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() ->
                        AcceptanceCheck.of(set("a", 5), Set.of(), ReadingSet.of(List.of(), Geometry.DEG_85), STANDARD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("test-area.geometry: '85'");
    }
}
