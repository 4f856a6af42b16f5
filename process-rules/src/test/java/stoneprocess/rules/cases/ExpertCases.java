package stoneprocess.rules.cases;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;

/** The expert cases of plans and the outcome table, for checks of other rooms. */
public final class ExpertCases {
    private ExpertCases() {}

    /**
     * One case.
     *
     * @param name folder and file
     * @param survey the facts
     * @param judged where an answer is not what the case expects
     */
    public record Judge(String name, FloorSurvey survey, Function<Recommendation, List<String>> judged) {
        /** Where the answer is not what the case expects; none when it is. */
        public List<String> misses(Recommendation answer) {
            return judged.apply(answer);
        }
    }

    /** The cells of the outcome table, as cases. */
    public static List<Judge> cells() {
        return FloorTableTest.judges();
    }

    /** All cases, by name. */
    public static List<Judge> judges() {
        return Stream.concat(ExpertCase.all().stream(), TreatmentTableTest.cells().stream())
                .map(expert -> new Judge(expert.name(), expert.survey(), expert::misses))
                .toList();
    }
}
