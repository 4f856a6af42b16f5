package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Move;

/**
 * The grits of one track from the coarsest that it could go back to: those in use of the first planned grit's bond
 * that are coarser, then the planned ones.
 *
 * @param grades coarse to fine
 * @param start where the plan starts in it
 * @param now where the work stands in it; -1 when its grit is not in it
 */
record Ladder(List<AbrasiveGrade> grades, int start, int now) {
    /**
     * @param inUse grits on hand, or all
     * @param planned the planned grits, at least one
     * @param worked the grits worked, in their order
     * @param failed the grits that did not clear the test area
     */
    static Ladder of(
            GritSequence inUse, List<AbrasiveGrade> planned, List<AbrasiveGrade> worked, List<AbrasiveGrade> failed) {
        List<AbrasiveGrade> grades = new ArrayList<>();
        AbrasiveGrade first = planned.get(0);
        inUse.grades(first.bond()).stream()
                .filter(grade -> grade.number() < first.number())
                .forEach(grades::add);
        int start = grades.size();
        grades.addAll(planned);
        worked.stream().filter(grade -> !grades.contains(grade)).forEach(grades::add);
        grades.sort(AbrasiveGrade.IN_ORDER);
        int now = worked.isEmpty() ? -1 : grades.indexOf(worked.get(worked.size() - 1));
        AbrasiveGrade coarsest = Stream.concat(worked.stream(), failed.stream().filter(grades::contains))
                .min(AbrasiveGrade.IN_ORDER)
                .orElse(first);
        return new Ladder(List.copyOf(grades), Math.min(grades.indexOf(first), grades.indexOf(coarsest)), now);
    }

    /** The grit at which a move takes the work up again; empty when there is none so coarse. */
    Optional<AbrasiveGrade> restart(Move move) {
        return switch (move) {
            case ONE_GRADE_BACK -> at(now - 1);
            case TWO_GRADES_BACK -> at(now - 2);
            case BACK_TO_START -> Optional.of(grades.get(start));
            case START_COARSER -> start > 0 ? Optional.of(grades.get(start - 1)) : Optional.empty();
            case MORE_PASSES, MEND_AND_REPEAT, LOOK_FIRST, RE_PLAN, STOP_AND_ASK -> at(now);
            case TOUCH_UP_LANES -> Optional.of(grades.get(grades.size() - 1));
            case EDGES_FIRST, GO_ON, ACCEPT -> at(now + 1);
        };
    }

    private Optional<AbrasiveGrade> at(int index) {
        return now >= 0 && index >= 0 && index < grades.size() ? Optional.of(grades.get(index)) : Optional.empty();
    }
}
