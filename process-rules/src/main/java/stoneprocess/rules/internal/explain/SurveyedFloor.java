package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.rules.decide.Formula;
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
    private final Map<FlatRules, List<Object>> read = new HashMap<>();
    private final Map<List<Object>, Set<String>> later = new HashMap<>();

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

    /**
     * The floor with some answers changed, before any rule ran.
     *
     * @param rules what will run
     * @param last the last stage that will run
     * @param changed its survey with the changes
     * @param names names of the fields and kinds of damage that were changed
     */
    Changed changed(FlatRules rules, Stage last, FloorSurvey changed, Set<String> names) {
        Situation situation = situation(changed);
        List<Object> before = read(rules);
        List<Object> after = Facts.again(before, names, situation);
        List<Object> seen = new ArrayList<>();
        for (int i = 0; i < after.size(); i++) {
            if (after.get(i) != before.get(i)) {
                Object sight = rules.seen(after.get(i));
                if (!sight.equals(rules.seen(before.get(i)))) {
                    seen.add(i);
                    seen.add(sight);
                }
            }
        }
        for (String name : names) {
            if (readLater(rules, last).contains(name)) {
                seen.add(name);
                seen.add(answer(name, changed));
            }
        }
        return new Changed(seen, situation, after);
    }

    /**
     * A floor with some answers changed.
     *
     * @param seen all that the rules and formulas can see of the changes; where it is the same, so are the decisions
     * @param situation the survey before any topic closed
     * @param facts the facts of the survey
     */
    record Changed(List<Object> seen, Situation situation, List<Object> facts) {
        Run run(FlatRules rules, Stage last) {
            return Runner.runTo(last, rules, situation, facts);
        }
    }

    private static Object answer(String name, FloorSurvey of) {
        if (name.equals(Facts.READINGS)) {
            return of.readings();
        }
        return Facts.damage(name)
                .<Object>map(kind ->
                        of.zones().stream().map(zone -> zone.damage(kind)).toList())
                .orElseGet(() -> of.answer(SurveyField.named(name)));
    }

    /** Fields and kinds of damage that are looked up again after the facts of the survey were made. */
    private Set<String> readLater(FlatRules rules, Stage last) {
        return later.computeIfAbsent(List.of(rules, last), key -> {
            Set<String> names = new HashSet<>(Set.of(SurveyField.EXTENT.name()));
            Facts.types().stream()
                    .filter(type -> rules.reads(type) && !Facts.topics(type).isEmpty())
                    .forEach(type -> names.addAll(Facts.reads(type)));
            for (Formula formula : Formula.values()) {
                if (formula.topic().stage().compareTo(last) <= 0) {
                    formula.fields().forEach(field -> names.add(field.name()));
                    formula.damages().forEach(kind -> names.add(Facts.damage(kind)));
                }
            }
            return names;
        });
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
        return read.computeIfAbsent(
                rules,
                key -> facts.stream().filter(fact -> key.reads(fact.getClass())).toList());
    }

    private Situation situation(FloorSurvey of) {
        return new Situation(of, parameters, sequence);
    }
}
