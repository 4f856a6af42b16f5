package stoneprocess.core.site;

import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;

/**
 * One way of doing a floor that an owner can choose.
 *
 * @param finish the finish wanted; empty for that of the survey
 * @param scope how much of its plan is done
 */
public record Variant(Optional<Finish> finish, VariantScope scope) {
    public Variant {
        Refuse.nulls(Variant.class, finish, scope);
    }

    /** The plan for the survey as it is. */
    public static Variant asPlanned() {
        return new Variant(Optional.empty(), VariantScope.AS_PLANNED);
    }

    /** All of the plan for another finish. */
    public static Variant of(Finish finish) {
        return new Variant(Optional.of(finish), VariantScope.AS_PLANNED);
    }

    /**
     * Reads a finish, a scope, or both with a comma between, such as {@code hone,unsealed}.
     *
     * @param field the name of what is read, for an error
     */
    public static Variant parse(String text, String field) {
        String[] parts = text.split(",", -1);
        Optional<Finish> finish = find(Finish.values(), parts[0]);
        Optional<VariantScope> scope = find(VariantScope.values(), parts[parts.length - 1]);
        boolean whole = parts.length == 1
                ? finish.isPresent() || scope.isPresent()
                : parts.length == 2 && finish.isPresent() && scope.isPresent();
        if (!whole) {
            throw new InvalidInputException(
                    field,
                    text,
                    "a finish, one of " + keys(Finish.values()) + ", or one of " + keys(VariantScope.values())
                            + ", or both with a comma between");
        }
        return new Variant(finish, scope.orElse(VariantScope.AS_PLANNED));
    }

    private static <T extends Term> Optional<T> find(T[] terms, String key) {
        return Stream.of(terms).filter(term -> term.key().equals(key)).findFirst();
    }

    private static String keys(Term[] terms) {
        return String.join(", ", Stream.of(terms).map(Term::key).toList());
    }

    /** The survey with the finish that is wanted here; a gloss that was agreed for another one is forgotten. */
    public FloorSurvey on(FloorSurvey survey) {
        return finish.map(wanted -> survey.toBuilder()
                        .set(SurveyField.GOAL, Goal.valueOf(wanted.name()))
                        .unknown(SurveyField.GOAL_GLOSS)
                        .build())
                .orElse(survey);
    }
}
