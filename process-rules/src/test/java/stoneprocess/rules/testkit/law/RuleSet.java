package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Runner;

/** Rules that are run without the facade. */
final class RuleSet implements Respondent {
    private final List<LoadedRule> rules;
    private final Parameters parameters;
    private final GritSequence sequence;
    private final RulebaseStamp stamp;
    private @Nullable Engine engine;
    // Many surveys are asked in one order after the other, and an engine is built for each order.
    private volatile @Nullable Ordered last;

    private record Ordered(long seed, Engine engine) {}

    RuleSet(List<LoadedRule> rules, Parameters parameters, GritSequence sequence, RulebaseStamp stamp) {
        this.rules = List.copyOf(rules);
        this.parameters = parameters;
        this.sequence = sequence;
        this.stamp = stamp;
    }

    @Override
    public List<LoadedRule> rules() {
        return rules;
    }

    @Override
    public Recommendation recommend(FloorSurvey survey) {
        return run(engine(), survey, List.of(), UnaryOperator.identity());
    }

    @Override
    public Recommendation recommendInOrder(FloorSurvey survey, long seed) {
        Ordered ordered = last;
        if (ordered == null || ordered.seed() != seed) {
            ordered = new Ordered(seed, new Engine(shuffled(rules, new Random(seed))));
            last = ordered;
        }
        Random random = new Random(~seed);
        return run(ordered.engine(), survey, List.of(), facts -> shuffled(facts, random));
    }

    @Override
    public Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins) {
        return run(engine(), survey, pins, UnaryOperator.identity());
    }

    private synchronized Engine engine() {
        Engine built = engine;
        if (built == null) {
            built = new Engine(rules);
            engine = built;
        }
        return built;
    }

    private Recommendation run(Engine runs, FloorSurvey survey, List<Outcome> pins, UnaryOperator<List<Object>> order) {
        Situation situation = new Situation(survey, parameters, sequence);
        return Assembler.assemble(Runner.run(runs::start, Program.RECOMMEND, situation, pins, order), rules, stamp);
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, random);
        return copy;
    }
}
