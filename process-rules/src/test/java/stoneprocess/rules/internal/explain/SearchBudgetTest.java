package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeanings;

/** How much a search tries, and what it says when it may not try all. */
class SearchBudgetTest {
    private static final RuleMeanings MEANINGS = RuleMeanings.of(ShippedRules.load());
    private static final RulebaseStamp STAMP = Rulebase.standard().stamp();
    private static final int PLENTY = 1_000_000;

    /** A scratched floor of zones that are alike in all but their names. */
    private static FloorSurvey.Builder floor(int zones) {
        List<Zone> alike = IntStream.rangeClosed(1, zones)
                .mapToObj(i -> Floors.zone(
                        "zone " + i,
                        100.0 / zones,
                        Map.of(DamageKind.SCRATCHES, Floors.scratched(ScratchClass.SEEN, 100))))
                .toList();
        return Floors.unremarkable().zones(alike);
    }

    private static HowTo ask(FloorSurvey survey, Topic<?> topic, Subject subject, Term value, SearchBudget budget) {
        SurveyedFloor floor = new SurveyedFloor(survey, Parameters.standard(), GritSequence.standard());
        return new HowToSearch(MEANINGS, topic, subject, value.key(), floor, budget).answer(STAMP);
    }

    private static WhatElse askWhatElse(FloorSurvey survey, SearchBudget budget) {
        return new WhatElseSearch(MEANINGS.reach(), survey, Parameters.standard(), GritSequence.standard(), budget)
                .answer(STAMP);
    }

    private static List<Integer> replans(int zones) {
        FloorSurvey survey = floor(zones).build();
        FloorSurvey unseen = floor(zones)
                .zones(survey.zones().stream()
                        .map(zone -> zone.without(DamageKind.WEAR))
                        .toList())
                .build();
        SearchBudget coarserCut = new SearchBudget(PLENTY);
        ask(survey, Topics.FIRST_CUT, Subject.OPEN_FIELD, Cut.HEAVY_GRIND, coarserCut);
        SearchBudget refused = new SearchBudget(PLENTY);
        ask(survey, Topics.VERDICT, Subject.FLOOR, Verdict.CLEAN_ONLY, refused);
        SearchBudget whatElse = new SearchBudget(PLENTY);
        askWhatElse(unseen, whatElse);
        List<Integer> replans = List.of(coarserCut.replans(), refused.replans(), whatElse.replans());
        System.out.printf("Replans of three questions on a floor of %d zones alike: %s%n", zones, replans);
        return replans;
    }

    @Test
    void what_is_tried_does_not_grow_with_zones_that_are_alike() {
        // Two of fifty zones are below the share of a local repair, as two of a hundred are.
        List<Integer> few = replans(50);
        List<Integer> many = replans(FloorSurvey.MOST_ZONES);
        for (int i = 0; i < few.size(); i++) {
            assertThat(many.get(i)).as("question %d", i).isBetween(1, few.get(i));
            assertThat(few.get(i)).as("question %d", i).isLessThan(20_000);
        }
    }

    @Test
    void of_zones_that_are_alike_the_first_stands_for_all() {
        HowTo howTo =
                ask(floor(20).build(), Topics.FIRST_CUT, Subject.LOCAL_REPAIR, Cut.HONE, new SearchBudget(PLENTY));
        assertThat(howTo.kind()).isEqualTo(WayKind.FOUND);
        List<String> zones = new ArrayList<>();
        howTo.ways()
                .forEach(way -> way.changes().forEach(change -> {
                    if (change instanceof Change.OfDamage damage) {
                        zones.add(damage.zone());
                    }
                }));
        assertThat(zones).isNotEmpty().containsOnly("zone 1");
    }

    @Test
    void a_search_that_may_not_try_all_says_so_and_what_it_found_holds() {
        FloorSurvey survey = floor(1).set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.CONFIRMED)
                .build();
        SearchBudget none = new SearchBudget(0);
        HowTo nothing = ask(survey, Topics.VERDICT, Subject.FLOOR, Verdict.GO, none);
        assertThat(nothing.kind()).isEqualTo(WayKind.NONE_SO_FAR);
        assertThat(nothing.ways()).isEmpty();
        SearchBudget all = new SearchBudget(PLENTY);
        HowTo whole = ask(survey, Topics.VERDICT, Subject.FLOOR, Verdict.GO, all);
        assertThat(whole.kind()).isEqualTo(WayKind.FOUND);
        SearchBudget most = new SearchBudget(all.taken() - 1);
        HowTo partial = ask(survey, Topics.VERDICT, Subject.FLOOR, Verdict.GO, most);
        assertThat(partial.kind()).isEqualTo(WayKind.FOUND_SO_FAR);
        assertThat(partial.ways())
                .isNotEmpty()
                .allSatisfy(way -> assertThat(Advisor.standard()
                                .recommend(Change.all(survey, way.changes()))
                                .decision(Topics.VERDICT, Subject.FLOOR)
                                .orElseThrow()
                                .value())
                        .isEqualTo(Verdict.GO));
        SearchBudget exactly = new SearchBudget(all.taken());
        assertThat(ask(survey, Topics.VERDICT, Subject.FLOOR, Verdict.GO, exactly))
                .isEqualTo(whole);
    }

    @Test
    void what_else_names_what_it_did_not_try_in_full() {
        FloorSurvey survey = FloorSurvey.builder("nothing known").build();
        SearchBudget all = new SearchBudget(PLENTY);
        WhatElse whole = askWhatElse(survey, all);
        assertThat(whole.untried()).isEmpty();
        WhatElse partial = askWhatElse(survey, new SearchBudget(all.taken() / 2));
        assertThat(partial.untried()).isNotEmpty();
        assertThat(whole.open())
                .containsAll(partial.open().stream()
                        .filter(open -> !partial.untried().contains(open.field()))
                        .toList());
        assertThat(Advisor.standard().whatElse(survey)).isEqualTo(whole);
    }

    @Test
    void an_interrupted_thread_gets_a_partial_answer_and_stays_interrupted() {
        FloorSurvey survey =
                Floors.unremarkable().set(SurveyField.GOAL, Goal.POLISH).build();
        Thread.currentThread().interrupt();
        try {
            HowTo howTo = Advisor.standard().howTo(survey, Topics.VERDICT, Subject.FLOOR, Verdict.REFUSE.key());
            assertThat(howTo.kind()).isEqualTo(WayKind.NONE_SO_FAR);
            assertThat(Thread.currentThread().isInterrupted()).isTrue();
        } finally {
            Thread.interrupted();
        }
    }
}
