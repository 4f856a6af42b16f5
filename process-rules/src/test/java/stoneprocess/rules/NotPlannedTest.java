package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.NotPlanned;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.CrackHarm;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;

/** All that was told and calls for work is treated, or named with what keeps it from being treated; common practice, no source. */
class NotPlannedTest {
    private static final Damage SCRATCHES =
            Damage.seen(DamageKind.SCRATCHES, ScratchClass.FELT_BY_NAIL, Share.of(40, Unit.PERCENT));

    private static List<NotPlanned> notPlanned(FloorSurvey.Builder floor, Damage... damages) {
        Zone zone = Floors.unremarkable().build().zones().get(0);
        for (Damage damage : damages) {
            zone = zone.with(damage);
        }
        return NotPlanned.of(
                Advisor.standard().recommend(floor.zones(List.of(zone)).build()));
    }

    @Test
    void a_lip_without_a_share_is_named_beside_the_scratches_that_are_cut() {
        Damage lip = new Damage(
                DamageKind.LIPPAGE, Optional.empty(), Optional.of(Length.of(3, Unit.MILLIMETRE)), Optional.empty());
        assertThat(notPlanned(Floors.unremarkable(), SCRATCHES, lip))
                .containsExactly(new NotPlanned(DamageKind.LIPPAGE, NotPlanned.Why.SHARE_MISSING));
    }

    @Test
    void a_few_lips_that_are_relaid_and_scratches_that_are_cut_are_not_named() {
        Damage lips = Damage.measured(DamageKind.LIPPAGE, Length.of(2, Unit.MILLIMETRE), Share.of(1, Unit.PERCENT));
        assertThat(notPlanned(Floors.unremarkable(), SCRATCHES, lips)).isEmpty();
    }

    @Test
    void cracks_that_harm_nobody_are_named_where_they_stay() {
        FloorSurvey.Builder floor = Floors.unremarkable().set(SurveyField.CRACK_HARM, CrackHarm.HARMLESS);
        Damage cracks = Damage.seen(DamageKind.CRACKS, Presence.PRESENT, Share.of(1, Unit.PERCENT));
        assertThat(notPlanned(floor, SCRATCHES, cracks))
                .containsExactly(new NotPlanned(DamageKind.CRACKS, NotPlanned.Why.STAYS));
    }

    @Test
    void open_joints_of_a_floor_without_a_plan_are_named() {
        FloorSurvey.Builder floor = Floors.unremarkable()
                .set(SurveyField.JOINTS, Joints.OPEN)
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED);
        assertThat(notPlanned(floor, SCRATCHES)).contains(new NotPlanned(Joints.OPEN, NotPlanned.Why.NO_CUT_YET));
    }

    @Test
    void open_joints_that_are_filled_are_not_named() {
        assertThat(notPlanned(Floors.unremarkable().set(SurveyField.JOINTS, Joints.OPEN), SCRATCHES))
                .isEmpty();
    }

    @Test
    void a_coating_of_unknown_kind_is_named() {
        FloorSurvey.Builder floor = Floors.unremarkable()
                .unknown(SurveyField.COATING)
                .set(SurveyField.LAST_TREATMENT, LastTreatment.COATING);
        assertThat(notPlanned(floor, SCRATCHES))
                .contains(new NotPlanned(LastTreatment.COATING, NotPlanned.Why.KIND_MISSING));
    }

    @Test
    void wax_that_is_stripped_is_not_named() {
        assertThat(notPlanned(Floors.unremarkable().set(SurveyField.COATING, Coating.WAX), SCRATCHES))
                .isEmpty();
    }

    /** Rocking pieces that hold up the work are made firm first, and so do not wait for its release. */
    @Test
    void pieces_that_a_refusal_has_made_firm_first_do_not_wait() {
        FloorSurvey.Builder floor = Floors.unremarkable().set(SurveyField.SOUNDING, Sounding.LOOSE);
        assertThat(Advisor.standard().recommend(floor.build()).values(Topics.PREPARATION, Subject.FLOOR))
                .contains(Task.FIX_HOLLOW);
        assertThat(notPlanned(floor, SCRATCHES)).extracting(NotPlanned::what).doesNotContain(Sounding.LOOSE);
    }

    @Test
    void hollow_pieces_of_a_refused_floor_are_named() {
        FloorSurvey.Builder floor = Floors.unremarkable()
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED)
                .set(SurveyField.SOUNDING, Sounding.FEW_HOLLOW);
        assertThat(notPlanned(floor, SCRATCHES))
                .contains(new NotPlanned(Sounding.FEW_HOLLOW, NotPlanned.Why.NO_CUT_YET));
    }

    @Test
    void a_floor_without_damage_names_nothing() {
        assertThat(notPlanned(Floors.unremarkable())).isEmpty();
    }
}
