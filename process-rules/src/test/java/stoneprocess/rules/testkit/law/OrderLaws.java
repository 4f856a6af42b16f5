package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.topic.Subject;

/** Laws by which one run equals another. */
final class OrderLaws {
    private OrderLaws() {}

    static List<Violation> order(Respondent respondent, FloorSurvey survey, long seed) {
        return differences(
                Laws.ORDER_MAKES_NO_DIFFERENCE.id(),
                respondent.recommend(survey),
                respondent.recommendInOrder(survey, seed));
    }

    static List<Violation> again(Respondent respondent, FloorSurvey survey, long seed) {
        Respondent asking = respondent.asking();
        return differences(Laws.SAME_ANSWER_AGAIN.id(), asking.recommend(survey), asking.recommend(survey));
    }

    static List<Violation> json(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation printed = respondent.recommend(survey);
        try {
            Recommendation read = Json.RECOMMENDATION.read(Json.RECOMMENDATION.print(printed));
            return differences(Laws.JSON_IS_LOSSLESS.id(), printed, read);
        } catch (InvalidInputException e) {
            return List.of(new Violation(
                    Laws.JSON_IS_LOSSLESS.id(),
                    "recommendation",
                    Subject.FLOOR,
                    printed.toString(),
                    e.getMessage(),
                    survey));
        }
    }

    private static List<Violation> differences(String law, Recommendation one, Recommendation other) {
        if (one.equals(other) && one.hashCode() == other.hashCode()) {
            return List.of();
        }
        List<Violation> violations = new ArrayList<>();
        for (Outcome outcome : one.outcomes()) {
            if (!other.outcomes().contains(outcome)) {
                String found = other.outcomes().stream()
                        .filter(candidate -> candidate.closes(outcome.topic(), outcome.subject()))
                        .map(Outcome::toString)
                        .findFirst()
                        .orElse("not closed");
                violations.add(new Violation(
                        law, outcome.topic().id(), outcome.subject(), outcome.toString(), found, one.survey()));
            }
        }
        if (violations.isEmpty()) {
            violations.add(new Violation(
                    law, "recommendation", Subject.FLOOR, one.toString(), other.toString(), one.survey()));
        }
        return violations;
    }
}
