package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhatIf;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.space.SurveyGenerator;

class HowToTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final RuleReach REACH = RuleMeanings.of(ShippedRules.load()).reach();
    private static final FloorSurvey FLOOR = Floors.unremarkable().build();

    @Test
    void what_is_so_already_needs_no_change() {
        HowTo howTo = ADVISOR.howTo(FLOOR, Topics.VERDICT, Subject.FLOOR, Verdict.GO.key());
        assertThat(howTo.kind()).isEqualTo(WayKind.ALREADY);
        assertThat(howTo.ways()).containsExactly(new Way(List.of()));
    }

    @Test
    void another_finish_is_the_owners_to_wish_for() {
        FloorSurvey floor =
                Floors.unremarkable().set(SurveyField.GOAL, Goal.POLISH).build();
        HowTo howTo = ADVISOR.howTo(floor, Topics.FINISH, Subject.FLOOR, Finish.SATIN.key());
        assertThat(howTo.kind()).isEqualTo(WayKind.FOUND);
        assertThat(howTo.ways())
                .anySatisfy(way -> assertThat(way.changes())
                        .containsExactly(new Change.OfAnswer(
                                SurveyField.GOAL, Optional.of(Goal.POLISH), Goal.SATIN, way.classSteps())))
                .filteredOn(way -> way.changes().get(0).name().equals(SurveyField.GOAL.name()))
                .allMatch(Way::byPeople);
    }

    /** A layer that may hold asbestos stops the work: common practice. It is what it is, and nobody wishes it away. */
    @Test
    void a_hazardous_layer_is_no_choice_of_people() {
        FloorSurvey floor = Floors.unremarkable()
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.CONFIRMED)
                .build();
        HowTo howTo = ADVISOR.howTo(floor, Topics.VERDICT, Subject.FLOOR, Verdict.GO.key());
        assertThat(howTo.ways()).isNotEmpty().noneMatch(Way::byPeople);
        assertThat(howTo.ways())
                .allSatisfy(way -> assertThat(way.changes())
                        .extracting(Change::name)
                        .contains(SurveyField.HAZARDOUS_LAYER.name()));
    }

    @Test
    void a_machine_that_is_missing_is_brought() {
        FloorSurvey floor = Floors.unremarkable()
                .set(SurveyField.MACHINES, Floors.machines(MachineClass.EDGE_TOOL))
                .build();
        Change brought = new Change.OfMember(SurveyField.MACHINES, MachineClass.SINGLE_DISC, true);
        WhatIf whatIf = ADVISOR.whatIf(floor, List.of(brought));
        assertThat(whatIf.before()).isEqualTo(ADVISOR.recommend(floor));
        assertThat(whatIf.after()).isEqualTo(ADVISOR.recommend(brought.in(floor)));
        assertThat(whatIf.after().survey().answer(SurveyField.MACHINES).value().orElseThrow())
                .containsExactlyInAnyOrder(MachineClass.EDGE_TOOL, MachineClass.SINGLE_DISC);
    }

    @Test
    void a_question_that_cannot_be_asked_is_refused() {
        assertThatThrownBy(() -> ADVISOR.howTo(FLOOR, Topics.VERDICT, Subject.EDGE, "go"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("verdict.subject");
        assertThatThrownBy(() -> ADVISOR.howTo(FLOOR, Topics.VERDICT, Subject.FLOOR, "perhaps"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("'perhaps'")
                .hasMessageContaining(Verdict.GO.key());
        assertThatThrownBy(() -> ADVISOR.howTo(FLOOR, Topics.MOVE, Subject.FLOOR, "accept"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("topic");
        assertThatThrownBy(() -> ADVISOR.howTo(FLOOR, Topics.GRIT_PATH, Subject.OPEN_FIELD, "resin-7"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("grit-path");
        assertThatThrownBy(() -> ADVISOR.howTo(FLOOR, Topics.PASSES, Subject.parse("edge/resin-400", ""), "2"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("topic");
    }

    @Test
    void a_change_that_does_not_fit_the_survey_is_refused() {
        Change other = new Change.OfAnswer(SurveyField.GOAL, Optional.of(Goal.POLISH), Goal.SATIN, 1);
        assertThatThrownBy(() -> ADVISOR.whatIf(FLOOR, List.of(other)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("owner.goal: 'just-better'");
        assertThatThrownBy(() -> ADVISOR.whatIf(FLOOR, List.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("changes");
        Change twice = new Change.OfMember(SurveyField.MACHINES, MachineClass.SCRUBBER, true);
        assertThatThrownBy(() -> ADVISOR.whatIf(FLOOR, List.of(twice, twice)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("equipment.machines/scrubber");
    }

    /** Any value of a measured field is told by one that the search tries, or by the value that is there. */
    @Test
    void measured_values_go_to_every_class_that_the_facts_can_take() {
        SplittableRandom random = new SplittableRandom(1955);
        SurveyGenerator generator = SurveyGenerator.of(new Share(100));
        for (int i = 0; i < 10; i++) {
            FloorSurvey survey = generator.draw(random);
            SurveyedFloor floor = new SurveyedFloor(survey, Parameters.standard(), GritSequence.standard());
            Candidates candidates = new Candidates(floor, REACH);
            for (SurveyField<?> field : SurveyField.all()) {
                if (field.kind() instanceof FieldKind.Measure && survey.mayAnswer(field)) {
                    List<List<Object>> tried = new ArrayList<>();
                    tried.add(read(survey, field));
                    candidates.of(field.name()).forEach(change -> tried.add(read(change.in(survey), field)));
                    for (int value = 0; value < 20; value++) {
                        FloorSurvey redrawn = generator.redraw(survey, List.of(field.name()), random);
                        assertThat(tried).as("%s", redrawn).contains(read(redrawn, field));
                    }
                }
            }
        }
    }

    private static List<Object> read(FloorSurvey survey, SurveyField<?> field) {
        return new SurveyedFloor(survey, Parameters.standard(), GritSequence.standard())
                .facts(
                        REACH.upTo(Topics.STONE),
                        survey,
                        type -> Facts.reads(type).contains(field.name()));
    }

    @Test
    void a_task_that_is_found_stands_in_the_plan() {
        HowTo howTo = ADVISOR.howTo(FLOOR, Topics.PREPARATION, Subject.FLOOR, Task.FILL_CRACKS.key());
        assertThat(howTo.kind()).isEqualTo(WayKind.FOUND);
        for (Way way : howTo.ways()) {
            List<String> tasks = ADVISOR.recommend(Change.all(FLOOR, way.changes()))
                    .decision(Topics.PREPARATION, Subject.FLOOR)
                    .map(Decision::keys)
                    .orElseThrow();
            assertThat(tasks).contains(Task.FILL_CRACKS.key());
        }
    }
}
