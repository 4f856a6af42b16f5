package stoneprocess.rules.cases;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.internal.review.LogReview;

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

    /** A job log or signs with what a case expects of the answer. */
    public record FollowJudge(String name, LogReview review, Function<NextMove, List<String>> judged) {
        /** Where the answer is not what the case expects; none when it is. */
        public List<String> misses(NextMove answer) {
            return judged.apply(answer);
        }
    }

    /** The cases written blind from published sources, by name. */
    public static List<Judge> blind() {
        return ValidationCase.all().stream()
                .map(blind -> new Judge(blind.name(), blind.survey(), blind::misses))
                .toList();
    }

    /** The cases of floors in work and of faults. */
    public static List<FollowJudge> follow() {
        Advisor advisor = Advisor.standard();
        return Stream.of("follow", "diagnose")
                .flatMap(folder -> FollowCase.all(folder).stream())
                .map(expert -> new FollowJudge(expert.name(), expert.review(advisor), expert::misses))
                .toList();
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
