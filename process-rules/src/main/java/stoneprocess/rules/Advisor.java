package stoneprocess.rules;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.assemble.FollowUps;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.review.LogReview;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;

/**
 * Answers surveys. Immutable and safe to share between threads; every call runs by itself.
 *
 * <p>It advises. Local codes and the licensed roles that the warnings name decide.
 */
public final class Advisor {
    private final Rulebase rulebase;
    private final Options options;

    private Advisor(Rulebase rulebase, Options options) {
        this.rulebase = rulebase;
        this.options = options;
    }

    /** An advisor with the shipped rules and the usual sequence. */
    public static Advisor standard() {
        return of(Rulebase.standard(), Options.defaults());
    }

    /** An advisor with a rulebase and options of the caller's. */
    public static Advisor of(Rulebase rulebase, Options options) {
        return new Advisor(rulebase, options);
    }

    /** The rules that it answers by. */
    public Rulebase rulebase() {
        return rulebase;
    }

    /** How it was asked to plan. */
    public Options options() {
        return options;
    }

    /**
     * Plans a floor. Safe to call from several threads; nothing is kept between calls. Quantities of the survey carry
     * their units, so do those of the plan; every reason names its rule, whose card names the source.
     *
     * @param survey what is known; what is not known is read cautiously and asked for, so that an empty survey is
     *     answered too
     * @return the plan with its reasons, or a refusal or an impasse with its causes; never null
     * @throws NullPointerException when the survey is null
     * @throws InvalidInputException naming {@code equipment.grades}, when a grade on hand is not one of the options'
     *     sequence
     * @throws stoneprocess.rules.internal.engine.RulebaseException when the rulebase itself is at fault, for example when
     *     rules do not come to rest; no survey brings that about with the shipped rules
     */
    public Recommendation recommend(FloorSurvey survey) {
        requireGrades(Objects.requireNonNull(survey, "survey"));
        return recommend(survey, List.of());
    }

    /**
     * Reads the job log of a floor that is worked by a plan, and says what comes next.
     *
     * @param plan what was recommended, by this rulebase; one without a grade to work is refused
     * @param log what was noted so far; empty before the first pass
     */
    public NextMove followUp(Recommendation plan, JobLog log) {
        requirePlan(plan);
        return answer(LogReview.of(plan, log));
    }

    /**
     * Traces signs of a fault to causes, and says how to tell them apart and what to do.
     *
     * @param plan what was recommended, by this rulebase; one without a grade to work is refused
     * @param signs what was seen, heard or felt, beside the signs of the log's latest looks; at least one in all
     * @param log what was noted so far; where it notes no work, the signs are those of a finished floor
     */
    public Diagnosis diagnose(Recommendation plan, Set<Sign> signs, JobLog log) {
        requirePlan(plan);
        LogReview review = LogReview.of(plan, log, signs);
        if (review.signs().isEmpty()) {
            throw new InvalidInputException(
                    "signs", "none", "at least one of " + String.join(", ", Term.keys(List.of(Sign.values()))));
        }
        return new Diagnosis(review.signs(), answer(review));
    }

    private NextMove answer(LogReview review) {
        return FollowUps.answer(
                rulebase.engine(), rulebase.rules(), rulebase.stamp(), review, UnaryOperator.identity());
    }

    private void requirePlan(Recommendation plan) {
        if (!plan.rulebase().hash().equals(rulebase.stamp().hash())) {
            throw new InvalidInputException(
                    "recommendation.rulebase",
                    plan.rulebase().hash(),
                    "a recommendation of this rulebase, " + rulebase.stamp().hash());
        }
        if (plan.plan().filter(made -> !made.tracks().isEmpty()).isEmpty()) {
            throw new InvalidInputException(
                    "recommendation.status",
                    plan.status().key(),
                    "a plan with grades to work; there is nothing to follow");
        }
    }

    private void requireGrades(FloorSurvey survey) {
        List<AbrasiveGrade> known = options.sequence().grades();
        survey.answer(SurveyField.GRADES).value().stream()
                .flatMap(List::stream)
                .filter(grade -> !known.contains(grade))
                .findFirst()
                .ifPresent(grade -> {
                    throw new InvalidInputException(
                            "equipment.grades",
                            grade.key(),
                            "grades of the options' sequence, of the same grain: "
                                    + String.join(
                                            ", ",
                                            known.stream()
                                                    .map(AbrasiveGrade::key)
                                                    .toList()));
                });
    }

    /** The same with topics closed beforehand, whatever the rules say. */
    Recommendation recommend(FloorSurvey survey, List<Outcome> pins) {
        Situation situation = new Situation(survey, rulebase.parameters(), options.sequence());
        Run run = Runner.run(rulebase.engine(), Program.RECOMMEND, situation, pins, UnaryOperator.identity());
        return Assembler.assemble(run, rulebase.rules(), rulebase.stamp());
    }
}
