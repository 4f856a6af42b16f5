package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.Closing;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.decision.Input;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.HouseRuleKind;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;

class WayJsonPropertyTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema HOW_TO = REGISTRY.getSchema(Json.HOW_TO.schema(), InputFormat.JSON);
    private static final Schema WHAT_ELSE = REGISTRY.getSchema(Json.WHAT_ELSE.schema(), InputFormat.JSON);
    private static final Schema COMPARISON = REGISTRY.getSchema(Json.COMPARISON.schema(), InputFormat.JSON);
    private static final RulebaseStamp STAMP = new RulebaseStamp(
            "0.1.0",
            "0".repeat(64),
            List.of("WRN-001"),
            List.of(new HouseRule(HouseRuleKind.SWITCHED_OFF, "WRN-001", "trainer", "not here")));

    /** Every way in which one survey differs from another: answers, machines and grades, damage of zones alike. */
    @Provide
    Arbitrary<List<Change>> changes() {
        return Combinators.combine(Surveys.any(), Surveys.any()).as(WayJsonPropertyTest::changes);
    }

    private static List<Change> changes(FloorSurvey one, FloorSurvey other) {
        List<Change> changes = new ArrayList<>();
        for (SurveyField<?> field : SurveyField.all()) {
            Optional<Object> from = one.answer(field).value().map(value -> value);
            other.answer(field)
                    .value()
                    .filter(to -> !from.equals(Optional.of(to)))
                    .ifPresent(to -> changes.add(new Change.OfAnswer(
                            field, from, to, 1 + field.name().length() % 3)));
        }
        for (MachineClass machine : EnumSet.allOf(MachineClass.class)) {
            changes.add(new Change.OfMember(SurveyField.MACHINES, machine, machine.ordinal() % 2 == 0));
        }
        GritSequence.standard()
                .grades()
                .forEach(grade -> changes.add(new Change.OfMember(SurveyField.GRADES, grade, true)));
        for (Zone zone : other.zones()) {
            zone.damages().forEach((kind, to) -> {
                Optional<Damage> from = one.zones().stream()
                        .flatMap(before -> before.damage(kind).value().stream())
                        .filter(damage -> !damage.equals(to))
                        .findFirst();
                changes.add(new Change.OfDamage(zone.name(), kind, from, to, 2));
            });
        }
        return changes;
    }

    @Property(tries = 100, seed = "1955")
    void any_way_survives_printing_and_reading(@ForAll("changes") List<Change> changes) {
        for (Change change : changes) {
            HowTo howTo = new HowTo(
                    Topics.SEALER,
                    Subject.FLOOR,
                    "penetrating",
                    WayKind.FOUND,
                    List.of(new Way(List.of(change))),
                    STAMP);
            String json = Json.HOW_TO.print(howTo);
            assertThat(Json.HOW_TO.read(json)).isEqualTo(howTo);
            assertThat(HOW_TO.validate(json, InputFormat.JSON)).isEmpty();
        }
    }

    @Provide
    Arbitrary<WhatElse> open() {
        Arbitrary<WhatElse.Open> open = Combinators.combine(
                        Arbitraries.of(SurveyField.all()),
                        Arbitraries.of(Topics.all()).list().ofMinSize(1).ofMaxSize(3),
                        Arbitraries.of(HowFound.values()))
                .as((field, topics, how) -> new WhatElse.Open(field.name(), topics, how));
        Arbitrary<List<String>> untried =
                Arbitraries.of(SurveyField.all()).map(SurveyField::name).list().ofMaxSize(2);
        return Combinators.combine(open.list().ofMaxSize(5), untried).as((all, left) -> new WhatElse(all, left, STAMP));
    }

    @Property(tries = 100, seed = "1955")
    void any_open_facts_survive_printing_and_reading(@ForAll("open") WhatElse whatElse) {
        String json = Json.WHAT_ELSE.print(whatElse);
        assertThat(Json.WHAT_ELSE.read(json)).isEqualTo(whatElse);
        assertThat(WHAT_ELSE.validate(json, InputFormat.JSON)).isEmpty();
    }

    @Provide
    Arbitrary<Comparison> comparisons() {
        Arbitrary<Comparison.Ending<Verdict>> sides = Combinators.combine(
                        Arbitraries.of(Closing.values()),
                        Arbitraries.of(Verdict.GO, Verdict.HOLD).list().ofMaxSize(2))
                .as((closing, values) -> new Comparison.Ending<>(Topics.VERDICT, closing, values));
        Arbitrary<List<String>> rules =
                Arbitraries.of("VRD-001", "SEA-002").list().ofMaxSize(2);
        Arbitrary<Comparison.Differs> differs = Combinators.combine(
                        Arbitraries.of(Subject.FLOOR, Subject.EDGE, new Subject.OfZone("lane")), sides, rules)
                .as((subject, side, ids) -> new Comparison.Differs(
                        Topics.VERDICT,
                        subject,
                        side,
                        new Comparison.Ending<>(Topics.VERDICT, Closing.IMPASSE, List.of()),
                        ids,
                        List.of(),
                        List.of(new Input.OfTopic(Topics.FINISH), new Input.OfParameter("finish.satin"))));
        Arbitrary<Comparison.Floor> floors = Combinators.combine(
                        Arbitraries.integers().between(0, 1000),
                        Arbitraries.of(Status.values()),
                        differs.list().ofMaxSize(3))
                .as((index, status, all) ->
                        new Comparison.Floor(index, "Merrowhithe, ferry hall", status, Status.PLANNED, all));
        return floors.list().ofMaxSize(3).map(all -> new Comparison(STAMP, STAMP, 1001, all));
    }

    @Property(tries = 100, seed = "1955")
    void any_comparison_survives_printing_and_reading(@ForAll("comparisons") Comparison comparison) {
        String json = Json.COMPARISON.print(comparison);
        assertThat(Json.COMPARISON.read(json)).isEqualTo(comparison);
        assertThat(COMPARISON.validate(json, InputFormat.JSON)).isEmpty();
    }

    @Test
    void a_way_that_misstates_who_can_bring_it_about_is_refused() {
        HowTo howTo = new HowTo(
                Topics.FINISH,
                Subject.FLOOR,
                "satin",
                WayKind.FOUND,
                List.of(new Way(List.of(new Change.OfAnswer(SurveyField.GOAL, Optional.empty(), Goal.SATIN, 1)))),
                STAMP);
        String json = Json.HOW_TO.print(howTo).replace("\"owner\"", "\"nobody\"");
        assertThatThrownBy(() -> Json.HOW_TO.read(json))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("ways[0].changes[0].changed-by")
                .hasMessageContaining("owner");
    }
}
