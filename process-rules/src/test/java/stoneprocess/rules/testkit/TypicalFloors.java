package stoneprocess.rules.testkit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Access;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LoadConfirmed;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SolventRag;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.Structure;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Traffic;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.WetUse;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.Unremarkable;

/**
 * Floors as a crew meets them: mostly known, mostly worth cutting. The shares of stones, damages, sites and kit are
 * invented; they are chosen for what they reach, and are no statistics of the trade.
 */
final class TypicalFloors {
    private static final Map<Family, Integer> STONES = Map.ofEntries(
            Map.entry(Family.CALCITE_MARBLE, 22),
            Map.entry(Family.CONCRETE, 22),
            Map.entry(Family.CEMENT_TERRAZZO, 14),
            Map.entry(Family.GRANITE, 12),
            Map.entry(Family.LIMESTONE, 8),
            Map.entry(Family.TRAVERTINE, 6),
            Map.entry(Family.RESIN_TERRAZZO, 4),
            Map.entry(Family.DOLOMITE_MARBLE, 3),
            Map.entry(Family.QUARTZITE, 2),
            Map.entry(Family.ENGINEERED_MARBLE, 2),
            Map.entry(Family.SANDSTONE, 2),
            Map.entry(Family.SLATE, 1),
            Map.entry(Family.PORCELAIN, 1),
            Map.entry(Family.SERPENTINE, 1));
    private static final List<ZoneKind> ZONES = List.of(ZoneKind.FIELD, ZoneKind.LANE, ZoneKind.ENTRANCE);

    private TypicalFloors() {}

    static FloorSurvey draw(GritSequence sequence, SplittableRandom random) {
        Family family = family(random);
        FloorSurvey.Builder floor = Unremarkable.floor(family);
        stone(floor, family, random);
        wish(floor, random);
        coat(floor, random);
        site(floor, random);
        kit(floor, sequence, random);
        floor.zones(zones(family, random));
        return forgetting(floor.build(), random);
    }

    private static Family family(SplittableRandom random) {
        int drawn =
                random.nextInt(STONES.values().stream().mapToInt(share -> share).sum());
        for (Family family : Family.values()) {
            drawn -= STONES.getOrDefault(family, 0);
            if (drawn < 0) {
                return family;
            }
        }
        throw new AssertionError("no family at " + drawn);
    }

    private static void stone(FloorSurvey.Builder floor, Family family, SplittableRandom random) {
        if (chance(50, random)) {
            floor.set(SurveyField.IDENTIFIED_BY, IdentifiedBy.PETROGRAPHER);
        }
        if (chance(50, random)) {
            floor.set(SurveyField.COLOUR, StoneColour.PALE);
        }
        if (Traits.of(family).body().contains(Body.CONCRETE)) {
            floor.set(SurveyField.CEMENT_SURFACE, CementSurface.GROUND);
            if (chance(25, random)) {
                floor.set(SurveyField.CEMENT_SURFACE, CementSurface.TROWELLED).unknown(SurveyField.LAST_TREATMENT);
                floor.set(SurveyField.FINISH_NOW, Finish.HONE);
            }
        }
        if (chance(20, random)) {
            floor.set(SurveyField.WATER_DROP, pick(List.of(WaterDrop.values()), random));
        }
        if (chance(10, random)) {
            floor.set(SurveyField.THICKNESS, new Length(6 + random.nextInt(25)));
        }
        if (chance(8, random)) {
            floor.set(SurveyField.JOINTS, Joints.OPEN);
        }
        if (chance(5, random)) {
            floor.set(SurveyField.SOUNDING, pick(List.of(Sounding.values()), random));
        }
        if (chance(8, random)) {
            floor.set(SurveyField.HISTORIC, Historic.YES);
        }
    }

    private static void wish(FloorSurvey.Builder floor, SplittableRandom random) {
        List<Goal> goals = List.of(
                Goal.JUST_BETTER,
                Goal.HONE,
                Goal.HONE,
                Goal.SATIN,
                Goal.SEMI_GLOSS,
                Goal.POLISH,
                Goal.POLISH,
                Goal.POLISH,
                Goal.HIGH_GLOSS,
                Goal.HIGH_GLOSS);
        floor.set(SurveyField.GOAL, pick(goals, random));
    }

    private static void coat(FloorSurvey.Builder floor, SplittableRandom random) {
        if (chance(30, random)) {
            List<Coating> coats = List.of(
                    Coating.WAX, Coating.WAX, Coating.ACRYLIC, Coating.ACRYLIC, Coating.URETHANE, Coating.EPOXY);
            floor.set(SurveyField.COATING, pick(coats, random)).set(SurveyField.SOLVENT_RAG, SolventRag.FILM);
        }
    }

    private static void site(FloorSurvey.Builder floor, SplittableRandom random) {
        floor.set(SurveyField.AREA, new Area(StrictMath.exp(1.5 + 5 * random.nextDouble())));
        if (chance(40, random)) {
            floor.set(SurveyField.WATER_SUPPLY, Presence.NONE);
        }
        if (chance(20, random)) {
            floor.set(SurveyField.SETTING, Setting.OUTDOORS);
        }
        floor.set(SurveyField.TRAFFIC, pick(List.of(Traffic.values()), random));
        if (chance(30, random)) {
            floor.set(SurveyField.OCCUPIED, Occupied.NO);
        }
        if (chance(10, random)) {
            floor.set(SurveyField.WET_USE, pick(List.of(WetUse.values()), random));
        }
        if (chance(10, random)) {
            floor.set(SurveyField.STRUCTURE, Structure.SUSPENDED).set(SurveyField.LOAD_CONFIRMED, LoadConfirmed.NOBODY);
        }
        if (chance(10, random)) {
            floor.set(SurveyField.ACCESS, Access.STAIRS);
        }
        if (chance(20, random)) {
            floor.set(SurveyField.VOLTS, new Voltage(120)).set(SurveyField.AMPS, new Current(15));
        }
    }

    private static void kit(FloorSurvey.Builder floor, GritSequence sequence, SplittableRandom random) {
        Set<MachineClass> machines = EnumSet.of(MachineClass.EDGE_TOOL);
        for (MachineClass machine : List.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY, MachineClass.BURNISHER)) {
            if (chance(80, random)) {
                machines.add(machine);
            }
        }
        if (chance(35, random)) {
            machines.add(MachineClass.PROPANE_MACHINE);
        }
        floor.set(SurveyField.MACHINES, machines);
        List<AbrasiveGrade> grades = new ArrayList<>(sequence.grades());
        if (chance(20, random)) {
            grades.removeIf(grade -> chance(12, random));
        }
        floor.set(SurveyField.GRADES, grades);
        if (chance(30, random)) {
            floor.set(SurveyField.EXTRACTOR, pick(List.of(Extractor.NONE, Extractor.VACUUM), random));
        }
        if (chance(20, random)) {
            floor.set(SurveyField.WET_VACUUM, Presence.NONE);
        }
    }

    private static List<Zone> zones(Family family, SplittableRandom random) {
        List<Zone> zones = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        int left = 100;
        for (int i = 1; i <= count; i++) {
            int share = i == count ? left : 1 + random.nextInt(left - count + i);
            left -= share;
            zones.add(new Zone(
                    "zone " + i,
                    i == 1 ? ZoneKind.FIELD : pick(ZONES, random),
                    new Share(share),
                    damages(family, random)));
        }
        return zones;
    }

    private static Map<DamageKind, Damage> damages(Family family, SplittableRandom random) {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        for (DamageKind kind : DamageKind.values()) {
            damages.put(kind, Damage.none(kind));
        }
        damages.put(DamageKind.WEAR, Damage.seen(DamageKind.WEAR, WearClass.DULL, some(random)));
        if (chance(70, random)) {
            List<ScratchClass> looks = List.of(
                    ScratchClass.SEEN,
                    ScratchClass.SEEN,
                    ScratchClass.FELT_BY_NAIL,
                    ScratchClass.FELT_BY_COIN,
                    ScratchClass.DEEP);
            damages.put(DamageKind.SCRATCHES, Damage.seen(DamageKind.SCRATCHES, pick(looks, random), some(random)));
        }
        if (!Traits.of(family).acid().equals(Set.of(AcidReaction.NONE)) && chance(30, random)) {
            EtchClass look = pick(List.of(EtchClass.GLOSS_LOST, EtchClass.ROUGH, EtchClass.PITTED), random);
            damages.put(DamageKind.ETCHES, Damage.seen(DamageKind.ETCHES, look, some(random)));
        }
        if (chance(20, random)) {
            Length proud = new Length(0.2 + 2.5 * random.nextDouble());
            damages.put(DamageKind.LIPPAGE, Damage.measured(DamageKind.LIPPAGE, proud, some(random)));
        }
        if (chance(10, random)) {
            DamageKind other = pick(
                    List.of(
                            DamageKind.CRACKS,
                            DamageKind.OIL_STAINS,
                            DamageKind.ORGANIC_STAINS,
                            DamageKind.RUST_STAINS),
                    random);
            damages.put(
                    other,
                    Damage.seen(
                            other, pick(other.terms().subList(1, other.terms().size()), random), some(random)));
        }
        return damages;
    }

    private static Share some(SplittableRandom random) {
        return new Share(chance(25, random) ? 1 + 8 * random.nextDouble() : 20 + 80 * random.nextDouble());
    }

    /** A third of the floors with one answer less, a tenth with up to eight. */
    private static FloorSurvey forgetting(FloorSurvey survey, SplittableRandom random) {
        int drawn = random.nextInt(100);
        int forgotten = drawn < 10 ? 1 + random.nextInt(8) : drawn < 43 ? 1 : 0;
        List<String> known = new ArrayList<>(Forgetting.known(survey));
        Collections.shuffle(known, new Random(random.nextLong()));
        FloorSurvey less = survey;
        for (String name : known.subList(0, forgotten)) {
            less = Forgetting.without(less, name);
        }
        return less;
    }

    private static boolean chance(int percent, SplittableRandom random) {
        return random.nextInt(100) < percent;
    }

    private static <T> T pick(List<T> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }
}
