package stoneprocess.rules;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.rules.space.Unremarkable;

/** Floors for the tests, invented. Each starts from one on which everything is known and nothing is remarkable. */
public final class Floors {
    private Floors() {}

    /** Grey granite, polished, everything known, dull and otherwise sound. */
    public static FloorSurvey.Builder unremarkable() {
        return Unremarkable.floor();
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

    /** A worn, flat, hard floor without lines; 800, 1500 and 3000 on hand. Common practice, no source. */
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
