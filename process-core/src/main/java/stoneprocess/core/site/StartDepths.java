package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.gloss.OldDamage;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;

/** What the grits of a plan take off from each start on, as {@link Removal} reckons it, in the likely number of passes. */
final class StartDepths {
    private static final int STEPS = 3;

    private final Recommendation recommendation;
    private final List<PlannedStep> steps;
    private final Removal removal;

    /** @param steps of one track, at least one */
    StartDepths(Recommendation recommendation, List<PlannedStep> steps) {
        this.recommendation = recommendation;
        this.steps = steps;
        this.removal = new Removal(KnownStone.of(recommendation).cutting(), recommendation.parameters());
    }

    /** Empty where the first grit cuts steps or waves down, whose depth says nothing of damage under the gloss. */
    Optional<Range<Length>> damage() {
        PlannedStep first = steps.get(0);
        boolean levelled = first.grade().bond() == Bond.METAL
                && (isKnown(DamageKind.LIPPAGE, LippageClass.MODERATE.ordinal())
                        || isKnown(DamageKind.WAVINESS, WavinessClass.WAVY.ordinal()));
        return levelled ? Optional.empty() : Optional.of(first.depth());
    }

    private boolean isKnown(DamageKind kind, int severity) {
        Parameters parameters = recommendation.parameters();
        return recommendation.survey().zones().stream()
                .flatMap(zone -> zone.damage(kind).value().stream())
                .anyMatch(damage -> damage.severity(parameters) >= severity);
    }

    /** The next coarser grade of the plan's first bond, the plan's first and the next two of the plan; coarse to fine. */
    List<AbrasiveGrade> starts() {
        return Stream.concat(
                        coarser().stream().limit(1), steps.stream().limit(STEPS).map(PlannedStep::grade))
                .toList();
    }

    /** The grades of the first one's bond that are coarser, the nearest first. */
    private List<AbrasiveGrade> coarser() {
        AbrasiveGrade first = steps.get(0).grade();
        List<AbrasiveGrade> coarser = new ArrayList<>(recommendation.sequence().grades(first.bond()).stream()
                .filter(grade -> grade.number() < first.number())
                .toList());
        Collections.reverse(coarser);
        return coarser;
    }

    /**
     * What a start takes off.
     *
     * @param start one of the plan's grades, or one of its first bond that is coarser
     */
    OldDamage from(Range<Length> damage, AbrasiveGrade start) {
        Length planned = new Length(takenOff(steps));
        int step = steps.stream().map(PlannedStep::grade).toList().indexOf(start);
        double takenOff = step >= 0
                ? takenOff(steps.subList(step, steps.size()))
                : planned.millimetres() + moreThanPlanned(damage, start);
        return new OldDamage(damage, planned, new Length(takenOff));
    }

    /** What work takes off that began with a resin grit, after the coarser bonds of the plan if it has any. */
    OldDamage fromResin(Range<Length> damage, int coarsest) {
        List<PlannedStep> from = steps.stream()
                .filter(step ->
                        step.grade().bond() != Bond.RESIN || step.grade().number() >= coarsest)
                .toList();
        Optional<AbrasiveGrade> coarser = coarser().stream()
                .filter(grade -> grade.bond() == Bond.RESIN && grade.number() >= coarsest)
                .reduce((nearest, last) -> last);
        return coarser.map(start -> from(damage, start))
                .orElseGet(() -> new OldDamage(damage, new Length(takenOff(steps)), new Length(takenOff(from))));
    }

    private double takenOff(List<PlannedStep> from) {
        return from.stream().mapToDouble(this::takenOff).sum();
    }

    private double takenOff(PlannedStep step) {
        double passes = (step.passes().low() + step.passes().high()) / 2.0;
        return passes * middle(removal.takes(1, step.grade(), step.machine(), TrackIntensity.middle(step)));
    }

    /** A coarser start cuts as deep as it is meant for; each grit from it to the plan's start is cleared by the next. */
    private double moreThanPlanned(Range<Length> damage, AbrasiveGrade start) {
        List<AbrasiveGrade> coarser = coarser();
        int last = coarser.indexOf(start);
        double own = removal.leaves(start).millimetres();
        double next = last + 1 < coarser.size()
                ? removal.leaves(coarser.get(last + 1)).millimetres()
                : 2 * own;
        double cleared = coarser.subList(0, last + 1).stream()
                .mapToDouble(grade -> removal.leaves(grade).millimetres())
                .sum();
        return cleared + Math.max(0, (own + next) / 2 - middle(damage));
    }

    private static double middle(Range<Length> range) {
        return (range.low().millimetres() + range.high().millimetres()) / 2;
    }
}
