package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FibreRisk;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.ChipColour;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SolventRag;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.Forgetting.LessKnown;

/**
 * Compares the answer to a survey with the answers to surveys that know less.
 *
 * <p>A refusal and a hold are equally cautious: nothing is cut. Values are compared where both answers decide the topic.
 * A step is compared with the same step: the same grade of the same track at the same place in its path, worked wet or
 * dry alike, since what a grade needs depends on these. A survey whose answers contradict each other is no surer than one that forgets
 * the contradiction, so that the two are not compared. Neither is work on lanes alone with work on the whole floor, another
 * job, which the lanes may spare.
 *
 * <p>Concrete is the one floor on which a start too fine is the graver error: it burnishes cement paste that was never
 * taken off, and a whole slab gives more than enough thickness (Concrete Construction, Brush Up on Polished Concrete:
 * resin from 60 to 80 up). Where nobody knows whether it was ground, a start at resin 100, no coarser, and the densifier
 * that goes with it do not count as bolder. A slab whose cement face was never ground is no veneer and no tile on boards as
 * long as nobody says so: how thick it is, how it sounds and on what it lies does not have to be known before metal opens it
 * on trial. Whether it is historic does.
 *
 * <p>A layer that was seen stops the work, whatever the date of the floor; one that nobody looked for is not expected in a floor
 * laid after asbestos was banned. The two are not compared.
 *
 * <p>Nor are fibres that a laboratory found in a floor of which neither kind nor colour nor chips are suspect, with the same
 * floor without the report: nobody would have had it sampled, and nothing but the report tells of them.
 *
 * <p>A densifier and a sealer belong to a finish: they are compared where the same finish is decided, and not where no grits
 * are decided for the open field, as at an impasse.
 *
 * @param answers how many answers are forgotten, one at a time
 */
record UnknownLaw(int answers) implements Law.Check {
    private static final String ID = "unknown-is-never-bolder";
    private static final Set<String> TAKEN_FOR_GRANTED_OF_A_SLAB =
            Set.of(SurveyField.THICKNESS.name(), SurveyField.SOUNDING.name(), SurveyField.BED.name());
    private static final Set<Family> ABSORBENT =
            Set.of(Family.LIMESTONE, Family.TRAVERTINE, Family.SANDSTONE, Family.TUFF);
    private static final Set<Topic<?>> FOLLOWS_A_CUT = Set.of(Topics.DENSIFIER, Topics.SEALER);

    @Override
    public List<Violation> violations(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation known = respondent.recommend(survey);
        List<LessKnown> lessKnown = new ArrayList<>(Forgetting.oneByOne(survey));
        Collections.shuffle(lessKnown, new Random(seed));
        List<LessKnown> tried = new ArrayList<>(lessKnown.subList(0, Math.min(answers, lessKnown.size())));
        tried.add(Forgetting.everything(survey));
        List<Violation> violations = new ArrayList<>();
        for (LessKnown less : tried) {
            Recommendation unknown = respondent.recommend(less.survey());
            violations.addAll(bolder(known, unknown, less.forgotten()));
        }
        return violations;
    }

    private static boolean contradicted(Recommendation recommendation) {
        return recommendation.impasses().stream().map(Impasse::topic).anyMatch(topic -> topic == Topics.STONE);
    }

    /** Bare with a film on the rag, a bare hone that was read or sheds water, never ground and yet worked or polished, crystallised where acid attacks nothing, historic and yet young, a mosaic of large pieces,
     * read higher than the stone can give. */
    private static boolean contradictory(Recommendation recommendation) {
        FloorSurvey survey = recommendation.survey();
        boolean film = is(survey, SurveyField.COATING, Set.of(Coating.NONE))
                && is(survey, SurveyField.SOLVENT_RAG, Set.of(SolventRag.FILM));
        boolean skin = !is(survey, SurveyField.CEMENT_SURFACE, Set.of(CementSurface.GROUND))
                && survey.answer(SurveyField.CEMENT_SURFACE).isKnown();
        boolean worked = is(
                        survey,
                        SurveyField.LAST_TREATMENT,
                        Set.of(LastTreatment.DIAMOND, LastTreatment.POWDER, LastTreatment.CRYSTALLISER))
                || is(survey, SurveyField.FINISH_NOW, Set.of(Finish.POLISH, Finish.HIGH_GLOSS));
        boolean layer = is(survey, SurveyField.COATING, Set.of(Coating.CRYSTALLISED))
                && recommendation.values(Topics.STONE, Subject.FLOOR).stream()
                        .allMatch(family -> Traits.of(family).acid().equals(Set.of(AcidReaction.NONE)));
        boolean shinyHone = is(survey, SurveyField.COATING, Set.of(Coating.NONE))
                && is(survey, SurveyField.FINISH_NOW, Set.of(Finish.HONE))
                && !survey.readings().isEmpty();
        boolean shedding = is(survey, SurveyField.COATING, Set.of(Coating.NONE))
                && is(survey, SurveyField.FINISH_NOW, Set.of(Finish.HONE))
                && is(survey, SurveyField.WATER_DROP, Set.of(WaterDrop.NOT_DARKENED))
                && !survey.answer(SurveyField.LAST_TREATMENT).isKnown()
                && ABSORBENT.containsAll(recommendation.values(Topics.STONE, Subject.FLOOR));
        boolean largeMosaic = is(survey, SurveyField.FACE, Set.of(Face.MOSAIC))
                && survey.answer(SurveyField.TILE_EDGE)
                        .value()
                        .filter(edge -> edge.compareTo(Length.of(380, Unit.MILLIMETRE)) >= 0)
                        .isPresent();
        return film
                || largeMosaic
                || skin && worked
                || layer
                || shinyHone
                || shedding
                || youngHistoric(recommendation.survey())
                || overCeiling(recommendation);
    }

    /** A floor laid or poured less than 50 years ago and yet historic: were that forgotten, its age would clear it. */
    private static boolean youngHistoric(FloorSurvey survey) {
        return is(survey, SurveyField.HISTORIC, Set.of(Historic.YES))
                && survey.answer(SurveyField.LAID_AGO)
                        .value()
                        .filter(age -> age.compareTo(TimeSpan.of(50, Unit.YEAR)) < 0)
                        .isPresent();
    }

    /** A reading that the stone cannot give. */
    private static boolean overCeiling(Recommendation recommendation) {
        GlossCeiling highest = KnownStone.of(
                        recommendation.survey(), recommendation.values(Topics.STONE, Subject.FLOOR))
                .highestCeiling();
        return recommendation.survey().readings().stream()
                .anyMatch(reading -> GlossCheck.of(reading.gloss(), reading.geometry(), highest, Parameters.standard())
                                .suspicion()
                        == GlossSuspicion.OVER_CEILING);
    }

    /** Twenty years: after 1 January 2005 no asbestos product was marketed in the European Union (European Commission, 1999). */
    private static boolean laidAfterTheBan(FloorSurvey survey) {
        return survey.answer(SurveyField.LAID_AGO)
                .value()
                .filter(age -> age.compareTo(TimeSpan.of(20, Unit.YEAR)) < 0)
                .isPresent();
    }

    private static boolean fibresFound(Recommendation recommendation) {
        return is(recommendation.survey(), SurveyField.LABORATORY, Set.of(LaboratoryResult.FIBRES_FOUND));
    }

    /** Of no kind that may hold fibres, without a green chip, and neither fibrous nor green; a green stone may be hard instead. */
    private static boolean isBeyondSuspicion(Recommendation recommendation) {
        FloorSurvey survey = recommendation.survey();
        boolean plain =
                is(survey, SurveyField.COLOUR, EnumSet.of(StoneColour.PALE, StoneColour.MIXED, StoneColour.DARK));
        boolean hard = is(survey, SurveyField.COLOUR, Set.of(StoneColour.GREEN))
                && is(survey, SurveyField.SCRIBER, Set.of(ScriberTest.NOT_SCRATCHED));
        List<Family> kinds = recommendation.values(Topics.STONE, Subject.FLOOR);
        return (plain || hard)
                && survey.answer(SurveyField.CHIPS).isKnown()
                && !is(survey, SurveyField.CHIPS, Set.of(ChipColour.GREEN))
                && !kinds.isEmpty()
                && kinds.stream().noneMatch(family -> Traits.of(family).fibres().contains(FibreRisk.POSSIBLE));
    }

    private static <T> boolean is(FloorSurvey survey, SurveyField<T> field, Set<T> answers) {
        return survey.answer(field).value().filter(answers::contains).isPresent();
    }

    /** Where the answer to a survey that knows less is bolder than that to the survey that knows more. */
    static List<Violation> bolder(Recommendation known, Recommendation unknown, String forgotten) {
        List<Violation> violations = new ArrayList<>();
        boolean forgotStone = contradicted(known) && !contradicted(unknown);
        boolean forgotSurface = contradictory(known) && !contradictory(unknown);
        boolean forgotLanes = known.survey().isLanesAlone() && !unknown.survey().isLanesAlone();
        boolean forgotLayer = forgotten.equals(SurveyField.HAZARDOUS_LAYER.name()) && laidAfterTheBan(unknown.survey());
        boolean slab = TAKEN_FOR_GRANTED_OF_A_SLAB.contains(forgotten) && neverGround(unknown);
        boolean forgotFibres = fibresFound(known) && !fibresFound(unknown) && isBeyondSuspicion(unknown);
        if (forgotStone || forgotSurface || forgotLanes || forgotLayer || forgotFibres || slab) {
            return violations;
        }
        for (Outcome outcome : unknown.outcomes()) {
            Topic<?> topic = outcome.topic();
            if (!topic.isCautiousFirst()
                    || !(outcome instanceof Decision<?> less)
                    || FOLLOWS_A_CUT.contains(topic) && !comparable(known, unknown)) {
                continue;
            }
            Optional<? extends Decision<?>> more = known.decision(topic, outcome.subject())
                    .filter(decision -> samePlace(known, unknown, decision.subject()));
            if (more.isPresent() && rank(topic, less) > rank(topic, more.get()) && !opensPaste(unknown, topic, less)) {
                violations.add(new Violation(
                        ID,
                        topic.id(),
                        less.subject(),
                        "at most " + more.get().key(),
                        less.key() + " without " + forgotten,
                        known.survey()));
            }
        }
        if (unknown.status() == Status.REFUSED) {
            // Without work there is nothing to warn of but the cause of the refusal.
            return violations;
        }
        Set<Hazard> missing = hazards(known);
        missing.removeAll(hazards(unknown));
        for (Hazard hazard : missing) {
            violations.add(new Violation(
                    ID,
                    Topics.WARNINGS.id(),
                    Subject.FLOOR,
                    "a warning of " + hazard.key(),
                    "none without " + forgotten,
                    known.survey()));
        }
        return violations;
    }

    private static boolean comparable(Recommendation known, Recommendation unknown) {
        return !known.values(Topics.GRIT_PATH, new Subject.OfTrack(TrackKind.OPEN_FIELD))
                        .isEmpty()
                && known.values(Topics.FINISH, Subject.FLOOR).equals(unknown.values(Topics.FINISH, Subject.FLOOR));
    }

    /**
     * A coarse resin start on concrete, and the densifier that follows it, where the survey leaves open whether the
     * cement paste was ever taken off.
     */
    private static boolean opensPaste(Recommendation unknown, Topic<?> topic, Decision<?> less) {
        boolean concrete = unknown.values(Topics.STONE, Subject.FLOOR).equals(List.of(Family.CONCRETE));
        boolean surfaceOpen =
                !unknown.survey().answer(SurveyField.CEMENT_SURFACE).isKnown();
        boolean coarseResin = topic == Topics.FIRST_CUT && less.value() == Cut.COARSE_HONE;
        return concrete && surfaceOpen && (coarseResin || topic == Topics.DENSIFIER);
    }

    private static boolean neverGround(Recommendation recommendation) {
        return recommendation
                .survey()
                .answer(SurveyField.CEMENT_SURFACE)
                .value()
                .filter(surface -> surface != CementSurface.GROUND)
                .isPresent();
    }

    private static int rank(Topic<?> topic, Decision<?> decision) {
        Object value = decision.value();
        return topic.domain().indexOf(value == Verdict.HOLD ? Verdict.REFUSE : value);
    }

    private static boolean samePlace(Recommendation one, Recommendation other, Subject subject) {
        boolean sameMethod =
                one.values(Topics.METAL_METHOD, Subject.FLOOR).equals(other.values(Topics.METAL_METHOD, Subject.FLOOR));
        return !(subject instanceof Subject.OfStep step)
                || sameMethod && place(one, step).equals(place(other, step));
    }

    /** First, second or later, and whether it is the last. */
    private static List<Object> place(Recommendation recommendation, Subject.OfStep step) {
        List<String> path =
                Topics.GRIT_PATH.keys(recommendation.values(Topics.GRIT_PATH, new Subject.OfTrack(step.track())));
        int index = path.indexOf(step.grade());
        return List.of(Math.min(index, 2), index == path.size() - 1);
    }

    private static Set<Hazard> hazards(Recommendation recommendation) {
        Set<Hazard> hazards = new LinkedHashSet<>();
        recommendation.warnings().stream().map(SafetyWarning::hazard).forEach(hazards::add);
        return hazards;
    }
}
