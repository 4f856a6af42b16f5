package stoneprocess.rules.internal.classify;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FibreRisk;
import stoneprocess.core.stone.FinishReach;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.ChipColour;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SolventRag;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.CeilingMatch;
import stoneprocess.rules.feature.Identification;

/** What the stone is concluded to be, and what its tests tell. */
final class StoneClasses {
    private static final Set<Family> POURED =
            EnumSet.of(Family.CONCRETE, Family.CEMENT_TERRAZZO, Family.RESIN_TERRAZZO);

    /** What floors have been made of for hardly more years than make a floor historic; from memory. */
    private static final Set<Family> YOUNG = EnumSet.of(Family.ENGINEERED_QUARTZ);

    private StoneClasses() {}

    static Set<Family> namedAs(Situation situation) {
        return situation
                .survey()
                .answer(SurveyField.STONE_NAME)
                .value()
                .map(name -> StoneCatalogue.standard()
                        .get(name, SurveyField.STONE_NAME.name())
                        .families())
                .orElseGet(() -> EnumSet.allOf(Family.class));
    }

    static Set<Family> families(Situation situation) {
        return situation.decided(Topics.STONE, Family.class);
    }

    /** A drop that does not darken the surface tells something only when nothing keeps it out. */
    static Set<WaterDrop> waterDrop(Situation situation) {
        Set<WaterDrop> seen = situation.answer(SurveyField.WATER_DROP, WaterDrop.class);
        boolean keptOut =
                !situation.survey().answer(SurveyField.COATING).value().equals(Optional.of(Coating.NONE));
        return keptOut && seen.contains(WaterDrop.NOT_DARKENED) ? EnumSet.allOf(WaterDrop.class) : seen;
    }

    static Set<Identification> identified(Situation situation) {
        if (situation.decision(Topics.STONE, Subject.FLOOR).isEmpty()) {
            return EnumSet.of(Identification.CONFLICT);
        }
        FloorSurvey survey = situation.survey();
        boolean examined =
                survey.answer(SurveyField.IDENTIFIED_BY).value().equals(Optional.of(IdentifiedBy.PETROGRAPHER));
        boolean acid = acidTells(survey);
        boolean scriber = survey.answer(SurveyField.SCRIBER).isKnown();
        if (examined || acid && scriber) {
            return EnumSet.of(Identification.TWO_TESTS);
        }
        if (acid || scriber) {
            return EnumSet.of(Identification.ONE_TEST);
        }
        boolean named = survey.answer(SurveyField.STONE_NAME).isKnown();
        return EnumSet.of(named ? Identification.NAME_ONLY : Identification.NOTHING);
    }

    /** A face that does not fizz tells something only when nothing lies on it and no layer was grown into it. */
    private static boolean acidTells(FloorSurvey survey) {
        Optional<AcidDrop> drop = survey.answer(SurveyField.ACID_DROP).value();
        boolean bare = survey.answer(SurveyField.COATING).value().equals(Optional.of(Coating.NONE))
                && survey.answer(SurveyField.SOLVENT_RAG).value().equals(Optional.of(SolventRag.CLEAN));
        boolean crystallised = survey.answer(SurveyField.LAST_TREATMENT)
                .value()
                .map(LastTreatment.CRYSTALLISER::equals)
                .orElse(true);
        return drop.isPresent() && (drop.get() != AcidDrop.NO_REACTION || bare && !crystallised);
    }

    /**
     * Neither name nor acid nor microscope clears a green natural stone, only its hardness does: serpentine is softer than
     * steel. Needles and silky veins make any natural stone suspect, and fibres found any floor. A ground of unknown colour
     * may be green. What is made of chips is judged by them and not by the cement or resin between them: one green chip
     * may be serpentine, and neither hardness nor a pale ground clears it.
     */
    static Set<FibreRisk> fibres(Situation situation) {
        Set<FibreRisk> byKind = Traits.across(families(situation), FibreRisk.class, Traits::fibres);
        FloorSurvey survey = situation.survey();
        boolean found =
                survey.answer(SurveyField.LABORATORY).value().equals(Optional.of(LaboratoryResult.FIBRES_FOUND));
        boolean provenHard = identified(situation).contains(Identification.TWO_TESTS)
                && survey.answer(SurveyField.SCRIBER).value().equals(Optional.of(ScriberTest.NOT_SCRATCHED));
        boolean natural = families(situation).stream()
                .anyMatch(family ->
                        family == Family.BRECCIA || Traits.of(family).body().contains(Body.STONE));
        boolean chipped = families(situation).stream().anyMatch(Family::isOfChips);
        EnumSet<FibreRisk> risks = EnumSet.noneOf(FibreRisk.class);
        for (StoneColour colour : situation.answer(SurveyField.COLOUR, StoneColour.class)) {
            boolean byColour = (natural || chipped)
                    && (colour == StoneColour.FIBROUS || colour == StoneColour.GREEN && !provenHard);
            for (ChipColour chip : situation.answer(SurveyField.CHIPS, ChipColour.class)) {
                boolean suspect = found || byColour || chipped && chip == ChipColour.GREEN;
                risks.addAll(suspect ? EnumSet.of(FibreRisk.POSSIBLE) : byKind);
            }
        }
        return risks;
    }

    /**
     * As answered; else a floor that was laid or poured lately, or at a time that nobody told and of a material that has
     * hardly been made for longer, is not historic: who knows of old pieces in it says so.
     */
    static Set<Historic> historic(Situation situation) {
        FloorSurvey survey = situation.survey();
        boolean young = survey.answer(SurveyField.LAID_AGO)
                .value()
                .map(age -> age.compareTo(situation.parameters().get("historic.age", TimeSpan.class)) < 0)
                .orElseGet(() -> YOUNG.containsAll(families(situation)));
        boolean open = !survey.answer(SurveyField.HISTORIC).isKnown();
        return open && young ? EnumSet.of(Historic.NO) : situation.answer(SurveyField.HISTORIC, Historic.class);
    }

    /** As answered, except that nothing is glued to the back of a floor that was poured whatever it is. */
    static Set<Backing> backing(Situation situation) {
        return POURED.containsAll(families(situation))
                ? EnumSet.of(Backing.NONE)
                : situation.answer(SurveyField.BACKING, Backing.class);
    }

    /** As answered where it is made of chips whatever it is; elsewhere there are none to look at. */
    static Set<ChipColour> chips(Situation situation) {
        return families(situation).stream().allMatch(Family::isOfChips)
                ? situation.answer(SurveyField.CHIPS, ChipColour.class)
                : EnumSet.of(ChipColour.PALE);
    }

    /** Over only where a clean, dry reading passes the ceiling of every family that the stone may be; within, where none was taken. */
    static Set<CeilingMatch> ceiling(Situation situation) {
        GlossCeiling highest = situation.stone().highestCeiling();
        List<GlossReading> telling = situation.survey().readings().stream()
                .filter(reading -> reading.state() == SurfaceState.CLEAN_DRY)
                .toList();
        boolean over = telling.stream()
                .map(reading -> GlossCheck.of(reading.gloss(), reading.geometry(), highest, situation.parameters()))
                .anyMatch(check -> check.suspicion() == GlossSuspicion.OVER_CEILING);
        return EnumSet.of(over ? CeilingMatch.OVER : CeilingMatch.WITHIN);
    }

    /**
     * Where a kind of stone may be dense or porous, the drop of water tells which, and so does a shine. Where name and tests
     * contradict each other the name counts: the stone is tested again before a wish is given up for it.
     */
    static Set<FinishReach> finishReach(Situation situation) {
        Set<WaterDrop> drop = waterDrop(situation);
        Set<Finish> now = situation.answer(SurveyField.FINISH_NOW, Finish.class);
        boolean mayBeDense = drop.contains(WaterDrop.NOT_DARKENED)
                || now.stream().anyMatch(finish -> finish.compareTo(Finish.SATIN) > 0);
        boolean mayBePorous = drop.stream().anyMatch(seen -> seen != WaterDrop.NOT_DARKENED)
                && now.stream().anyMatch(finish -> finish.compareTo(Finish.SATIN) <= 0);
        EnumSet<FinishReach> reaches = EnumSet.noneOf(FinishReach.class);
        boolean contradicted = situation.decision(Topics.STONE, Subject.FLOOR).isEmpty();
        for (Family family : contradicted ? namedAs(situation) : families(situation)) {
            Set<FinishReach> byKind = Traits.of(family).finish();
            boolean either = byKind.contains(FinishReach.SATIN) && byKind.contains(FinishReach.POLISH);
            if (!either) {
                reaches.addAll(byKind);
            }
            if (either && mayBeDense) {
                reaches.add(FinishReach.POLISH);
            }
            if (either && mayBePorous) {
                reaches.add(FinishReach.SATIN);
            }
        }
        return reaches;
    }
}
