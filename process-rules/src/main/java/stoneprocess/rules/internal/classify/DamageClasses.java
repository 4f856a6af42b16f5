package stoneprocess.rules.internal.classify;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Extent;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Slope;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.feature.LaneContrast;

/** What is damaged, how badly and where, as classes. */
final class DamageClasses {
    private DamageClasses() {}

    /** What governs the field, which a floor machine reaches. */
    static <E extends Enum<E>> Set<E> inField(Situation situation, DamageKind kind, Class<E> classes) {
        return field(situation, kind).governing(classes);
    }

    /** What governs edges and stairs; the mildest class where nobody surveyed them apart. */
    static <E extends Enum<E>> Set<E> alongEdges(Situation situation, DamageKind kind, Class<E> classes) {
        return edges(situation, kind)
                .map(edges -> edges.governing(classes))
                .orElseGet(() -> notApart(situation, classes));
    }

    /** The worse of what is rare in the field and of what is rare along the edges. */
    static <E extends Enum<E>> Set<E> inPlaces(Situation situation, DamageKind kind, Class<E> classes) {
        Set<E> field = field(situation, kind).local(classes);
        Optional<DamageSpread> edges = edges(situation, kind);
        if (edges.isEmpty()) {
            return field;
        }
        EnumSet<E> worse = EnumSet.noneOf(classes);
        for (E alongEdges : edges.get().local(classes)) {
            for (E inField : field) {
                worse.add(inField.compareTo(alongEdges) > 0 ? inField : alongEdges);
            }
        }
        return worse;
    }

    /** What governs the whole floor. */
    static <E extends Enum<E>> Set<E> overall(Situation situation, DamageKind kind, Class<E> classes) {
        return floor(situation, kind).governing(classes);
    }

    /** What is rare on the floor as a whole. */
    static <E extends Enum<E>> Set<E> rareOverall(Situation situation, DamageKind kind, Class<E> classes) {
        return floor(situation, kind).local(classes);
    }

    /** What occurs on the floor, however rare. */
    static <E extends Enum<E>> Set<E> anywhere(Situation situation, DamageKind kind, Class<E> classes) {
        return floor(situation, kind).anywhere(classes);
    }

    /** The damage of a kind over the whole floor. */
    static DamageSpread floor(Situation situation, DamageKind kind) {
        return DamageSpread.of(situation.survey(), kind, situation.parameters());
    }

    /** The damage of a kind in the open field, or along the edges where they were surveyed apart. */
    static Optional<DamageSpread> spread(Situation situation, DamageKind kind, TrackKind track) {
        return switch (track) {
            case OPEN_FIELD -> Optional.of(field(situation, kind));
            case EDGE -> edges(situation, kind);
            case LOCAL_REPAIR -> Optional.empty();
        };
    }

    private static DamageSpread field(Situation situation, DamageKind kind) {
        return DamageSpread.ofField(situation.survey(), kind, situation.parameters());
    }

    private static Optional<DamageSpread> edges(Situation situation, DamageKind kind) {
        return DamageSpread.ofEdges(situation.survey(), kind, situation.parameters());
    }

    /** The worse of what scratches and etches say of the lanes. */
    static Set<LaneContrast> lanes(Situation situation) {
        EnumSet<LaneContrast> worse = EnumSet.noneOf(LaneContrast.class);
        for (LaneContrast scratches : contrast(situation, DamageKind.SCRATCHES, ScratchClass.class)) {
            for (LaneContrast etches : contrast(situation, DamageKind.ETCHES, EtchClass.class)) {
                worse.add(scratches.compareTo(etches) > 0 ? scratches : etches);
            }
        }
        return worse;
    }

    /** The worse of what scratches, etches and wear say of the lanes. */
    static Set<LaneContrast> lanesWorn(Situation situation) {
        Set<LaneContrast> worn = contrast(situation, DamageKind.WEAR, WearClass.class);
        return worn.equals(EnumSet.of(LaneContrast.EVEN))
                        || lanes(situation).equals(EnumSet.of(LaneContrast.LANES_WORSE))
                ? lanes(situation)
                : worn;
    }

    /** How much is worked; not asked where no lane is worse than the rest. */
    static Set<Extent> extent(Situation situation) {
        Set<Extent> answered = situation.answer(SurveyField.EXTENT, Extent.class);
        boolean even = lanesWorn(situation).equals(EnumSet.of(LaneContrast.EVEN));
        return even && answered.size() > 1 ? EnumSet.of(Extent.WHOLE_FLOOR) : answered;
    }

    private static <E extends Enum<E>> Set<LaneContrast> contrast(
            Situation situation, DamageKind kind, Class<E> classes) {
        if (situation.survey().zones().isEmpty()) {
            return EnumSet.allOf(LaneContrast.class);
        }
        Optional<DamageSpread> lanes = DamageSpread.ofLanes(situation.survey(), kind, situation.parameters());
        Optional<DamageSpread> rest = DamageSpread.offLanes(situation.survey(), kind, situation.parameters());
        if (lanes.isEmpty() || rest.isEmpty()) {
            return notApart(situation, LaneContrast.class);
        }
        EnumSet<LaneContrast> contrasts = EnumSet.noneOf(LaneContrast.class);
        for (E inLanes : lanes.get().governing(classes)) {
            for (E beside : rest.get().governing(classes)) {
                contrasts.add(inLanes.compareTo(beside) > 0 ? LaneContrast.LANES_WORSE : LaneContrast.EVEN);
            }
        }
        return contrasts;
    }

    /** Worktops and walls; before any zone was told, whatever may be. */
    static Set<Presence> noFloor(Situation situation) {
        List<Zone> zones = situation.survey().zones();
        boolean seen = zones.stream().anyMatch(zone -> !zone.kind().isFloor());
        if (zones.isEmpty()) {
            return EnumSet.allOf(Presence.class);
        }
        return EnumSet.of(seen ? Presence.PRESENT : Presence.NONE);
    }

    /** Stairs; a part of the floor that was left out may hold some. */
    static Set<Presence> treads(Situation situation) {
        boolean seen = situation.survey().zones().stream().anyMatch(zone -> zone.kind() == ZoneKind.STAIR);
        return seen ? EnumSet.of(Presence.PRESENT) : notApart(situation, Presence.class);
    }

    /** A floor with a ramp slopes; without one as it was measured. */
    static Set<Slope> slopes(Situation situation) {
        boolean ramp = situation.survey().zones().stream().anyMatch(zone -> zone.kind() == ZoneKind.RAMP);
        return ramp
                ? EnumSet.of(Slope.SLOPED)
                : situation
                        .survey()
                        .answer(SurveyField.SLOPE)
                        .value()
                        .map(EnumSet::of)
                        .orElseGet(() -> EnumSet.allOf(Slope.class));
    }

    /** The mildest class of a part that nobody surveyed apart; any class when a part of the floor was left out. */
    private static <E extends Enum<E>> Set<E> notApart(Situation situation, Class<E> classes) {
        double surveyed = situation.survey().zones().stream()
                .mapToDouble(zone -> zone.share().percent())
                .sum();
        return surveyed > 99.99 ? EnumSet.of(classes.getEnumConstants()[0]) : EnumSet.allOf(classes);
    }
}
