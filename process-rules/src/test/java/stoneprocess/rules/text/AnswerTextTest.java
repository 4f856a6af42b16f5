package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.WhatIf;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What a reader learns from an answer. Floors are drawn or invented. */
class AnswerTextTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final AnswerText TEXT = new AnswerText(ADVISOR.rulebase().parameters());
    private static final int SURVEYS = 12;

    /** The name of a class, of a constant, or a key of several words that no phrase has. */
    private static final Pattern RAW_NAME =
            Pattern.compile("\\b(?:(?:[A-Z][a-z0-9]+){2,}|[A-Z]+_[A-Z_]+|open-field|local-repair|"
                    + "(?:fine|coarse)-hone|(?:fine|heavy)-grind|(?:metal|transition|resin)-\\d+)\\b");

    private static String said(String key) {
        return Texts.english().word(Wording.phrase(key));
    }

    @Test
    void short_texts_are_short_and_long_ones_keep_to_the_page() {
        SplittableRandom random = new SplittableRandom(1955);
        int asked = 0;
        for (int i = 0; i < SURVEYS; i++) {
            Recommendation recommendation = ADVISOR.recommend(
                    SurveyGenerator.of(new Share(50 + i % 6 * 10)).draw(random));
            Explanation explanation = ADVISOR.explain(recommendation);
            for (Matter matter : explanation.matters()) {
                Topic<?> topic = matter.topic();
                Why why = explanation.why(topic, matter.subject());
                assertShort(Texts.english().line(TEXT.document(why)));
                assertLong(Texts.english().page(TEXT.document(why)));
                for (String value : explanation.alternatives(topic, matter.subject())) {
                    WhyNot not = explanation.whyNot(topic, matter.subject(), value);
                    assertShort(Texts.english().line(TEXT.document(not)));
                    assertLong(Texts.english().page(TEXT.document(not)));
                    asked++;
                }
            }
        }
        assertThat(asked).isGreaterThan(100 * SURVEYS);
    }

    private static Document document(WhatIf whatIf) {
        return TEXT.document(whatIf.before(), whatIf.after(), ADVISOR.rulebase().cards());
    }

    private static void assertShort(String text) {
        assertThat(text)
                .hasSizeLessThan(140)
                .doesNotContain("\n", "null", "%s", "%d")
                .doesNotContainPattern(RAW_NAME)
                .matches(".*[.?]");
    }

    private static void assertLong(String text) {
        assertThat(text).doesNotContain("null").doesNotContainPattern(RAW_NAME).endsWith("\n");
        List<String> tooLong = text.lines().filter(line -> line.length() > 96).toList();
        assertThat(tooLong).isEmpty();
    }

    @Test
    void texts_of_what_differs_how_to_and_what_else_keep_to_it_too() {
        SplittableRandom random = new SplittableRandom(1956);
        Advisor house = Advisor.of(
                Rulebase.with(Overlay.none().switchOff("CUT-003", "floor manager", "our floors are harder")),
                Options.defaults());
        List<FloorSurvey> surveys = new ArrayList<>();
        for (int i = 0; i < SURVEYS; i++) {
            surveys.add(SurveyGenerator.of(new Share(70 + i % 3 * 10)).draw(random));
        }
        for (int i = 1; i < SURVEYS; i++) {
            Difference difference =
                    Difference.between(ADVISOR.recommend(surveys.get(i - 1)), ADVISOR.recommend(surveys.get(i)));
            assertShort(Texts.english().line(TEXT.document(difference)));
            assertLong(Texts.english().page(TEXT.document(difference)));
        }
        int found = 0;
        for (FloorSurvey survey : surveys.subList(0, 3)) {
            WhatElse whatElse = ADVISOR.whatElse(survey);
            assertShort(Texts.english().line(TEXT.document(whatElse, ADVISOR.recommend(survey))));
            assertLong(Texts.english().page(TEXT.document(whatElse, ADVISOR.recommend(survey))));
            for (Cut cut : List.of(Cut.NONE, Cut.REFRESH, Cut.HONE)) {
                HowTo howTo = ADVISOR.howTo(survey, Topics.FIRST_CUT, Subject.OPEN_FIELD, cut.key());
                assertShort(Texts.english().line(TEXT.document(howTo)));
                assertLong(Texts.english().page(TEXT.document(howTo)));
                for (Way way : howTo.ways()) {
                    if (!way.changes().isEmpty()) {
                        WhatIf whatIf = ADVISOR.whatIf(survey, way.changes());
                        assertShort(Texts.english().line(document(whatIf)));
                        assertLong(Texts.english().page(document(whatIf)));
                        found++;
                    }
                }
            }
        }
        assertThat(found).isPositive();
        Comparison comparison = ADVISOR.compare(house, surveys);
        assertShort(Texts.english().line(TEXT.document(comparison)));
        assertLong(Texts.english().page(TEXT.document(comparison)));
    }

    /** A decision, the floor it is made for, the question that overturns it and another answer to that question. */
    private record Overturned(FloorSurvey floor, Topic<?> topic, Subject subject, String field, FloorSurvey other) {
        static Overturned of(
                FloorSurvey.Builder floor,
                Topic<?> topic,
                Subject subject,
                SurveyField<?> field,
                Object now,
                Object other) {
            FloorSurvey asked = floor.put(field, now).build();
            return new Overturned(
                    asked,
                    topic,
                    subject,
                    field.name(),
                    asked.toBuilder().put(field, other).build());
        }

        static Overturned ofDamage(Topic<?> topic, Damage now, Damage other) {
            FloorSurvey.Builder floor = Floors.unremarkable();
            return new Overturned(
                    floor.zones(List.of(Floors.zone("whole", 100, Map.of(now.kind(), now))))
                            .build(),
                    topic,
                    Subject.OPEN_FIELD,
                    "damages." + now.kind().key(),
                    floor.zones(List.of(Floors.zone("whole", 100, Map.of(now.kind(), other))))
                            .build());
        }
    }

    static Stream<Overturned> overturned() {
        return Stream.of(
                Overturned.ofDamage(
                        Topics.FIRST_CUT,
                        Floors.scratched(ScratchClass.FELT_BY_NAIL, 50),
                        Floors.scratched(ScratchClass.SEEN, 50)),
                Overturned.of(
                        Floors.unremarkable(),
                        Topics.VERDICT,
                        Subject.FLOOR,
                        SurveyField.SOUNDING,
                        Sounding.LOOSE,
                        Sounding.SOUND),
                Overturned.of(
                        Floors.unremarkable(), Topics.FINISH, Subject.FLOOR, SurveyField.GOAL, Goal.POLISH, Goal.HONE),
                Overturned.of(
                        Floors.unremarkable(),
                        Topics.PREPARATION,
                        Subject.FLOOR,
                        SurveyField.JOINTS,
                        Joints.OPEN,
                        Joints.FULL),
                Overturned.of(
                        Floors.unremarkable(),
                        Topics.BONDS,
                        Subject.FLOOR,
                        SurveyField.BACKING,
                        Backing.MESH,
                        Backing.NONE));
    }

    /** Only the text is read to learn what to check; only the survey's answer to that is changed. */
    @ParameterizedTest
    @MethodSource("overturned")
    void the_text_alone_tells_which_fact_to_check_to_overturn_a_decision(Overturned asked) {
        Recommendation before = ADVISOR.recommend(asked.floor());
        Why why = ADVISOR.why(before, asked.topic(), asked.subject());
        String text = Texts.english().page(TEXT.document(why)).replaceAll("\\s+", " ");
        String question = said("field." + asked.field());
        int heading = text.indexOf(said("answer.to-overturn"));
        assertThat(heading).isPositive();
        assertThat(text.substring(heading)).contains("- " + question + " ");
        Outcome after = ADVISOR.why(ADVISOR.recommend(asked.other()), asked.topic(), asked.subject())
                .outcome();
        assertThat(values(after)).isNotEqualTo(values(why.outcome()));
    }

    private static List<String> values(Outcome outcome) {
        return outcome instanceof Decision<?> decision ? decision.keys() : List.of();
    }

    @Test
    void why_not_names_the_condition_that_is_not_met() {
        FloorSurvey floor = Floors.unremarkable()
                .zones(List.of(Floors.zone(
                        "whole", 100, Map.of(DamageKind.SCRATCHES, Floors.scratched(ScratchClass.SEEN, 50)))))
                .build();
        WhyNot not = ADVISOR.whyNot(ADVISOR.recommend(floor), Topics.FIRST_CUT, Subject.OPEN_FIELD, Cut.HONE.key());
        assertThat(Texts.english().page(TEXT.document(not)))
                .startsWith("First cut, open field: why not resin 200?\n")
                .contains("The plan has resin 400 instead.");
        assertThat(Texts.english().page(TEXT.document(not)).replaceAll("\\s+", " "))
                .contains("scratches in the open field: caught by a fingernail (here: seen but not felt)");
        assertThat(Texts.english().line(TEXT.document(not)))
                .startsWith("First cut, open field: resin 400, not resin 200.");
    }
}
