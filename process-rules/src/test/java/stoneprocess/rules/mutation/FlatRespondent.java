package stoneprocess.rules.mutation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;
import stoneprocess.rules.testkit.law.Respondent;

/** Answers by rules that run without the engine, so that a mutant costs no compiler. */
record FlatRespondent(List<LoadedRule> rules, FlatRules flat) implements Respondent {
    private static final RulebaseStamp STAMP = new RulebaseStamp("unreleased", "0".repeat(64), List.of(), List.of());

    @Override
    public Recommendation recommend(FloorSurvey survey) {
        return Assembler.assemble(run(survey), rules, STAMP);
    }

    @Override
    public Recommendation recommendInOrder(FloorSurvey survey, long seed) {
        Situation situation = situation(survey);
        List<Object> facts = new ArrayList<>(Facts.after(Optional.empty(), situation));
        Collections.shuffle(facts, new Random(seed));
        return Assembler.assemble(Runner.runTo(Stage.SAFETY, flat, situation, facts), rules, STAMP);
    }

    @Override
    public Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins) {
        Situation situation = situation(survey);
        List<Object> facts = Facts.after(Optional.empty(), situation);
        return Assembler.assemble(Runner.runTo(Stage.SAFETY, flat, situation, pins, facts), rules, STAMP);
    }

    /** The run with all facts that came up. */
    Run run(FloorSurvey survey) {
        Situation situation = situation(survey);
        return Runner.runTo(Stage.SAFETY, flat, situation, Facts.after(Optional.empty(), situation));
    }

    private static Situation situation(FloorSurvey survey) {
        return new Situation(survey, Parameters.standard(), GritSequence.standard());
    }
}
