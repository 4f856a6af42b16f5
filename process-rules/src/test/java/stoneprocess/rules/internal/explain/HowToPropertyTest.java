package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Extent;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.SurveyGenerator;

/** The ways that a search finds against recommendations, and against trying everything. */
class HowToPropertyTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final RuleReach REACH = RuleMeanings.of(ShippedRules.load()).reach();
    private static final int SURVEYS = Integer.getInteger("explain.surveys", 300);

    /** From which drawn survey on, so that many can be tried in parts. */
    private static final int FIRST = Integer.getInteger("explain.first", 0);

    /** As many surveys are tried exhaustively: 20 in the normal run, 500 in the audit. */
    private static final int EXHAUSTIVELY = Math.max(10, SURVEYS / 200);

    /** The first way by the engine too; {@code FlatRulesTest} holds that both say the same. */
    @Test
    void every_way_gives_what_it_promised() {
        AtomicInteger asked = new AtomicInteger();
        List<WayKind> kinds = IntStream.range(FIRST, FIRST + SURVEYS)
                .parallel()
                .peek(seed -> {
                    if (asked.incrementAndGet() % 5_000 == 0) {
                        System.err.printf("Ways asked for on %d surveys of %d%n", asked.get(), SURVEYS);
                    }
                })
                .mapToObj(seed -> Questions.draw(REACH, new SplittableRandom(1955L + seed)))
                .flatMap(Optional::stream)
                .map(HowToPropertyTest::kept)
                .toList();
        assertThat(kinds).as("questions").hasSizeGreaterThan(SURVEYS * 4 / 5);
        assertThat(kinds.stream().filter(WayKind.FOUND::equals).count())
                .as("questions with a way")
                .isGreaterThan(kinds.size() * 9L / 10);
    }

    private static WayKind kept(Questions question) {
        HowTo howTo = ADVISOR.howTo(question.survey(), question.topic(), question.subject(), question.wanted());
        assertThat(howTo.kind()).isNotEqualTo(WayKind.ALREADY);
        SurveyedFloor floor = floor(question.survey());
        for (int w = 0; w < howTo.ways().size(); w++) {
            Way way = howTo.ways().get(w);
            boolean recommended = w > 0 || recommends(question, way);
            assertThat(recommended
                            && tried(floor, REACH.all(), question, way.changes())
                                    .isPresent())
                    .as("%s by %s", question, way)
                    .isTrue();
        }
        return howTo.kind();
    }

    private static SurveyedFloor floor(FloorSurvey survey) {
        return new SurveyedFloor(survey, Parameters.standard(), GritSequence.standard());
    }

    /** By the engine, which the search does without. */
    private static boolean recommends(Questions question, Way way) {
        Recommendation after = ADVISOR.recommend(Change.all(question.survey(), way.changes()));
        return after.decision(question.topic(), question.subject())
                .map(Decision::keys)
                .filter(values -> values.contains(question.wanted()))
                .isPresent();
    }

    /**
     * Every change over all fields and with all rules; every pair over all fields that can make a difference to the topic,
     * with the rules that it rests on. That nothing else makes a difference is tested by itself.
     */
    @Test
    void no_smaller_change_exists_and_none_that_ties_is_missing() {
        List<Integer> changes = IntStream.range(FIRST / 200, FIRST / 200 + EXHAUSTIVELY)
                .parallel()
                .mapToObj(seed -> Questions.any(REACH, new SplittableRandom(1803L + seed)))
                .map(HowToPropertyTest::exhausted)
                .toList();
        assertThat(changes).as("numbers of changes").contains(0, 1, 2);
    }

    /** Answers drawn anew that are out of a topic's reach leave it as it is, each name on several floors. */
    @Test
    void what_is_out_of_reach_makes_no_difference() {
        SplittableRandom random = new SplittableRandom(1815);
        for (int i = 0; i < 40; i++) {
            SurveyGenerator generator = SurveyGenerator.of(new Share(90));
            FloorSurvey survey = generator.draw(random);
            SurveyedFloor floor = floor(survey);
            Run before = floor.run(REACH.all(), Stage.SAFETY);
            for (String name : Forgetting.names()) {
                Run after =
                        floor(generator.redraw(survey, List.of(name), random)).run(REACH.all(), Stage.SAFETY);
                RuleReach.decided().stream()
                        .filter(topic -> !REACH.fields(topic).contains(name))
                        .forEach(topic -> assertThat(outcomes(after, topic))
                                .as("%s after %s in %s", topic.id(), name, survey)
                                .isEqualTo(outcomes(before, topic)));
            }
        }
    }

    /** Common practice, no source: whoever works the lanes alone cuts what the lanes need, by the engine too. */
    @Test
    void to_work_the_lanes_alone_is_a_way_to_another_first_cut() {
        FloorSurvey survey = Floors.unremarkable()
                .set(SurveyField.EXTENT, Extent.WHOLE_FLOOR)
                .zones(List.of(
                        scratched("lane", ZoneKind.LANE, ScratchClass.FELT_BY_NAIL),
                        scratched("beside", ZoneKind.FIELD, ScratchClass.FELT_BY_COIN)))
                .build();
        Change lanesAlone =
                new Change.OfAnswer(SurveyField.EXTENT, Optional.of(Extent.WHOLE_FLOOR), Extent.LANES_ALONE, 1);
        Cut cut = ADVISOR.recommend(lanesAlone.in(survey))
                .decision(Topics.FIRST_CUT, Subject.OPEN_FIELD)
                .orElseThrow()
                .value();
        HowTo howTo = ADVISOR.howTo(survey, Topics.FIRST_CUT, Subject.OPEN_FIELD, cut.key());
        assertThat(howTo.ways()).extracting(Way::changes).contains(List.of(lanesAlone));
    }

    private static Zone scratched(String name, ZoneKind kind, ScratchClass look) {
        Zone zone = Floors.zone(name, 50, Map.of(DamageKind.SCRATCHES, Floors.scratched(look, 100)));
        return new Zone(name, kind, zone.share(), zone.damages());
    }

    private static List<Outcome> outcomes(Run run, Topic<?> topic) {
        return run.outcomes().stream()
                .filter(outcome -> outcome.topic().equals(topic))
                .toList();
    }

    /** The number of changes of the smallest ways, 0 when there is none. */
    private static int exhausted(Questions question) {
        HowTo howTo = ADVISOR.howTo(question.survey(), question.topic(), question.subject(), question.wanted());
        List<Way> all = exhaustively(question);
        assertThat(howTo.ways()).as("%s", question).containsExactlyInAnyOrderElementsOf(all);
        return all.isEmpty() ? 0 : all.get(0).changes().size();
    }

    private static List<Way> exhaustively(Questions question) {
        SurveyedFloor floor = floor(question.survey());
        Candidates candidates = new Candidates(floor, REACH);
        List<Change> singles = Candidates.names().stream()
                .flatMap(name -> candidates.of(name).stream())
                .toList();
        List<Way> ways = new ArrayList<>();
        singles.forEach(
                change -> tried(floor, REACH.all(), question, List.of(change)).ifPresent(ways::add));
        if (ways.isEmpty()) {
            FlatRules rules = REACH.upTo(question.topic());
            List<Change> reaching = candidates.of(REACH.fields(question.topic()));
            for (int i = 0; i < reaching.size(); i++) {
                for (int j = i + 1; j < reaching.size(); j++) {
                    if (HowToSearch.together(reaching.get(i), reaching.get(j))) {
                        tried(floor, rules, question, List.of(reaching.get(i), reaching.get(j)))
                                .ifPresent(ways::add);
                    }
                }
            }
        }
        int least = ways.stream()
                .map(Way::classSteps)
                .min(Comparator.naturalOrder())
                .orElse(0);
        return ways.stream().filter(way -> way.classSteps() == least).toList();
    }

    private static Optional<Way> tried(SurveyedFloor floor, FlatRules rules, Questions question, List<Change> changes) {
        FloorSurvey changed;
        try {
            changed = Change.all(floor.survey(), changes);
        } catch (InvalidInputException impossible) {
            return Optional.empty();
        }
        Stage last = question.topic().stage();
        Set<String> names = changes.stream().map(Change::name).collect(Collectors.toSet());
        return floor.changed(rules, last, changed, names)
                .run(rules, last)
                .situation()
                .decision(question.topic(), question.subject())
                .filter(decision -> decision.keys().contains(question.wanted()))
                .map(decision -> new Way(changes));
    }
}
