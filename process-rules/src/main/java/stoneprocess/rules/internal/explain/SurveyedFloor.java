package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Change;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;

/** A surveyed floor, and what the rules say of it when some of its facts change. Not safe to share between threads. */
final class SurveyedFloor {
    private final FloorSurvey survey;
    private final Parameters parameters;
    private final GritSequence sequence;
    private final List<Object> facts;
    private @Nullable FlatRules lastRules;
    private List<Object> lastRead = List.of();

    SurveyedFloor(FloorSurvey survey, Parameters parameters, GritSequence sequence) {
        this.survey = survey;
        this.parameters = parameters;
        this.sequence = sequence;
        this.facts = Facts.after(Optional.empty(), situation(survey));
    }

    FloorSurvey survey() {
        return survey;
    }

    Parameters parameters() {
        return parameters;
    }

    GritSequence sequence() {
        return sequence;
    }

    /** The run of the floor as it is. */
    Run run(FlatRules rules, Stage last) {
        return Runner.runTo(last, rules, situation(survey), read(rules));
    }

    /** The run of the floor with changes that were made to its survey. */
    Run run(FlatRules rules, Stage last, FloorSurvey changed, List<Change> changes) {
        Set<String> names = changes.stream().map(Change::name).collect(Collectors.toSet());
        Situation situation = situation(changed);
        return Runner.runTo(last, rules, situation, Facts.again(read(rules), names, situation));
    }

    /** The facts that are read from some fields once it is known what the stone is. */
    List<Object> facts(FlatRules stoneRules, FloorSurvey of, Predicate<Class<?>> read) {
        Situation situation = situation(of);
        List<Object> all = new ArrayList<>(Facts.after(Optional.empty(), situation, read));
        Run run = Runner.runTo(
                Stage.SURVEY, stoneRules, situation, Facts.after(Optional.empty(), situation, stoneRules::reads));
        all.addAll(Facts.after(Optional.of(Stage.SURVEY), run.situation(), read));
        all.removeIf(fact -> !read.test(fact.getClass()));
        return all;
    }

    private List<Object> read(FlatRules rules) {
        if (rules != lastRules) {
            lastRules = rules;
            lastRead =
                    facts.stream().filter(fact -> rules.reads(fact.getClass())).toList();
        }
        return lastRead;
    }

    private Situation situation(FloorSurvey of) {
        return new Situation(of, parameters, sequence);
    }
}
