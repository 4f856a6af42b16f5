package stoneprocess.rules;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.survey.Access;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Heated;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.LoadConfirmed;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.Slope;
import stoneprocess.core.survey.SolventRag;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.StoneMix;
import stoneprocess.core.survey.Structure;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Traffic;
import stoneprocess.core.survey.TreatedAgo;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.WetUse;
import stoneprocess.core.survey.WorksKind;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

/** Floors for the tests, invented. Each starts from one on which everything is known and nothing is remarkable. */
public final class Floors {
    private Floors() {}

    /** Grey granite, polished, everything known, dull and otherwise sound. */
    public static FloorSurvey.Builder unremarkable() {
        return FloorSurvey.builder("unremarkable")
                .set(SurveyField.STONE_NAME, "grey-granite")
                .set(SurveyField.IDENTIFIED_BY, IdentifiedBy.LOOK)
                .set(SurveyField.ACID_DROP, AcidDrop.NO_REACTION)
                .set(SurveyField.SCRIBER, ScriberTest.NOT_SCRATCHED)
                .set(SurveyField.WATER_DROP, WaterDrop.NOT_DARKENED)
                .set(SurveyField.SOLVENT_RAG, SolventRag.CLEAN)
                .set(SurveyField.LABORATORY, LaboratoryResult.NOT_SAMPLED)
                .set(SurveyField.COLOUR, StoneColour.MIXED)
                .set(SurveyField.FACE, Face.FLAT)
                .set(SurveyField.MIX, StoneMix.ONE_HARDNESS)
                .set(SurveyField.THICKNESS, Length.of(20, Unit.MILLIMETRE))
                .set(SurveyField.BACKING, Backing.NONE)
                .set(SurveyField.BED, Bed.MORTAR)
                .set(SurveyField.HEATED, Heated.NO)
                .set(SurveyField.SOUNDING, Sounding.SOUND)
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.NONE)
                .set(SurveyField.MOISTURE, Share.of(2, Unit.PERCENT))
                .set(SurveyField.DRY_REFERENCE, Share.of(2, Unit.PERCENT))
                .set(SurveyField.JOINTS, Joints.FULL)
                .set(SurveyField.COATING, Coating.NONE)
                .set(SurveyField.FINISH_NOW, Finish.POLISH)
                .set(SurveyField.CLEANING_TRIAL, CleaningTrial.NOT_ENOUGH)
                .set(SurveyField.LAST_TREATMENT, LastTreatment.DIAMOND)
                .set(SurveyField.TREATED_AGO, TreatedAgo.LONGER)
                .set(SurveyField.AREA, Area.of(60, Unit.SQUARE_METRE))
                .set(SurveyField.SETTING, Setting.INDOORS)
                .set(SurveyField.OCCUPIED, Occupied.YES)
                .set(SurveyField.OPEN_DOORS, Presence.PRESENT)
                .set(SurveyField.FAN, Presence.NONE)
                .set(SurveyField.DRAIN, Presence.NONE)
                .set(SurveyField.WATER_SUPPLY, Presence.PRESENT)
                .set(SurveyField.SLOPE, Slope.LEVEL)
                .set(SurveyField.WET_USE, WetUse.DRY)
                .set(SurveyField.VOLTS, Voltage.of(230, Unit.VOLT))
                .set(SurveyField.AMPS, Current.of(16, Unit.AMPERE))
                .set(SurveyField.ACCESS, Access.LEVEL)
                .set(SurveyField.STRUCTURE, Structure.ON_GROUND)
                .set(SurveyField.FLOOR_LOAD, AreaLoad.of(5, Unit.KILONEWTON_PER_SQUARE_METRE))
                .set(SurveyField.LOAD_CONFIRMED, LoadConfirmed.ENGINEER)
                .set(SurveyField.HISTORIC, Historic.NO)
                .set(SurveyField.WORKS, WorksKind.CONSTRUCTION)
                .set(SurveyField.CREW, Count.of(2, Unit.COUNT))
                .set(SurveyField.REOPENS_AFTER, TimeSpan.of(5, Unit.DAY))
                .set(SurveyField.CONSENT, Presence.NONE)
                .set(SurveyField.TRAFFIC, Traffic.HEAVY)
                .set(
                        SurveyField.MACHINES,
                        EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY, MachineClass.EDGE_TOOL))
                .set(SurveyField.GRADES, GritSequence.standard().grades())
                .set(SurveyField.EXTRACTOR, Extractor.HEPA)
                .set(SurveyField.WET_VACUUM, Presence.PRESENT)
                .set(SurveyField.GOAL, Goal.JUST_BETTER)
                .zone(zone("whole", 100, Map.of(DamageKind.WEAR, dull(80))));
    }

    /** A zone in which every kind of damage was looked for. */
    public static Zone zone(String name, double share, Map<DamageKind, Damage> found) {
        Map<DamageKind, Damage> damages = new HashMap<>();
        Arrays.stream(DamageKind.values()).forEach(kind -> damages.put(kind, Damage.none(kind)));
        damages.putAll(found);
        return new Zone(name, ZoneKind.FIELD, Share.of(share, Unit.PERCENT), damages);
    }

    public static Damage dull(double share) {
        return Damage.seen(DamageKind.WEAR, WearClass.DULL, Share.of(share, Unit.PERCENT));
    }

    public static Damage scratched(ScratchClass look, double share) {
        return Damage.seen(DamageKind.SCRATCHES, look, Share.of(share, Unit.PERCENT));
    }

    public static Damage etched(EtchClass look, double share) {
        return Damage.seen(DamageKind.ETCHES, look, Share.of(share, Unit.PERCENT));
    }

    public static Damage lipped(double millimetres, double share) {
        return Damage.measured(
                DamageKind.LIPPAGE, Length.of(millimetres, Unit.MILLIMETRE), Share.of(share, Unit.PERCENT));
    }

    /** The unremarkable floor with one whole zone that has this damage instead. */
    public static FloorSurvey.Builder damaged(Damage... damages) {
        Map<DamageKind, Damage> found = new HashMap<>();
        Arrays.stream(damages).forEach(damage -> found.put(damage.kind(), damage));
        return unremarkable().zones(List.of(zone("whole", 100, found)));
    }

    /** Pale calcite marble, polished before, identified by two tests. */
    public static FloorSurvey.Builder calciteMarble(Damage... damages) {
        return damaged(damages)
                .set(SurveyField.STONE_NAME, "calcite-marble")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .set(SurveyField.COLOUR, StoneColour.PALE);
    }

    /** A worn, flat, hard floor without lines; 800, 1500 and 3000 on hand. */
    public static FloorSurvey wornGranite() {
        GritSequence all = GritSequence.standard();
        return unremarkable()
                .set(
                        SurveyField.GRADES,
                        List.of(all.get("resin-800", ""), all.get("resin-1500", ""), all.get("resin-3000", "")))
                .build();
    }

    /** Nothing is known but that the ground is pale. */
    public static FloorSurvey unknownStone() {
        return FloorSurvey.builder("unknown")
                .set(SurveyField.COLOUR, StoneColour.PALE)
                .build();
    }

    public static Set<MachineClass> machines(MachineClass... machines) {
        return Set.of(machines);
    }
}
