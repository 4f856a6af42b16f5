package stoneprocess.rules.internal.classify;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.site.AggregateDepth;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.TrackKind;

/** What a grade has to take off. */
final class CutDepth {
    private final Situation situation;
    private final TrackKind track;
    private final Removal removal;

    private CutDepth(Situation situation, TrackKind track) {
        this.situation = situation;
        this.track = track;
        this.removal = new Removal(situation.stone().cutting(), situation.parameters());
    }

    /**
     * What a grade of a track has to take off: the scratches of the grade before it; the first one, what governs the
     * track.
     *
     * @param before the grade worked before it; empty for the first
     */
    static Range<Length> of(Situation situation, TrackKind track, Optional<AbrasiveGrade> before, AbrasiveGrade grade) {
        CutDepth depth = new CutDepth(situation, track);
        return before.map(coarser -> exactly(depth.removal.leaves(coarser))).orElseGet(() -> depth.first(grade));
    }

    private static Range<Length> exactly(Length depth) {
        return Range.of(depth, depth);
    }

    /**
     * From as deep as its own scratches, or a finer grade would do, to as deep as those of the next coarser one, or that
     * one would be needed; more where the damage is known to be deeper. Steps and waves are cut down by metal alone, and
     * stand on a part of the floor that carries the load; aggregate is shown by metal alone, too.
     */
    private Range<Length> first(AbrasiveGrade grade) {
        Length own = removal.leaves(grade);
        Length coarser = situation.sequence().grades(grade.bond()).stream()
                .filter(other -> other.number() < grade.number())
                .max(Comparator.comparingInt(AbrasiveGrade::number))
                .map(removal::leaves)
                .orElseGet(() -> new Length(2 * own.millimetres()));
        Range<Length> depth = Range.of(own, max(own, coarser));
        depth = deeper(depth, known(DamageKind.SCRATCHES, ScratchClass.class, ScratchClass.FELT_BY_COIN), 1);
        if (grade.bond() == Bond.METAL && track != TrackKind.LOCAL_REPAIR) {
            depth = deeper(depth, AggregateDepth.of(situation.survey(), situation.stone(), situation.parameters()), 1);
            double highSpots = situation.parameters().part("removal.high-spots");
            depth = deeper(depth, known(DamageKind.LIPPAGE, LippageClass.class, LippageClass.MODERATE), highSpots);
            depth = deeper(depth, known(DamageKind.WAVINESS, WavinessClass.class, WavinessClass.WAVY), highSpots);
        }
        return depth;
    }

    private static Range<Length> deeper(Range<Length> depth, Optional<Range<Length>> damage, double faster) {
        return damage.map(range -> Range.of(
                        max(depth.low(), new Length(range.low().millimetres() / faster)),
                        max(depth.high(), new Length(range.high().millimetres() / faster))))
                .orElse(depth);
    }

    private static Length max(Length first, Length second) {
        return first.compareTo(second) < 0 ? second : first;
    }

    /** As measured, else from the lower limit of its class to that of the next; empty below a class and in doubt. */
    private <E extends Enum<E>> Optional<Range<Length>> known(DamageKind kind, Class<E> classes, E from) {
        Set<E> governing = governing(kind, classes);
        E worst = governing.iterator().next();
        if (governing.size() > 1 || worst.compareTo(from) < 0) {
            return Optional.empty();
        }
        Optional<Length> measured = DamageClasses.spread(situation, kind, track).flatMap(DamageSpread::governingDepth);
        return Optional.of(measured.map(CutDepth::exactly).orElseGet(() -> ofClass(kind, classes, worst)));
    }

    private <E extends Enum<E>> Set<E> governing(DamageKind kind, Class<E> classes) {
        return track == TrackKind.LOCAL_REPAIR
                ? DamageClasses.inPlaces(situation, kind, classes)
                : DamageClasses.spread(situation, kind, track)
                        .map(spread -> spread.governing(classes))
                        .orElseGet(() -> DamageClasses.inField(situation, kind, classes));
    }

    private <E extends Enum<E>> Range<Length> ofClass(DamageKind kind, Class<E> classes, E worst) {
        Length low = limit(kind, worst);
        E[] all = classes.getEnumConstants();
        boolean last = worst.ordinal() == all.length - 1;
        return Range.of(low, last ? low : limit(kind, all[worst.ordinal() + 1]));
    }

    private Length limit(DamageKind kind, Enum<?> constant) {
        Parameters parameters = situation.parameters();
        String key = ((Term) constant).key();
        return parameters.get(kind.depthScale().orElseThrow() + "." + key, Length.class);
    }
}
