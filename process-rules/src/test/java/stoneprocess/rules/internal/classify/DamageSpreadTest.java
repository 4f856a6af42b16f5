package stoneprocess.rules.internal.classify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.rules.Floors;

/** The shares at which damage governs a floor are common practice, no source: 5 % of the area, 10 % of the joints. */
class DamageSpreadTest {
    @Test
    void a_share_of_a_zone_is_weighed_by_the_share_of_the_zone() {
        assertThat(scratches(zone("lane", 40, Floors.scratched(ScratchClass.FELT_BY_NAIL, 12.4)), clean("rest", 60)))
                .isEqualTo(new Found(EnumSet.of(ScratchClass.NONE), EnumSet.of(ScratchClass.FELT_BY_NAIL)));
        assertThat(scratches(zone("lane", 40, Floors.scratched(ScratchClass.FELT_BY_NAIL, 12.5)), clean("rest", 60)))
                .isEqualTo(new Found(EnumSet.of(ScratchClass.FELT_BY_NAIL), EnumSet.of(ScratchClass.NONE)));
    }

    @ParameterizedTest
    @CsvSource({"4.99, NONE, SEEN", "5, SEEN, NONE", "5.01, SEEN, NONE"})
    void scratches_on_5_percent_of_the_area_govern_and_on_less_are_local(
            double share, ScratchClass governing, ScratchClass local) {
        assertThat(scratches(zone("whole", 100, Floors.scratched(ScratchClass.SEEN, share))))
                .isEqualTo(new Found(EnumSet.of(governing), EnumSet.of(local)));
    }

    @ParameterizedTest
    @CsvSource({"9.99, NONE, MODERATE", "10, MODERATE, NONE"})
    void lippage_of_10_percent_of_the_joints_governs_and_of_fewer_is_local(
            double share, LippageClass governing, LippageClass local) {
        DamageSpread spread = spread(DamageKind.LIPPAGE, zone("whole", 100, Floors.lipped(2, share)));
        assertThat(spread.governing(LippageClass.class)).containsExactly(governing);
        assertThat(spread.local(LippageClass.class)).containsExactly(local);
    }

    @Test
    void what_is_worse_and_rarer_is_local_beside_what_governs() {
        assertThat(scratches(
                        zone("field", 90, Floors.scratched(ScratchClass.SEEN, 50)),
                        zone("door", 10, Floors.scratched(ScratchClass.DEEP, 40))))
                .isEqualTo(new Found(EnumSet.of(ScratchClass.SEEN), EnumSet.of(ScratchClass.DEEP)));
    }

    @Test
    void worse_damage_counts_towards_the_share_of_milder_damage() {
        assertThat(scratches(
                        zone("lane", 50, Floors.scratched(ScratchClass.FELT_BY_COIN, 6)),
                        zone("door", 50, Floors.scratched(ScratchClass.DEEP, 4))))
                .as("3 % felt by a coin and 2 % deep")
                .isEqualTo(new Found(EnumSet.of(ScratchClass.FELT_BY_COIN), EnumSet.of(ScratchClass.DEEP)));
    }

    /** The shares add up to a hair under 5 in binary arithmetic. */
    @ParameterizedTest
    @ValueSource(strings = {"63.8 35.9 0.3", "7.9 81.8 8.7 1.6", "5.8 17.1 27.6 44.2 5.3"})
    void the_same_share_in_every_zone_is_that_share_of_the_floor_however_it_is_divided(String shares) {
        List<Zone> zones = new ArrayList<>();
        for (String share : shares.split(" ")) {
            zones.add(zone("zone " + zones.size(), Double.parseDouble(share), Floors.scratched(ScratchClass.SEEN, 5)));
        }
        assertThat(scratches(zones.toArray(Zone[]::new)).governing()).containsExactly(ScratchClass.SEEN);
    }

    @Test
    void a_survey_without_zones_may_be_anything() {
        Found found = scratches();
        assertThat(found.governing()).isEqualTo(EnumSet.allOf(ScratchClass.class));
        assertThat(found.local()).isEqualTo(EnumSet.allOf(ScratchClass.class));
    }

    @Test
    void a_zone_in_which_nobody_looked_may_be_anything() {
        Zone unseen = new Zone("unseen", ZoneKind.FIELD, Share.of(30, Unit.PERCENT), Map.of());
        Found found = scratches(unseen, zone("lane", 70, Floors.scratched(ScratchClass.SEEN, 50)));
        assertThat(found.governing()).isEqualTo(EnumSet.range(ScratchClass.SEEN, ScratchClass.GOUGED));
    }

    @Test
    void what_the_zones_leave_out_may_be_anything_when_it_is_enough_to_govern() {
        Found tenth = scratches(clean("seen", 90));
        assertThat(tenth.governing()).isEqualTo(EnumSet.allOf(ScratchClass.class));

        Found little = scratches(clean("seen", 96));
        assertThat(little.governing()).containsExactly(ScratchClass.NONE);
        assertThat(little.local()).isEqualTo(EnumSet.allOf(ScratchClass.class));
    }

    @Test
    void damage_of_unknown_share_may_govern_or_not() {
        Damage somewhere = new Damage(
                DamageKind.SCRATCHES, Optional.of(ScratchClass.FELT_BY_NAIL), Optional.empty(), Optional.empty());
        Found found = scratches(zone("whole", 100, somewhere));
        assertThat(found.governing()).isEqualTo(EnumSet.range(ScratchClass.NONE, ScratchClass.FELT_BY_NAIL));
        assertThat(found.local()).contains(ScratchClass.NONE, ScratchClass.FELT_BY_NAIL);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 40, 100})
    void a_crack_that_was_seen_is_present_whatever_its_share_and_its_zone(double zoneShare) {
        Damage somewhere =
                new Damage(DamageKind.CRACKS, Optional.of(Presence.PRESENT), Optional.empty(), Optional.empty());
        Zone[] zones = zoneShare == 100
                ? new Zone[] {zone("door", 100, somewhere)}
                : new Zone[] {zone("door", zoneShare, somewhere), clean("rest", 100 - zoneShare)};
        assertThat(spread(DamageKind.CRACKS, zones).anywhere(Presence.class)).containsExactly(Presence.PRESENT);
    }

    @Test
    void the_governing_depth_is_the_greatest_that_was_measured_of_what_governs() {
        assertThat(spread(
                                DamageKind.LIPPAGE,
                                zone("lane", 50, Floors.lipped(3.5, 40)),
                                zone("field", 49, Floors.lipped(4, 40)),
                                zone("door", 1, Floors.lipped(1, 40)))
                        .governingDepth())
                .contains(Length.of(4, Unit.MILLIMETRE));
        assertThat(spread(DamageKind.LIPPAGE, zone("lane", 50, Floors.lipped(3.5, 40)))
                        .governingDepth())
                .as("half the floor was not looked at")
                .contains(Length.of(3.5, Unit.MILLIMETRE));
        assertThat(spread(DamageKind.LIPPAGE, zone("lane", 50, Floors.lipped(2, 40)))
                        .governingDepth())
                .as("the other half may be worse")
                .isEmpty();
    }

    @Test
    void a_floor_that_was_looked_at_and_has_no_crack_has_none() {
        assertThat(spread(DamageKind.CRACKS, clean("whole", 100)).anywhere(Presence.class))
                .containsExactly(Presence.NONE);
    }

    private record Found(EnumSet<ScratchClass> governing, EnumSet<ScratchClass> local) {}

    private static Found scratches(Zone... zones) {
        DamageSpread spread = spread(DamageKind.SCRATCHES, zones);
        return new Found(
                EnumSet.copyOf(spread.governing(ScratchClass.class)), EnumSet.copyOf(spread.local(ScratchClass.class)));
    }

    private static DamageSpread spread(DamageKind kind, Zone... zones) {
        FloorSurvey survey = FloorSurvey.builder("spread").zones(List.of(zones)).build();
        return DamageSpread.of(survey, kind, Parameters.standard());
    }

    private static Zone clean(String name, double share) {
        return Floors.zone(name, share, Map.of());
    }

    private static Zone zone(String name, double share, Damage damage) {
        return Floors.zone(name, share, new HashMap<>(Map.of(damage.kind(), damage)));
    }
}
