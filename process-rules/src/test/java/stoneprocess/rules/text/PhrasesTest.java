package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.PolicyKind;
import stoneprocess.core.decision.Stage;
import stoneprocess.core.decision.TrackKind;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Hazard;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Precaution;
import stoneprocess.core.plan.Sealer;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.rules.decide.Topics;

class PhrasesTest {
    private static List<String> neededKeys() {
        List<String> keys = new ArrayList<>(PlanText.fixedKeys());
        List<Term> terms = new ArrayList<>();
        Topics.all().forEach(topic -> terms.addAll(topic.domain()));
        terms.addAll(List.of(Status.values()));
        terms.addAll(List.of(TrackKind.values()));
        terms.addAll(List.of(OfferKind.values()));
        terms.addAll(List.of(HowFound.values()));
        terms.addAll(List.of(SurfaceState.values()));
        terms.addAll(List.of(Stage.values()));
        terms.addAll(List.of(PolicyKind.values()));
        terms.addAll(List.of(Precaution.values()));
        terms.addAll(List.of(Role.values()));
        terms.forEach(term -> keys.add(Phrases.key(term)));
        for (Hazard hazard : Hazard.values()) {
            for (String part : List.of("exposed", "limit")) {
                keys.add(Phrases.key(hazard) + "." + part);
            }
        }
        for (OfferKind offer : OfferKind.values()) {
            keys.add(Phrases.key(offer) + ".gives-up");
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
