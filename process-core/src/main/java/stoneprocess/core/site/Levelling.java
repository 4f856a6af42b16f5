package stoneprocess.core.site;

import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.estimate.HighSpots;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

/**
 * What a first metal cut that takes waves or lips down does where nothing stands proud.
 *
 * @param survey tells where it stands proud
 * @param sequence the grits that there are to choose from
 * @param removal what a pass takes off this stone
 * @param shown how deep it is cut everywhere so that aggregate shows, see {@link AggregateDepth}; empty for no deeper
 */
public record Levelling(FloorSurvey survey, GritSequence sequence, Removal removal, Optional<Range<Length>> shown) {
    /** Each edge of a piece may be the one that stands proud. */
    private static final int EDGES_OF_A_PIECE = 4;

    public Levelling {
        Refuse.nulls(Levelling.class, survey, sequence, removal, shown);
    }

    /**
     * The high spots of a first cut; empty where it is even all over, or none is known.
     *
     * @param proud what the cut takes off where it stands proud
     * @param added the weight put on the machine
     */
    public Optional<HighSpots> of(AbrasiveGrade first, Range<Length> proud, MachineClass machine, Mass added) {
        double part = proud();
        Range<Length> even = even(first);
        if (first.bond() != Bond.METAL || part == 0 || even.high().compareTo(proud.high()) >= 0) {
            return Optional.empty();
        }
        Range<Length> depth = Range.of(least(even.low(), proud.low()), even.high());
        return Optional.of(new HighSpots(new Share(100 * part), depth, removal.passes(depth, first, machine, added)));
    }

    private static Length least(Length first, Length second) {
        return first.compareTo(second) < 0 ? first : second;
    }

    /** The grade's own scratches to those of the next coarser one, deep scratches, or down to what is to show. */
    private Range<Length> even(AbrasiveGrade grade) {
        double own = removal.leaves(grade).millimetres();
        double coarser = sequence.grades(grade.bond()).stream()
                .filter(other -> other.number() < grade.number())
                .mapToDouble(other -> removal.leaves(other).millimetres())
                .min()
                .orElse(2 * own);
        double scratched = field().flatMap(zone -> zone.damage(DamageKind.SCRATCHES).value().stream())
                .filter(damage -> damage.severity(removal.parameters()) >= ScratchClass.FELT_BY_COIN.ordinal())
                .mapToDouble(this::deepest)
                .max()
                .orElse(0);
        double leastShown = shown.map(range -> range.low().millimetres()).orElse(0.0);
        double mostShown = shown.map(range -> range.high().millimetres()).orElse(0.0);
        return Range.of(
                new Length(Math.max(Math.max(own, scratched), leastShown)),
                new Length(Math.max(Math.max(coarser, scratched), mostShown)));
    }

    /** As measured, else the limit of the next class. */
    private double deepest(Damage scratches) {
        ScratchClass deeper = scratches.severity(removal.parameters()) == ScratchClass.FELT_BY_COIN.ordinal()
                ? ScratchClass.DEEP
                : ScratchClass.GOUGED;
        return scratches
                .depth()
                .orElseGet(() -> removal.parameters().get("scratch-depth." + deeper.key(), Length.class))
                .millimetres();
    }

    private Stream<Zone> field() {
        return survey.zones().stream().filter(zone -> zone.kind() != ZoneKind.EDGE && zone.kind() != ZoneKind.STAIR);
    }

    /** The share of the field that stands proud, of one. */
    private double proud() {
        double surveyed = field().mapToDouble(zone -> zone.share().percent()).sum();
        double proud = field().mapToDouble(zone -> zone.share().percent()
                        * (part(zone, DamageKind.WAVINESS, WavinessClass.WAVY.ordinal())
                                + ground(part(zone, DamageKind.LIPPAGE, LippageClass.MODERATE.ordinal()))))
                .sum();
        return surveyed == 0 ? 0 : Math.min(1, proud / surveyed);
    }

    /** The pieces of which at least one edge stands proud. */
    private static double ground(double joints) {
        return 1 - StrictMath.pow(1 - joints, EDGES_OF_A_PIECE);
    }

    /** All of a zone of which no share was told. */
    private double part(Zone zone, DamageKind kind, int severity) {
        return zone.damage(kind)
                .value()
                .filter(damage -> damage.severity(removal.parameters()) >= severity)
                .map(damage -> damage.share().map(Share::percent).orElse(100.0) / 100)
                .orElse(0.0);
    }
}
