package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Precaution;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.survey.ChangedBy;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

class PhrasesTest {
    private static List<String> neededKeys() {
        List<String> keys = new ArrayList<>(PlanText.fixedKeys());
        keys.addAll(FollowText.fixedKeys());
        keys.addAll(LoggedFacts.keys());
        keys.addAll(FactWords.keys());
        keys.addAll(RuleText.fixedKeys());
        keys.addAll(ValueWords.fixedKeys());
        keys.addAll(AnswerText.fixedKeys());
        keys.addAll(List.of("rule.when", "rule.then"));
        List<Term> terms = new ArrayList<>();
        Topics.all().forEach(topic -> terms.addAll(topic.domain()));
        terms.addAll(List.of(Status.values()));
        terms.addAll(List.of(TrackKind.values()));
        terms.addAll(List.of(OfferKind.values()));
        terms.addAll(List.of(HowFound.values()));
        terms.addAll(List.of(SurfaceState.values()));
        terms.addAll(List.of(Stage.values()));
        terms.addAll(List.of(PolicyKind.values()));
        terms.addAll(List.of(Standing.values()));
        terms.addAll(List.of(NoteKind.values()));
        terms.addAll(List.of(Effect.values()));
        terms.addAll(List.of(EventKind.values()));
        terms.addAll(List.of(EventState.values()));
        terms.addAll(List.of(Sign.values()));
        terms.addAll(List.of(TrialResult.values()));
        terms.addAll(List.of(ScratchLook.values()));
        terms.addAll(List.of(PadLook.values()));
        terms.addAll(List.of(EdgeLook.values()));
        terms.addAll(List.of(FaceState.values()));
        terms.addAll(List.of(GainVerdict.values()));
        terms.addAll(List.of(TargetVerdict.values()));
        terms.addAll(List.of(Precaution.values()));
        terms.addAll(List.of(Role.values()));
        terms.addAll(List.of(WhyNotKind.values()));
        terms.addAll(List.of(WayKind.values()));
        terms.addAll(List.of(ChangedBy.values()));
        for (SurveyField<?> field : SurveyField.all()) {
            if (field.kind() instanceof FieldKind.Choice choice) {
                Stream.of(choice.type().getEnumConstants())
                        .map(Term.class::cast)
                        .forEach(terms::add);
            }
        }
        terms.forEach(term -> keys.add(Phrases.key(term)));
        for (Hazard hazard : Hazard.values()) {
            for (String part : List.of("exposed", "limit")) {
                keys.add(Phrases.key(hazard) + "." + part);
            }
        }
        for (OfferKind offer : OfferKind.values()) {
            keys.add(Phrases.key(offer) + ".gives-up");
        }
        for (TrackKind track : TrackKind.values()) {
            keys.add(Phrases.key(track) + ".name");
        }
        keys.add(Phrases.key(Sealer.IMPREGNATOR) + ".check");
        SurveyField.all().forEach(field -> keys.add("field." + field.name()));
        for (DamageKind kind : DamageKind.values()) {
            keys.add("field.damages." + kind.key());
        }
        return keys;
    }

    @Test
    void every_key_that_a_text_can_ask_for_has_a_phrase() {
        Phrases phrases = new Phrases(UnitSystem.METRIC, Parameters.standard());
        for (String key : neededKeys()) {
            assertThat(Phrases.has(key)).as(key).isTrue();
            assertThat(phrases.get(key)).as(key).isNotBlank().doesNotContain("{");
        }
    }

    @Test
    void no_phrase_is_left_over() {
        Set<String> used = new HashSet<>(neededKeys());
        List<String> leftOver = ResourceBundle.getBundle("stoneprocess.rules.text.english").keySet().stream()
                .filter(key -> !used.contains(key))
                .filter(key -> !key.endsWith(".name"))
                .sorted()
                .toList();
        assertThat(leftOver).isEmpty();
    }

    @Test
    void numbers_in_phrases_are_printed_in_the_readers_units() {
        assertThat(new Phrases(UnitSystem.METRIC, Parameters.standard()).get("Upkeep.mats"))
                .isEqualTo("4.5-6 m of mats at the doors.");
        assertThat(new Phrases(UnitSystem.US, Parameters.standard()).get("Upkeep.mats"))
                .isEqualTo("14.8-19.7 ft of mats at the doors.");
    }
}
