package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.space.SurveyGenerator;

class WhatElseTest {
    private static final Advisor ADVISOR = Advisor.standard();

    @Test
    void what_lies_below_is_settled_by_a_laboratory_and_decides_whether_work_starts() {
        FloorSurvey survey =
                Floors.unremarkable().unknown(SurveyField.HAZARDOUS_LAYER).build();
        WhatElse.Open layer = open(survey, SurveyField.HAZARDOUS_LAYER);
        assertThat(layer.howFound()).isEqualTo(HowFound.LABORATORY);
        assertThat(layer.topics()).contains(Topics.VERDICT);
    }

    /** Neither tells the supply alone. */
    @Test
    void volts_and_amperes_count_together() {
        FloorSurvey survey = Floors.unremarkable()
                .unknown(SurveyField.VOLTS)
                .unknown(SurveyField.AMPS)
                .build();
        assertThat(open(survey, SurveyField.VOLTS).topics())
                .isEqualTo(open(survey, SurveyField.AMPS).topics())
                .isNotEmpty();
    }

    @Test
    void an_empty_survey_asks_for_what_can_change_most_first() {
        List<WhatElse.Open> open =
                ADVISOR.whatElse(FloorSurvey.builder("Merrowhithe").build()).open();
        assertThat(open).hasSizeGreaterThan(5);
        assertThat(open.stream().map(one -> -one.topics().size()).toList()).isSorted();
    }

    private static WhatElse.Open open(FloorSurvey survey, SurveyField<?> field) {
        return ADVISOR.whatElse(survey).open().stream()
                .filter(one -> one.field().equals(field.name()))
                .findFirst()
                .orElseThrow();
    }

    /** Any answer to an unknown field changes those topics at most that are named for it, by the engine. */
    @Test
    void what_is_not_named_cannot_change() {
        SplittableRandom random = new SplittableRandom(1955);
        SurveyGenerator all = SurveyGenerator.of(new Share(100));
        int changed = 0;
        for (int i = 0; i < 12; i++) {
            FloorSurvey survey = SurveyGenerator.of(new Share(85)).draw(random);
            Map<String, List<Topic<?>>> named = ADVISOR.whatElse(survey).open().stream()
                    .collect(Collectors.toMap(WhatElse.Open::field, WhatElse.Open::topics));
            Map<Matter, Object> before = ends(survey);
            for (SurveyField<?> field : SurveyField.all()) {
                for (int answer = 0; answer < 3 && !survey.answer(field).isKnown(); answer++) {
                    FloorSurvey redrawn = all.redraw(survey, List.of(field.name()), random);
                    if (!sameBesides(field, survey, redrawn)) {
                        continue;
                    }
                    Map<Matter, Object> after = ends(redrawn);
                    Set<Topic<?>> topics = new HashSet<>();
                    before.forEach((matter, end) -> differs(matter, end, after, topics));
                    after.forEach((matter, end) -> differs(matter, end, before, topics));
                    changed += topics.isEmpty() ? 0 : 1;
                    // Of an area every value gives other litres, and of machines and grades every set may give others;
                    // a deadline is kept or not by the hours of this one floor, which its classes do not tell.
                    if (!field.section().equals("equipment") && field != SurveyField.DEADLINE) {
                        assertThat(named.getOrDefault(field.name(), List.of()))
                                .as("%s of %s", field, survey)
                                .containsAll(topics);
                    }
                }
            }
        }
        assertThat(changed).as("answers that change something").isGreaterThan(20);
    }

    /** False where the answer drawn contradicts another one, which then was taken away: no room has a volume outdoors. */
    private static boolean sameBesides(SurveyField<?> field, FloorSurvey survey, FloorSurvey redrawn) {
        return SurveyField.all().stream()
                .filter(other -> !other.equals(field))
                .allMatch(other -> survey.answer(other).equals(redrawn.answer(other)));
    }

    private static void differs(Matter matter, Object end, Map<Matter, Object> others, Set<Topic<?>> topics) {
        if (!end.equals(others.get(matter))) {
            topics.add(matter.topic());
        }
    }

    private static Map<Matter, Object> ends(FloorSurvey survey) {
        return ADVISOR.recommend(survey).outcomes().stream().collect(Collectors.toMap(Matter::of, WhatElseTest::end));
    }

    private static Object end(Outcome outcome) {
        return outcome instanceof Decision<?> decision ? decision.keys() : "impasse";
    }
}
