package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.TrackDifference;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Track;
import stoneprocess.core.source.Citation;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Card;

/** The derived schemas of the answers against the records, read here in another way. */
class RecordSchemaTest {
    private static final Described SCHEMA = Described.by(Json.RECOMMENDATION);
    private static final Described NEXT = Described.by(Json.NEXT_MOVE);
    private static final Described WHY = Described.by(Json.WHY);
    private static final Described WHY_NOT = Described.by(Json.WHY_NOT);
    private static final Described DIFFERENCE = Described.by(Json.DIFFERENCE);
    private static final Described DIAGNOSIS = Described.by(Json.DIAGNOSIS);

    private static final Described HOW_TO = Described.by(Json.HOW_TO);
    private static final Described WHAT_ELSE = Described.by(Json.WHAT_ELSE);
    private static final Described AUDIT = Described.by(Json.AUDIT);
    private static final Described COMPARISON = Described.by(Json.COMPARISON);

    /** Records whose topic is that of the record around them. */
    private static final Set<Class<?>> SAID_AROUND = Set.of(Side.class, Comparison.Ending.class);

    static Stream<Arguments> records() {
        Described ways = HOW_TO.get("$defs");
        Described compared = COMPARISON.get("$defs");
        Described definitions = SCHEMA.get("$defs");
        Described next = NEXT.get("$defs");
        Described why = WHY.get("$defs");
        Described whyNot = WHY_NOT.get("$defs");
        Described difference = DIFFERENCE.get("$defs");
        return Stream.of(
                Arguments.of(Recommendation.class, SCHEMA, Set.of("format")),
                Arguments.of(Plan.class, definitions.get("plan"), Set.of()),
                Arguments.of(Track.class, definitions.get("track"), Set.of()),
                Arguments.of(PlannedStep.class, definitions.get("planned-step"), Set.of()),
                Arguments.of(Reason.class, definitions.get("reason"), Set.of()),
                Arguments.of(MatchedFact.class, definitions.get("matched-fact"), Set.of()),
                Arguments.of(SafetyWarning.class, definitions.get("safety-warning"), Set.of()),
                Arguments.of(Question.class, definitions.get("question"), Set.of()),
                Arguments.of(CounterOffer.class, definitions.get("counter-offer"), Set.of()),
                Arguments.of(Decision.class, definitions.get("decision"), Set.of("kind")),
                Arguments.of(Impasse.class, definitions.get("impasse"), Set.of("kind")),
                Arguments.of(AbrasiveGrade.class, definitions.get("abrasive-grade"), Set.of()),
                Arguments.of(HouseRule.class, definitions.get("house-rule"), Set.of()),
                Arguments.of(RulebaseStamp.class, SCHEMA.get("properties").get("rulebase"), Set.of()),
                Arguments.of(NextMove.class, NEXT, Set.of("format")),
                Arguments.of(HoldPoint.class, next.get("hold-point"), Set.of()),
                Arguments.of(Cause.class, next.get("cause"), Set.of()),
                Arguments.of(LogNote.class, next.get("log-note"), Set.of()),
                Arguments.of(ZoneProgress.class, next.get("zone-progress"), Set.of()),
                Arguments.of(ZoneStatistics.class, next.get("zone-statistics"), Set.of()),
                Arguments.of(Gain.class, next.get("gain"), Set.of()),
                Arguments.of(TargetOutlook.class, next.get("target-outlook"), Set.of()),
                Arguments.of(TargetOption.class, next.get("target-option"), Set.of()),
                Arguments.of(GlossPrediction.class, next.get("gloss-prediction"), Set.of()),
                Arguments.of(ForecastBasis.class, next.get("forecast-basis"), Set.of()),
                Arguments.of(HowTo.class, HOW_TO, Set.of("format")),
                Arguments.of(Way.class, ways.get("way"), Set.of()),
                Arguments.of(Change.OfAnswer.class, ways.get("change-of-answer"), Set.of("change", "changed-by")),
                Arguments.of(Change.OfMember.class, ways.get("change-of-member"), Set.of("change", "changed-by")),
                Arguments.of(Change.OfDamage.class, ways.get("change-of-damage"), Set.of("change", "changed-by")),
                Arguments.of(RulebaseStamp.class, ways.get("rulebase-stamp"), Set.of()),
                Arguments.of(WhatElse.class, WHAT_ELSE, Set.of("format")),
                Arguments.of(WhatElse.Open.class, WHAT_ELSE.get("$defs").get("open"), Set.of()),
                Arguments.of(Comparison.class, COMPARISON, Set.of("format")),
                Arguments.of(Comparison.Floor.class, compared.get("floor"), Set.of()),
                Arguments.of(Comparison.Differs.class, compared.get("differs"), Set.of()),
                Arguments.of(Comparison.Ending.class, compared.get("ending"), Set.of()),
                Arguments.of(AuditReport.class, AUDIT, Set.of("format")),
                Arguments.of(AuditReport.Space.class, AUDIT.get("$defs").get("space"), Set.of()),
                Arguments.of(AuditFinding.class, AUDIT.get("$defs").get("audit-finding"), Set.of()),
                Arguments.of(MatchedFact.class, AUDIT.get("$defs").get("matched-fact"), Set.of()),
                Arguments.of(Diagnosis.class, DIAGNOSIS, Set.of("format")),
                Arguments.of(Why.class, WHY, Set.of("format")),
                Arguments.of(Ground.class, why.get("ground"), Set.of()),
                Arguments.of(Matter.class, why.get("matter"), Set.of()),
                Arguments.of(Card.class, why.get("card"), Set.of()),
                Arguments.of(Citation.class, why.get("citation"), Set.of()),
                Arguments.of(FieldAnswer.class, why.get("field-answer"), Set.of()),
                Arguments.of(Given.class, why.get("given"), Set.of()),
                Arguments.of(WhyNot.class, WHY_NOT, Set.of("format")),
                Arguments.of(SilentRule.class, whyNot.get("silent-rule"), Set.of()),
                Arguments.of(Unmet.class, whyNot.get("unmet"), Set.of()),
                Arguments.of(Difference.class, DIFFERENCE, Set.of("format")),
                Arguments.of(MatterDifference.class, difference.get("matter-difference"), Set.of()),
                Arguments.of(Side.class, difference.get("side"), Set.of()),
                Arguments.of(TrackDifference.class, difference.get("track-difference"), Set.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"reason", "matched-fact", "decision", "impasse"})
    void what_both_answers_hold_is_described_alike(String name) {
        assertThat(NEXT.get("$defs").get(name).value())
                .isEqualTo(SCHEMA.get("$defs").get(name).value());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "reason",
                "matched-fact",
                "decision",
                "impasse",
                "matter",
                "card",
                "citation",
                "field-answer",
                "given"
            })
    void what_answers_about_a_plan_hold_is_described_alike(String name) {
        assertThat(WHY_NOT.get("$defs").get(name).value())
                .isEqualTo(WHY.get("$defs").get(name).value());
        SCHEMA.get("$defs")
                .optional(name)
                .ifPresent(definition ->
                        assertThat(WHY.get("$defs").get(name).value()).isEqualTo(definition.value()));
        DIFFERENCE
                .get("$defs")
                .optional(name)
                .ifPresent(definition ->
                        assertThat(WHY.get("$defs").get(name).value()).isEqualTo(definition.value()));
    }

    @ParameterizedTest
    @MethodSource("records")
    void fields_of_the_schema_are_those_of_the_record(Class<?> type, Described schema, Set<String> besides) {
        Set<String> fields = new LinkedHashSet<>(besides);
        Set<String> required = new LinkedHashSet<>(besides);
        for (RecordComponent component : type.getRecordComponents()) {
            if (SAID_AROUND.contains(type) && component.getName().equals("topic")) {
                continue;
            }
            fields.add(field(component));
            boolean printedWhenEmpty =
                    type == AuditFinding.class && component.getName().equals("topic");
            boolean leftOutWhenEmpty =
                    type == WhatElse.class && component.getName().equals("untried");
            if (component.getType() != Optional.class && !leftOutWhenEmpty || printedWhenEmpty) {
                required.add(field(component));
            }
        }
        assertThat(schema.get("properties").names()).containsExactlyInAnyOrderElementsOf(fields);
        assertThat(schema.get("required").texts()).containsExactlyInAnyOrderElementsOf(required);
        assertThat(schema.get("additionalProperties").value()).isEqualTo(false);
    }

    @ParameterizedTest
    @MethodSource("records")
    void words_of_the_schema_are_those_of_the_enums(Class<?> type, Described schema, Set<String> besides) {
        for (RecordComponent component : type.getRecordComponents()) {
            Type of = component.getGenericType() instanceof ParameterizedType parameterized
                    ? parameterized.getActualTypeArguments()[0]
                    : component.getType();
            if (of instanceof Class<?> words && words.isEnum()) {
                Described property = schema.get("properties").get(field(component));
                Described listed = property.optional("items").orElse(property);
                assertThat(listed.get("enum").texts()).as(component.toString()).isEqualTo(keys(words));
            }
        }
    }

    /** The name of a component in lower case with hyphens; the unit stands in the value, not in the name. */
    private static String field(RecordComponent component) {
        String name = component.getName().equals("litresPerPass") ? "waterPerPass" : component.getName();
        return name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    private static List<String> keys(Class<?> words) {
        return Arrays.stream(words.getEnumConstants())
                .map(constant -> ((Term) constant).key())
                .toList();
    }
}
