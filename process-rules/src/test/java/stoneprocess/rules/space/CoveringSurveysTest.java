package stoneprocess.rules.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.PlanningRules;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.internal.run.Runner;
import stoneprocess.rules.testkit.SurveyKind;

/**
 * Every combination of three answers on a survey. Few floors of them can be worked on, since some answer stops each; so
 * a second array varies only what does not stop a floor. The property {@code space.rows} says how many rows of each are
 * planned.
 */
class CoveringSurveysTest {
    private static final int SLICE = 60;
    private static final int ROUNDS = 400;

    /** What tells the family; floors are drawn of each. */
    private static final Set<String> FAMILY =
            Set.of(SurveyField.STONE_NAME.name(), SurveyField.ACID_DROP.name(), SurveyField.SCRIBER.name());

    private static final CoveringSurveys ALL = CoveringSurveys.of(Parameters.standard(), GritSequence.standard());

    /** Answers of which some class stops or holds a floor, or leaves nothing to cut. */
    private static final Set<String> STOPPING = Set.of(
            "stone.laboratory",
            "stone.face",
            "stone.mix",
            "stone.identified-by",
            "stone.acid-drop",
            "stone.scriber",
            "build-up.sounding",
            "build-up.hazardous-layer",
            "condition.coating",
            "condition.cleaning-trial",
            "site.historic",
            "site.volts",
            "site.amps",
            "equipment.grades",
            "damages.flaking");

    /** So rare among drawn floors that only expert cases meet them; {@code CoverageTest} holds that these do. */
    private static final Set<String> MET_BY_CASES_ALONE = Set.of(
            "CUT-049", "CUT-062", "CUT-070", "CUT-071", "CUT-072", "CUT-073", "CUT-081", "CUT-082", "GON-052",
            "GON-054", "GON-066", "GON-068", "MAC-180", "POW-170", "POW-171", "POW-173", "POW-174", "POW-016",
            "PRE-091", "SHO-010");

    @Test
    void any_three_answers_stand_together_in_every_combination() {
        List<CoveringSurveys.Column> columns = ALL.columns();
        List<int[]> seen = new ArrayList<>();
        for (int row = 0; row < ALL.size(); row++) {
            for (FloorSurvey survey : ALL.surveys(row)) {
                seen.add(columns.stream()
                        .mapToInt(column -> column.values().indexOf(answer(survey, column.name())))
                        .toArray());
            }
        }
        long combinations = 0;
        long missing = 0;
        for (int a = 0; a < columns.size(); a++) {
            int first = columns.get(a).values().size();
            for (int b = a + 1; b < columns.size(); b++) {
                int second = columns.get(b).values().size();
                for (int c = b + 1; c < columns.size(); c++) {
                    int third = columns.get(c).values().size();
                    BitSet met = new BitSet(first * second * third);
                    for (int[] row : seen) {
                        met.set((row[a] * second + row[b]) * third + row[c]);
                    }
                    combinations += (long) first * second * third;
                    missing += (long) first * second * third - met.cardinality();
                }
            }
        }
        System.out.printf(
                "%d answers, %,d combinations of three classes in %,d rows, %,d surveys%n",
                columns.size(), combinations, ALL.size(), seen.size());
        long besideRoomOutdoors = columns.stream()
                .filter(column -> !column.name().equals(SurveyField.SETTING.name())
                        && !column.name().equals(SurveyField.ROOM_VOLUME.name()))
                .mapToLong(column -> column.values().size())
                .sum();
        assertThat(missing)
                .as(
                        "a glazed face that a scriber scratches and acid attacks; a small or large room outdoors, with anything")
                .isEqualTo(1 + 2 * besideRoomOutdoors);
    }

    private static Optional<Object> answer(FloorSurvey survey, String name) {
        if (name.equals(CoveringSurveys.SPREAD)) {
            return Optional.of(Term.parse(
                    CoveringSurveys.Spread.class, survey.zones().get(0).name(), "zones"));
        }
        for (DamageKind kind : DamageKind.values()) {
            if (name.equals("damages." + kind.key())) {
                return survey.zones()
                        .get(0)
                        .damage(kind)
                        .value()
                        .flatMap(Damage::look)
                        .map(look -> (Object) look);
            }
        }
        return survey.answer(SurveyField.named(name)).value().map(value -> (Object) value);
    }

    @Test
    void every_row_is_answered_and_the_surveys_together_reach_most_outcomes_and_every_rule() {
        List<String> workable = new ArrayList<>(Forgetting.names());
        workable.removeAll(STOPPING);
        CoveringSurveys worked = CoveringSurveys.of(Parameters.standard(), GritSequence.standard(), workable);
        int asked = Integer.getInteger("space.rows", SLICE);
        Advisor advisor = Advisor.standard();
        Map<Status, Integer> statuses = new EnumMap<>(Status.class);
        List<LoadedRule> planning = PlanningRules.all();
        Set<String> silent = new TreeSet<>();
        planning.forEach(rule -> silent.add(rule.id()));
        Consumer<FloorSurvey> plan = survey -> {
            Recommendation answer = advisor.recommend(survey);
            statuses.merge(answer.status(), 1, Integer::sum);
            answer.outcomes().stream()
                    .map(Outcome::reasons)
                    .flatMap(List::stream)
                    .forEach(reason -> silent.remove(reason.rule()));
        };
        for (CoveringSurveys space : List.of(ALL, worked)) {
            int rows = Math.min(asked, space.size());
            IntStream.range(0, rows)
                    .mapToObj(i -> space.surveys((int) ((long) i * space.size() / rows)))
                    .flatMap(List::stream)
                    .forEach(plan);
        }
        SurveyGenerator generator = SurveyGenerator.of(new Share(95));
        int draws = Math.min(5 * asked, 20_000);
        for (int seed = 0; seed < draws; seed++) {
            SurveyKind kind = SurveyKind.values()[seed % SurveyKind.values().length];
            plan.accept(kind.draw(generator, Parameters.standard(), new SplittableRandom(seed)));
        }
        Set<String> rare = new TreeSet<>(silent);
        RuleReach reach = RuleMeanings.of(planning).reach();
        for (LoadedRule rule : planning) {
            if (MET_BY_CASES_ALONE.contains(rule.id())) {
                continue;
            }
            FlatRules upToIt = reach.upTo(rule.card().topic());
            Set<String> names = read(rule, planning);
            SplittableRandom random = new SplittableRandom(rule.id().hashCode());
            for (int round = 0; round < ROUNDS && silent.contains(rule.id()); round++) {
                for (Family family : Family.values()) {
                    FloorSurvey floor = Unremarkable.floor(family).build();
                    FloorSurvey base = round % 2 == 0 ? floor : withZonesOf(generator.draw(random), floor);
                    Set<String> some = names.stream()
                            .filter(name -> random.nextBoolean())
                            .collect(Collectors.toCollection(TreeSet::new));
                    FloorSurvey redrawn = generator.redraw(base, some, random);
                    if (silent.contains(rule.id()) && speaks(rule, upToIt, redrawn)) {
                        plan.accept(redrawn);
                    }
                }
            }
        }
        System.out.printf(
                "%d and %d rows, %d of each planned: %s; of %d planning rules %d speak only on floors drawn for them%s%n",
                ALL.size(),
                worked.size(),
                asked,
                statuses,
                planning.size(),
                rare.size(),
                rare.size() < 20 ? ": " + rare : "");
        assertThat(statuses.keySet()).contains(Status.PLANNED, Status.PROVISIONAL, Status.REFUSED, Status.IMPASSE);
        assertThat(silent).isSubsetOf(MET_BY_CASES_ALONE);
    }

    /** Without the engine, so that many floors can be tried; what is found is planned by it. */
    private static boolean speaks(LoadedRule rule, FlatRules rules, FloorSurvey survey) {
        Situation situation = new Situation(survey, Parameters.standard(), GritSequence.standard());
        if (!rule.mayFireOn(situation)) {
            return false;
        }
        List<Object> facts = Facts.after(Optional.empty(), situation, rules::reads);
        return Runner.runTo(rule.card().topic().stage(), rules, situation, facts).outcomes().stream()
                .flatMap(outcome -> outcome.reasons().stream())
                .anyMatch(reason -> reason.rule().equals(rule.id()));
    }

    private static FloorSurvey withZonesOf(FloorSurvey drawn, FloorSurvey floor) {
        return floor.toBuilder().zones(drawn.zones()).readings(drawn.readings()).build();
    }

    /** The answers that a rule reads, and those that the rules of the topics that it rests on read. */
    private static Set<String> read(LoadedRule rule, List<LoadedRule> rules) {
        Set<String> names = direct(rule);
        // A family that may hold fibres is cut only when a laboratory has cleared it, and not beyond its highest
        // finish.
        names.add(SurveyField.LABORATORY.name());
        names.add(SurveyField.GOAL.name());
        Set<String> topics = new TreeSet<>();
        rule.conditions().forEach(condition -> {
            Facts.topics(condition.type()).stream().map(Topic::id).forEach(topics::add);
            if (condition.type() == Step.class) {
                topics.add(Topics.METAL_METHOD.id());
                topics.add(Topics.FIRST_CUT.id());
            }
        });
        rules.stream()
                .filter(before -> topics.contains(before.card().topic().id()))
                .map(CoveringSurveysTest::direct)
                .forEach(names::addAll);
        return names;
    }

    private static Set<String> direct(LoadedRule rule) {
        Set<String> names = new TreeSet<>();
        rule.conditions().forEach(condition -> names.addAll(Facts.reads(condition.type())));
        names.retainAll(Forgetting.names());
        names.removeAll(FAMILY);
        return names;
    }
}
