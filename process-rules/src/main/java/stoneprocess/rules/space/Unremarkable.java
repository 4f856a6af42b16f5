package stoneprocess.rules.space;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Access;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.ChipColour;
import stoneprocess.core.survey.Cleaner;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.DampSource;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Heated;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.Holes;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.LastWorked;
import stoneprocess.core.survey.LoadConfirmed;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.OriginalFinish;
import stoneprocess.core.survey.Presence;
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
import stoneprocess.core.survey.WorkingHours;
import stoneprocess.core.survey.WorksKind;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.tool.Powder;

/** A floor on which everything is known and nothing is remarkable: what a survey is made smaller towards. Invented. */
public final class Unremarkable {
    private Unremarkable() {}

    /** Grey granite, polished, dull and otherwise sound; a builder that starts from it. */
    public static FloorSurvey.Builder floor() {
        return FloorSurvey.builder("unremarkable")
                .set(SurveyField.STONE_NAME, "grey-granite")
                .set(SurveyField.IDENTIFIED_BY, IdentifiedBy.LOOK)
                .set(SurveyField.ACID_DROP, AcidDrop.NO_REACTION)
                .set(SurveyField.SCRIBER, ScriberTest.NOT_SCRATCHED)
                .set(SurveyField.WATER_DROP, WaterDrop.NOT_DARKENED)
                .set(SurveyField.SOLVENT_RAG, SolventRag.CLEAN)
                .set(SurveyField.LABORATORY, LaboratoryResult.NOT_SAMPLED)
                .set(SurveyField.COLOUR, StoneColour.MIXED)
                .set(SurveyField.CHIPS, ChipColour.PALE)
                .set(SurveyField.FACE, Face.FLAT)
                .set(SurveyField.MIX, StoneMix.ONE_HARDNESS)
                .set(SurveyField.THICKNESS, Length.of(20, Unit.MILLIMETRE))
                .set(SurveyField.TILE_EDGE, Length.of(300, Unit.MILLIMETRE))
                .set(SurveyField.JOINT_WIDTH, Length.of(2, Unit.MILLIMETRE))
                .set(SurveyField.BACKING, Backing.NONE)
                .set(SurveyField.BED, Bed.MORTAR)
                .set(SurveyField.HEATED, Heated.NO)
                .set(SurveyField.SOUNDING, Sounding.SOUND)
                .set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.NONE)
                .set(SurveyField.MOISTURE, Share.of(2, Unit.PERCENT))
                .set(SurveyField.DRY_REFERENCE, Share.of(2, Unit.PERCENT))
                .set(SurveyField.JOINTS, Joints.FULL)
                .set(SurveyField.COATING, Coating.NONE)
                .set(SurveyField.HOLES, Holes.NONE)
                .set(SurveyField.FINISH_NOW, Finish.POLISH)
                .set(SurveyField.CLEANING_TRIAL, CleaningTrial.NOT_ENOUGH)
                .set(SurveyField.SLIPPERY, Presence.NONE)
                .set(SurveyField.DAMP, DampSource.NONE)
                .set(SurveyField.LAST_TREATMENT, LastTreatment.DIAMOND)
                .set(SurveyField.LAST_WORKED, LastWorked.NOTHING_LEFT_OFF)
                .set(SurveyField.TREATED_AGO, TreatedAgo.LONGER)
                .set(SurveyField.CLEANER, Cleaner.NEUTRAL)
                .set(SurveyField.ORIGINAL_FINISH, OriginalFinish.POLISHED)
                .set(SurveyField.AREA, Area.of(60, Unit.SQUARE_METRE))
                .set(SurveyField.EDGES, Length.of(31, Unit.METRE))
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
                .set(SurveyField.LAID_AGO, TimeSpan.of(9000, Unit.DAY))
                .set(SurveyField.FILLED_AGO, TimeSpan.of(9000, Unit.DAY))
                .set(SurveyField.FLOOR_TEMPERATURE, Temperature.of(18, Unit.DEGREE_CELSIUS))
                .set(SurveyField.AIR_TEMPERATURE, Temperature.of(18, Unit.DEGREE_CELSIUS))
                .set(SurveyField.FROST, Presence.NONE)
                .set(SurveyField.DEADLINE, TimeSpan.of(90, Unit.DAY))
                .set(SurveyField.SHIFT, TimeSpan.of(8, Unit.HOUR))
                .set(SurveyField.WORKING_HOURS, WorkingHours.ANY)
                .set(SurveyField.CONSENT, Presence.NONE)
                .set(SurveyField.TRAFFIC, Traffic.HEAVY)
                .set(
                        SurveyField.MACHINES,
                        EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY, MachineClass.EDGE_TOOL))
                .set(SurveyField.GRADES, GritSequence.standard().grades())
                .set(SurveyField.POWDERS, EnumSet.allOf(Powder.class))
                .set(SurveyField.EXTRACTOR, Extractor.HEPA)
                .set(SurveyField.WET_VACUUM, Presence.PRESENT)
                .set(SurveyField.GOAL, Goal.JUST_BETTER)
                .zone(zone());
    }

    /** The same floor of another family, under a name and with tests that fit it. */
    public static FloorSurvey.Builder floor(Family family) {
        Stone stone = StoneCatalogue.standard().all().stream()
                .filter(listed -> listed.families().contains(Objects.requireNonNull(family, "family")))
                .min(Comparator.comparingInt(listed -> listed.families().size()))
                .orElseThrow();
        Traits traits = Traits.of(family);
        return floor().set(SurveyField.STONE_NAME, stone.name())
                .set(SurveyField.ACID_DROP, StoneTests.acidDrop(Collections.min(traits.acid())))
                .set(SurveyField.SCRIBER, StoneTests.scriber(Collections.min(traits.hardness())));
    }

    private static Zone zone() {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        for (DamageKind kind : DamageKind.values()) {
            damages.put(kind, Damage.none(kind));
        }
        damages.put(DamageKind.WEAR, Damage.seen(DamageKind.WEAR, WearClass.DULL, new Share(80)));
        return new Zone("whole", ZoneKind.FIELD, new Share(100), damages);
    }
}
