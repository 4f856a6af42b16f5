package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.StepRule;
import stoneprocess.core.topic.TransitionUse;

/**
 * The path of grits from the first cut to the last grit. Numbers are compared inside one sequence only. A step is
 * legal when
 *
 * <ul>
 *   <li>inside a bond the number rises by no more than the largest tolerated ratio, which is wider for metal;
 *   <li>from metal to a later bond the number stays or falls a little, since metal cuts deeper than its number, and metal
 *       is not left before it has become fine enough;
 *   <li>from any other bond to a later one the number stays, or moves by about a factor of two.
 * </ul>
 *
 * Among legal paths the one with the fewest jumps over the usual ratio wins, then the one with the fewest grits, then
 * the one that leaves metal first.
 */
public final class GritPath {
    private final GritSequence sequence;
    private final GritSequence whole;
    private final Set<Bond> bonds;
    private final StepRule stepRule;
    private final TransitionUse transition;
    private final double aim;
    private final double most;
    private final double metalMost;
    private final double leaveMetalFrom;
    private final double nearEnough;
    private final int refreshSteps;
    private final int refreshCoarsest;

    /**
     * @param sequence the grits in use
     * @param whole the grits that there are to choose from, on hand or not; a refresh starts where this one would
     * @param bonds the bonds that may be used on the floor
     * @param stepRule whether grits may be skipped
     * @param transition whether a transition bond follows metal where the sequence has one
     * @param parameters the ratios
     */
    public GritPath(
            GritSequence sequence,
            GritSequence whole,
            Set<Bond> bonds,
            StepRule stepRule,
            TransitionUse transition,
            Parameters parameters) {
        this.sequence = sequence;
        this.whole = whole;
        this.bonds = Set.copyOf(bonds);
        this.stepRule = stepRule;
        this.transition = transition;
        this.aim = parameters.part("step-ratio.aim");
        this.most = parameters.part("step-ratio.most");
        this.metalMost = parameters.part("step-ratio.metal-most");
        this.nearEnough = parameters.part("step-ratio.same-grade");
        this.leaveMetalFrom = parameters.get("metal.leave-from", Count.class).number();
        this.refreshSteps = (int) parameters.get("refresh.steps", Count.class).number();
        this.refreshCoarsest =
                (int) parameters.get("refresh.coarsest", Count.class).number();
    }

    /** A path over grits of which all are on hand. */
    public GritPath(
            GritSequence sequence,
            Set<Bond> bonds,
            StepRule stepRule,
            TransitionUse transition,
            Parameters parameters) {
        this(sequence, sequence, bonds, stepRule, transition, parameters);
    }

    /** The names of the parameters that go into a path. */
    static List<String> parameters() {
        return List.of(
                "step-ratio.aim",
                "step-ratio.most",
                "step-ratio.metal-most",
                "step-ratio.same-grade",
                "metal.leave-from",
                "refresh.steps",
                "refresh.coarsest");
    }

    /** The path, coarse to fine; empty when the grits in use allow none. */
    public Optional<List<AbrasiveGrade>> plan(Cut cut, LastGrit lastGrit) {
        Optional<AbrasiveGrade> end = last(lastGrit);
        if (end.isEmpty()) {
            return Optional.empty();
        }
        Optional<AbrasiveGrade> start = cut == Cut.REFRESH ? refreshFrom(lastGrit, end.get()) : first(cut);
        boolean finerThanLast = start.isPresent()
                ? start.get().bond() == Bond.RESIN
                        && start.get().number() > end.get().number()
                : isNeverMade(cut, lastGrit);
        if (finerThanLast) {
            return Optional.of(List.of(end.get()));
        }
        return start.map(from -> best(from, end.get(), new HashMap<>())).map(Candidate::path);
    }

    /** A resin cut that is finer than the last grit is not made, so that its own grit is not missed. */
    private boolean isNeverMade(Cut cut, LastGrit lastGrit) {
        if (cut == Cut.NONE || cut == Cut.REFRESH || cut.bond() != Bond.RESIN || !bonds.contains(Bond.RESIN)) {
            return false;
        }
        Optional<AbrasiveGrade> last = whole.nearest(Bond.RESIN, lastGrit.number());
        return whole.nearest(Bond.RESIN, cut.number())
                .filter(grade ->
                        last.filter(end -> grade.number() > end.number()).isPresent())
                .isPresent();
    }

    /** The path from a grit in use to the last; empty when the grits in use allow none. */
    public Optional<List<AbrasiveGrade>> from(AbrasiveGrade start, LastGrit lastGrit) {
        return last(lastGrit)
                .filter(end -> has(start))
                .flatMap(end -> Optional.ofNullable(best(start, end, new HashMap<>())))
                .map(Candidate::path);
    }

    /** True when the grit is in use. */
    boolean has(AbrasiveGrade grade) {
        return sequence.grades().contains(grade);
    }

    /** True when one grit may follow another. */
    public boolean legal(AbrasiveGrade from, AbrasiveGrade to) {
        if (!bonds.contains(from.bond()) || !bonds.contains(to.bond())) {
            return false;
        }
        double ratio = (double) to.number() / from.number();
        if (from.bond() == to.bond()) {
            if (ratio <= 1) {
                return false;
            }
            if (stepRule == StepRule.NO_SKIP && !next(from).equals(Optional.of(to))) {
                return false;
            }
            return ratio <= (from.bond() == Bond.METAL ? metalMost : most);
        }
        if (from.bond() == Bond.METAL) {
            boolean fineEnough = from.number() >= leaveMetalFrom || next(from).isEmpty();
            boolean skipsTransition = to.bond() != Bond.TRANSITION && wantsTransition();
            return fineEnough && !skipsTransition && ratio <= 1 && ratio >= 1 / aim;
        }
        boolean forward = from.bond().compareTo(to.bond()) < 0;
        return forward && ratio >= 1 / aim && ratio <= (stepRule == StepRule.NO_SKIP ? 1 : aim);
    }

    private boolean wantsTransition() {
        return transition == TransitionUse.USE
                && bonds.contains(Bond.TRANSITION)
                && !sequence.grades(Bond.TRANSITION).isEmpty();
    }

    private Optional<AbrasiveGrade> next(AbrasiveGrade grade) {
        List<AbrasiveGrade> grades = sequence.grades(grade.bond());
        int index = grades.indexOf(grade) + 1;
        return index < grades.size() ? Optional.of(grades.get(index)) : Optional.empty();
    }

    private Optional<AbrasiveGrade> last(LastGrit lastGrit) {
        return sequence.nearest(Bond.RESIN, lastGrit.number()).filter(grade -> {
            double ratio = (double) grade.number() / lastGrit.number();
            return ratio <= nearEnough && ratio >= 1 / aim;
        });
    }

    private Optional<AbrasiveGrade> first(Cut cut) {
        if (!bonds.contains(cut.bond())) {
            return Optional.empty();
        }
        return near(cut.bond(), cut.number());
    }

    /** Where the whole sequence would start a refresh, if there is such a grit in use. */
    private Optional<AbrasiveGrade> refreshFrom(LastGrit lastGrit, AbrasiveGrade end) {
        List<AbrasiveGrade> resin = whole.grades(Bond.RESIN);
        int last = whole.nearest(Bond.RESIN, Math.min(lastGrit.number(), end.number()))
                .map(resin::indexOf)
                .orElse(-1);
        if (last < 0) {
            return Optional.empty();
        }
        int index = Math.max(0, last - refreshSteps + 1);
        while (index < last && resin.get(index).number() < refreshCoarsest) {
            index++;
        }
        return near(Bond.RESIN, resin.get(index).number());
    }

    private Optional<AbrasiveGrade> near(Bond bond, int number) {
        return sequence.nearest(bond, number).filter(grade -> {
            double ratio = (double) grade.number() / number;
            return ratio <= nearEnough && ratio >= 1 / nearEnough;
        });
    }

    private record Candidate(List<AbrasiveGrade> path, int wideJumps) {
        private long metalGrades() {
            return path.stream().filter(grade -> grade.bond() == Bond.METAL).count();
        }
    }

    private static final Comparator<Candidate> BEST = Comparator.comparingInt(Candidate::wideJumps)
            .thenComparingInt(candidate -> candidate.path().size())
            .thenComparingLong(Candidate::metalGrades)
            .thenComparing(candidate -> candidate.path().toString());

    /** The best path from a grit to the end; null when there is none. */
    private @Nullable Candidate best(
            AbrasiveGrade from, AbrasiveGrade end, Map<AbrasiveGrade, Optional<Candidate>> memo) {
        if (from.equals(end)) {
            return new Candidate(List.of(end), 0);
        }
        Optional<Candidate> known = memo.get(from);
        if (known != null) {
            return known.orElse(null);
        }
        Candidate best = null;
        for (AbrasiveGrade to : sequence.grades()) {
            if (!legal(from, to)) {
                continue;
            }
            Candidate rest = best(to, end, memo);
            if (rest != null) {
                List<AbrasiveGrade> path = new ArrayList<>();
                path.add(from);
                path.addAll(rest.path());
                boolean wide = from.bond() == to.bond() && (double) to.number() / from.number() > aim;
                Candidate candidate = new Candidate(List.copyOf(path), rest.wideJumps() + (wide ? 1 : 0));
                if (best == null || BEST.compare(candidate, best) < 0) {
                    best = candidate;
                }
            }
        }
        memo.put(from, Optional.ofNullable(best));
        return best;
    }
}
