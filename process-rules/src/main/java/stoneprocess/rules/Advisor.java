package stoneprocess.rules;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.classify.Situation;
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
     * Plans a floor.
     *
     * @param survey what is known; what is not known is read cautiously and asked for
     * @return the plan with its reasons, or a refusal or an impasse with its causes
     */
    public Recommendation recommend(FloorSurvey survey) {
        return recommend(Objects.requireNonNull(survey, "survey"), List.of());
    }

    /** The same with topics closed beforehand, whatever the rules say. */
    Recommendation recommend(FloorSurvey survey, List<Outcome> pins) {
        Situation situation = new Situation(survey, rulebase.parameters(), options.sequence());
        Run run = Runner.run(rulebase.engine(), Program.RECOMMEND, situation, pins, UnaryOperator.identity());
        return Assembler.assemble(run, rulebase.rules(), rulebase.stamp());
    }
}
