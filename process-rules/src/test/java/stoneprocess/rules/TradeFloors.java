package stoneprocess.rules;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.TrackKind;

/** Floors as crews meet them, invented, and short ways to read a plan. */
final class TradeFloors {
    private TradeFloors() {}

    /** Pale calcite marble, felt scratches, rough etches, one tile that stands proud; to a polish. */
    static FloorSurvey.Builder etchedMarble() {
        return Floors.calciteMarble(
                        Floors.scratched(ScratchClass.FELT_BY_NAIL, 20),
                        Floors.etched(EtchClass.ROUGH, 10),
                        Floors.lipped(2, 1))
                .set(SurveyField.GOAL, Goal.POLISH);
    }

    /** Cement terrazzo under old wax, fine lines; to its traditional hone. Nobody has tried cleaning alone. */
    static FloorSurvey.Builder waxedTerrazzo() {
        return cement("cement-terrazzo", Floors.scratched(ScratchClass.SEEN, 20))
                .set(SurveyField.COATING, Coating.WAX)
                .set(SurveyField.CLEANING_TRIAL, CleaningTrial.NOT_DONE)
                .set(SurveyField.FINISH_NOW, Finish.SATIN)
                .set(SurveyField.GOAL, Goal.HONE);
    }

    /** A scratched concrete slab; to a hone. */
    static FloorSurvey.Builder concrete(Damage... damages) {
        return cement("concrete", damages).set(SurveyField.GOAL, Goal.HONE);
    }

    /** A slab 4 mm off a straightedge; to a polish, with a planetary machine. */
    static FloorSurvey.Builder unevenConcrete() {
        return concrete(wavy(4))
                .set(SurveyField.FINISH_NOW, Finish.HONE)
                .set(SurveyField.GOAL, Goal.POLISH)
                .set(SurveyField.AREA, Area.of(200, Unit.SQUARE_METRE));
    }

    private static FloorSurvey.Builder cement(String name, Damage... damages) {
        return Floors.damaged(damages)
                .set(SurveyField.STONE_NAME, name)
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.WATER_DROP, WaterDrop.DARKENS_SLOWLY);
    }

    /** Polished granite without damage, wanted as it is. */
    static FloorSurvey.Builder soundGranite() {
        return Floors.damaged();
    }

    /** Worn granite in which pieces rock. */
    static FloorSurvey.Builder looseTiles() {
        return Floors.unremarkable().set(SurveyField.SOUNDING, Sounding.LOOSE);
    }

    /** Granite of 6 mm with deep scratches; a high gloss is wanted. */
    static FloorSurvey.Builder thinGranite() {
        return Floors.damaged(Floors.scratched(ScratchClass.DEEP, 20))
                .set(SurveyField.THICKNESS, Length.of(6, Unit.MILLIMETRE))
                .set(SurveyField.GOAL, Goal.HIGH_GLOSS);
    }

    static Damage wavy(double millimetres) {
        return Damage.measured(
                DamageKind.WAVINESS, Length.of(millimetres, Unit.MILLIMETRE), Share.of(100, Unit.PERCENT));
    }

    static Damage cracked() {
        return new Damage(DamageKind.CRACKS, Optional.of(Presence.PRESENT), Optional.empty(), Optional.empty());
    }

    static FloorSurvey.Builder with(FloorSurvey.Builder floor, MachineClass first, MachineClass... rest) {
        return floor.set(SurveyField.MACHINES, EnumSet.of(first, rest));
    }

    static Recommendation recommend(FloorSurvey.Builder floor) {
        return Advisor.standard().recommend(floor.build());
    }

    static Plan plan(FloorSurvey.Builder floor) {
        return recommend(floor).plan().orElseThrow();
    }

    static List<PlannedStep> steps(Plan plan, TrackKind kind) {
        return plan.tracks().stream()
                .filter(track -> track.kind() == kind)
                .flatMap(track -> track.steps().stream())
                .toList();
    }

    static List<PlannedStep> field(Plan plan) {
        return steps(plan, TrackKind.OPEN_FIELD);
    }

    static List<String> grades(List<PlannedStep> steps) {
        return steps.stream().map(step -> step.grade().key()).toList();
    }
}
