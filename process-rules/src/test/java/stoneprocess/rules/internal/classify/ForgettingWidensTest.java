package stoneprocess.rules.internal.classify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FinishReach;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.DampSource;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.feature.Condition.Cracks;
import stoneprocess.rules.feature.Condition.LocalScratches;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.SurveyGenerator;

/** What a fact may be when an answer is forgotten includes what it was: the ground on which unknown is read cautiously. */
class ForgettingWidensTest {
    private static final Set<String> READ_BY_METER =
            Set.of(SurveyField.MOISTURE.name(), SurveyField.DRY_REFERENCE.name());

    /**
     * But for lanes alone on a floor whose lanes are no worse: that is held, and who does not ask for it has no such job.
     * And but for the layer below a floor that was laid when asbestos was no longer sold: its age clears a layer that
     * nobody looked for, and not one that was found. And but for historic fabric in a floor that was laid lately: who
     * knows of old pieces in it says so. And but for the meter in a floor whose source of damp is told: read dry, it is dry,
     * and unread it is damp, the more careful of the two. And but for the face of a mosaic of large pieces, which is held.
     */
    @Test
    void forgetting_an_answer_never_rules_out_what_was_known() {
        for (int known : List.of(100, 95, 60)) {
            SurveyGenerator generator = SurveyGenerator.of(new Share(known));
            for (long seed = 0; seed < 400; seed++) {
                FloorSurvey survey = generator.draw(new SplittableRandom(seed));
                Forgetting.oneByOne(survey).stream()
                        .filter(less -> !contradicts(survey, less.forgotten()))
                        .filter(less -> !less.forgotten().equals(SurveyField.EXTENT.name()))
                        .filter(less -> !(less.forgotten().equals(SurveyField.HAZARDOUS_LAYER.name())
                                && isYounger(survey, TimeSpan.of(20, Unit.YEAR))))
                        .filter(less -> !(READ_BY_METER.contains(less.forgotten()) && isToldDamp(survey)))
                        .filter(less -> !(less.forgotten().equals(SurveyField.FACE.name()) && isLargeMosaic(survey)))
                        .filter(less -> !(less.forgotten().equals(SurveyField.HISTORIC.name())
                                && isYounger(survey, TimeSpan.of(50, Unit.YEAR))))
                        .forEach(less -> assertWider(survey, less.forgotten(), less.survey()));
            }
        }
    }

    @Test
    void scratches_in_a_small_zone_that_nobody_looked_at_may_tip_the_share_that_governs() {
        Zone large = scratched("large", 97, Optional.of(4.0));
        FloorSurvey survey = FloorSurvey.builder("two zones")
                .zone(large)
                .zone(scratched("small", 3, Optional.of(100.0)))
                .build();
        FloorSurvey less = FloorSurvey.builder("two zones")
                .zone(large)
                .zone(new Zone("small", ZoneKind.FIELD, new Share(3), Map.of()))
                .build();

        assertThat(fact(survey, LocalScratches.class).mayBe()).isEqualTo(Set.of(ScratchClass.NONE));
        assertThat(fact(less, LocalScratches.class).mayBe())
                .isEqualTo(Set.of(ScratchClass.NONE, ScratchClass.DEEP, ScratchClass.GOUGED));
    }

    @Test
    void few_scratches_beside_a_zone_too_small_to_govern_stay_local() {
        FloorSurvey survey = FloorSurvey.builder("two zones")
                .zone(scratched("large", 98, Optional.of(1.0)))
                .zone(new Zone("small", ZoneKind.FIELD, new Share(2), Map.of()))
                .build();

        assertThat(fact(survey, LocalScratches.class).mayBe())
                .isEqualTo(Set.of(ScratchClass.DEEP, ScratchClass.GOUGED));
    }

    @Test
    void a_crack_that_was_seen_is_there_even_when_its_share_was_not_taken() {
        Damage seen = new Damage(DamageKind.CRACKS, Optional.of(Presence.PRESENT), Optional.empty(), Optional.empty());
        FloorSurvey survey = FloorSurvey.builder("two zones")
                .zone(Floors.zone("lane", 10, Map.of(DamageKind.CRACKS, seen)))
                .zone(Floors.zone("rest", 90, Map.of()))
                .build();

        assertThat(fact(survey, Cracks.class).known()).isEqualTo(Presence.PRESENT);
    }

    /**
     * So the survey without the contradicting test does not know less: it has a stone that this one has not. No finish is
     * given up for a stone that is tested again first, so that the finish it may reach is the name's.
     */
    @Test
    void a_name_that_a_test_contradicts_leaves_every_trait_of_the_stone_open_but_its_finish() {
        FloorSurvey contradicted = Floors.unremarkable()
                .set(SurveyField.STONE_NAME, "grey-granite")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .build();

        List<Object> open = traits(contradicted);

        List<Object> ofAnyStone = new ArrayList<>(traits(Floors.unknownStone().toBuilder()
                .unknown(SurveyField.COLOUR)
                .set(SurveyField.BACKING, Backing.NONE)
                .set(SurveyField.HISTORIC, Historic.NO)
                .set(SurveyField.THICKNESS, Length.of(20, Unit.MILLIMETRE))
                .build()));
        ofAnyStone.removeIf(StoneTraits.HighestFinish.class::isInstance);
        assertThat(open)
                .containsAll(ofAnyStone)
                .contains(new StoneTraits.HighestFinish(EnumSet.of(FinishReach.POLISH)))
                .contains(new StoneTraits.StoneFamily(EnumSet.allOf(Family.class)));
    }

    private static List<Object> traits(FloorSurvey survey) {
        Situation situation = new Situation(survey, Parameters.standard(), GritSequence.standard());
        Advisor.standard().recommend(survey).outcomes().stream()
                .filter(outcome -> outcome.topic() == Topics.STONE)
                .forEach(situation::close);
        return Facts.after(Optional.of(Stage.SURVEY), situation).stream()
                .filter(fact -> !(fact instanceof StoneTraits.Identified))
                .toList();
    }

    private static Zone scratched(String name, double zoneShare, Optional<Double> share) {
        Damage damage = new Damage(
                DamageKind.SCRATCHES, Optional.of(ScratchClass.DEEP), Optional.empty(), share.map(Share::new));
        return new Zone(name, ZoneKind.FIELD, new Share(zoneShare), Map.of(DamageKind.SCRATCHES, damage));
    }

    /** A surface that was never ground, after a treatment that only a ground one gets: forgotten, the treatment tells. */
    private static boolean contradicts(FloorSurvey survey, String forgotten) {
        return forgotten.equals(SurveyField.CEMENT_SURFACE.name())
                && survey.answer(SurveyField.CEMENT_SURFACE)
                        .value()
                        .filter(surface -> surface != CementSurface.GROUND)
                        .isPresent()
                && survey.answer(SurveyField.LAST_TREATMENT)
                        .value()
                        .filter(treatment -> treatment != LastTreatment.NONE && treatment != LastTreatment.COATING)
                        .isPresent();
    }

    private static boolean isToldDamp(FloorSurvey survey) {
        return survey.answer(SurveyField.DAMP)
                .value()
                .filter(source -> source != DampSource.NONE)
                .isPresent();
    }

    private static boolean isLargeMosaic(FloorSurvey survey) {
        return survey.answer(SurveyField.FACE).value().equals(Optional.of(Face.MOSAIC))
                && survey.answer(SurveyField.TILE_EDGE)
                        .value()
                        .filter(edge -> edge.compareTo(Length.of(380, Unit.MILLIMETRE)) >= 0)
                        .isPresent();
    }

    private static boolean isYounger(FloorSurvey survey, TimeSpan age) {
        return survey.answer(SurveyField.LAID_AGO)
                .value()
                .filter(laid -> laid.compareTo(age) < 0)
                .isPresent();
    }

    private static void assertWider(FloorSurvey survey, String forgotten, FloorSurvey less) {
        List<Object> before = facts(survey);
        List<Object> after = facts(less);
        for (int i = 0; i < before.size(); i++) {
            Feature<?> known = (Feature<?>) before.get(i);
            Feature<?> unknown = (Feature<?>) after.get(i);
            if (!unknown.mayBe().containsAll(known.mayBe())) {
                assertThat(unknown).as("without " + forgotten + " " + survey).isEqualTo(known);
            }
        }
    }

    private static <F extends Feature<?>> F fact(FloorSurvey survey, Class<F> type) {
        return facts(survey).stream()
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Object> facts(FloorSurvey survey) {
        return Facts.after(Optional.empty(), new Situation(survey, Parameters.standard(), GritSequence.standard()));
    }
}
