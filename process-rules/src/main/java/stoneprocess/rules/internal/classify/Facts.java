package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.Sign;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.parameter.Scale;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FibreRisk;
import stoneprocess.core.stone.FinishReach;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.MetalBondUse;
import stoneprocess.core.stone.SilicaContent;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.stone.WaterTolerance;
import stoneprocess.core.survey.Access;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Damp;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Heated;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.LoadConfirmed;
import stoneprocess.core.survey.MixedChoice;
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
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Traffic;
import stoneprocess.core.survey.TreatedAgo;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.WetUse;
import stoneprocess.core.survey.WorksKind;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.BudgetClass;
import stoneprocess.rules.feature.BuildUp;
import stoneprocess.rules.feature.Condition;
import stoneprocess.rules.feature.CrewClass;
import stoneprocess.rules.feature.Decided;
import stoneprocess.rules.feature.Equipment;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.FinishGap;
import stoneprocess.rules.feature.FinishMatch;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.Identification;
import stoneprocess.rules.feature.LaneContrast;
import stoneprocess.rules.feature.LoadClass;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.ReopenClass;
import stoneprocess.rules.feature.RepairResult;
import stoneprocess.rules.feature.Site;
import stoneprocess.rules.feature.SizeClass;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StepEnd;
import stoneprocess.rules.feature.StepOrder;
import stoneprocess.rules.feature.StoneFacts;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.feature.SupplyClass;
import stoneprocess.rules.feature.Wishes;
import stoneprocess.rules.internal.review.LogReview;

/**
 * The table of facts: every fact that a rule may read, its classes, and where it comes from. Each line gives exactly
 * one fact in every run.
 */
public final class Facts {
    /** The name by which questions refer to the gloss readings. */
    public static final String READINGS = "readings";

    private static final Map<Class<?>, FactType<?>> TABLE = new LinkedHashMap<>();
    private static final List<FactType<?>> LOG_LINES = LogFacts.lines();
    private static final Set<Class<?>> LOG_TYPES =
            LOG_LINES.stream().map(FactType::type).collect(Collectors.toUnmodifiableSet());
    private static final List<Class<?>> ONE_OF_MANY = List.of(
            Equipment.MachineOnHand.class,
            OnSite.EventStands.class,
            OnSite.BondRun.class,
            OnSite.SignSeen.class,
            OnSite.Suspected.class);
    /** What a fact is read from beside the fields that its line names. */
    private static final Map<String, List<String>> ALSO_READ = Map.of(
            StoneTraits.RemovalBudget.class.getSimpleName(),
            List.of(damage(DamageKind.SCRATCHES), damage(DamageKind.LIPPAGE)),
            StoneTraits.FibreSuspicion.class.getSimpleName(),
            List.of(
                    SurveyField.STONE_NAME.name(),
                    SurveyField.COATING.name(),
                    SurveyField.SOLVENT_RAG.name(),
                    SurveyField.LAST_TREATMENT.name()));

    private static final Map<Class<?>, List<String>> READS = new ConcurrentHashMap<>();
    private static final Map<Class<?>, List<Object>> SPACES = new ConcurrentHashMap<>();

    static {
        add(new FactType<>(
                StoneFacts.NamedAs.class,
                Family.class,
                StoneFacts.NamedAs::new,
                Facts::namedAs,
                Optional.empty(),
                List.of(SurveyField.STONE_NAME.name()),
                List.of(),
                true));
        choice(StoneFacts.AcidTest.class, AcidDrop.class, StoneFacts.AcidTest::new, SurveyField.ACID_DROP);
        choice(StoneFacts.ScriberMark.class, ScriberTest.class, StoneFacts.ScriberMark::new, SurveyField.SCRIBER);
        survey(
                StoneFacts.WaterTest.class,
                WaterDrop.class,
                StoneFacts.WaterTest::new,
                Facts::waterDrop,
                SurveyField.WATER_DROP.name(),
                SurveyField.COATING.name());
        choice(StoneFacts.SolventTest.class, SolventRag.class, StoneFacts.SolventTest::new, SurveyField.SOLVENT_RAG);
        choice(
                StoneFacts.LaboratorySays.class,
                LaboratoryResult.class,
                StoneFacts.LaboratorySays::new,
                SurveyField.LABORATORY);
        choice(StoneFacts.GroundColour.class, StoneColour.class, StoneFacts.GroundColour::new, SurveyField.COLOUR);
        choice(StoneFacts.LaidFace.class, Face.class, StoneFacts.LaidFace::new, SurveyField.FACE);
        choice(StoneFacts.StonesMixed.class, StoneMix.class, StoneFacts.StonesMixed::new, SurveyField.MIX);
        choice(BuildUp.BackedBy.class, Backing.class, BuildUp.BackedBy::new, SurveyField.BACKING);
        choice(BuildUp.LaidOn.class, Bed.class, BuildUp.LaidOn::new, SurveyField.BED);
        choice(BuildUp.FloorHeating.class, Heated.class, BuildUp.FloorHeating::new, SurveyField.HEATED);
        choice(BuildUp.TapSound.class, Sounding.class, BuildUp.TapSound::new, SurveyField.SOUNDING);
        choice(BuildUp.LayerBelow.class, HazardousLayer.class, BuildUp.LayerBelow::new, SurveyField.HAZARDOUS_LAYER);
        choice(BuildUp.JointState.class, Joints.class, BuildUp.JointState::new, SurveyField.JOINTS);
        survey(
                BuildUp.Moisture.class,
                Damp.class,
                BuildUp.Moisture::new,
                Facts::damp,
                SurveyField.MOISTURE.name(),
                SurveyField.DRY_REFERENCE.name());
        choice(Condition.Coated.class, Coating.class, Condition.Coated::new, SurveyField.COATING);
        choice(Condition.PresentFinish.class, Finish.class, Condition.PresentFinish::new, SurveyField.FINISH_NOW);
        choice(
                Condition.LastTreated.class,
                LastTreatment.class,
                Condition.LastTreated::new,
                SurveyField.LAST_TREATMENT);
        choice(
                Condition.LastTreatedAgo.class,
                TreatedAgo.class,
                Condition.LastTreatedAgo::new,
                SurveyField.TREATED_AGO);
        choice(
                Condition.CleaningTried.class,
                CleaningTrial.class,
                Condition.CleaningTried::new,
                SurveyField.CLEANING_TRIAL);
        survey(
                Condition.Scratches.class,
                ScratchClass.class,
                Condition.Scratches::new,
                situation -> field(situation, DamageKind.SCRATCHES).governing(ScratchClass.class),
                damage(DamageKind.SCRATCHES));
        survey(
                Condition.EdgeScratches.class,
                ScratchClass.class,
                Condition.EdgeScratches::new,
                situation -> edges(situation, DamageKind.SCRATCHES)
                        .map(edges -> edges.governing(ScratchClass.class))
                        .orElseGet(() -> notApart(situation, ScratchClass.class)),
                damage(DamageKind.SCRATCHES));
        survey(
                Condition.LocalScratches.class,
                ScratchClass.class,
                Condition.LocalScratches::new,
                situation -> local(situation, DamageKind.SCRATCHES, ScratchClass.class),
                damage(DamageKind.SCRATCHES));
        survey(
                Condition.Wear.class,
                WearClass.class,
                Condition.Wear::new,
                situation -> spread(situation, DamageKind.WEAR).governing(WearClass.class),
                damage(DamageKind.WEAR));
        survey(
                Condition.Etches.class,
                EtchClass.class,
                Condition.Etches::new,
                situation -> field(situation, DamageKind.ETCHES).governing(EtchClass.class),
                damage(DamageKind.ETCHES));
        survey(
                Condition.EdgeEtches.class,
                EtchClass.class,
                Condition.EdgeEtches::new,
                situation -> edges(situation, DamageKind.ETCHES)
                        .map(edges -> edges.governing(EtchClass.class))
                        .orElseGet(() -> notApart(situation, EtchClass.class)),
                damage(DamageKind.ETCHES));
        survey(
                Condition.LocalEtches.class,
                EtchClass.class,
                Condition.LocalEtches::new,
                situation -> local(situation, DamageKind.ETCHES, EtchClass.class),
                damage(DamageKind.ETCHES));
        survey(
                Condition.Lippage.class,
                LippageClass.class,
                Condition.Lippage::new,
                situation -> spread(situation, DamageKind.LIPPAGE).governing(LippageClass.class),
                damage(DamageKind.LIPPAGE));
        survey(
                Condition.LocalLippage.class,
                LippageClass.class,
                Condition.LocalLippage::new,
                situation -> spread(situation, DamageKind.LIPPAGE).local(LippageClass.class),
                damage(DamageKind.LIPPAGE));
        survey(
                Condition.Waviness.class,
                WavinessClass.class,
                Condition.Waviness::new,
                situation -> spread(situation, DamageKind.WAVINESS).governing(WavinessClass.class),
                damage(DamageKind.WAVINESS));
        survey(
                Condition.Cracks.class,
                Presence.class,
                Condition.Cracks::new,
                situation -> spread(situation, DamageKind.CRACKS).anywhere(Presence.class),
                damage(DamageKind.CRACKS));
        survey(
                Condition.OilStains.class,
                Presence.class,
                Condition.OilStains::new,
                situation -> spread(situation, DamageKind.OIL_STAINS).anywhere(Presence.class),
                damage(DamageKind.OIL_STAINS));
        survey(
                Condition.OrganicStains.class,
                Presence.class,
                Condition.OrganicStains::new,
                situation -> spread(situation, DamageKind.ORGANIC_STAINS).anywhere(Presence.class),
                damage(DamageKind.ORGANIC_STAINS));
        survey(
                Condition.RustStains.class,
                Presence.class,
                Condition.RustStains::new,
                situation -> spread(situation, DamageKind.RUST_STAINS).anywhere(Presence.class),
                damage(DamageKind.RUST_STAINS));
        survey(
                Condition.Salts.class,
                Presence.class,
                Condition.Salts::new,
                situation -> spread(situation, DamageKind.SALTS).anywhere(Presence.class),
                damage(DamageKind.SALTS));
        survey(
                Condition.Flaking.class,
                Presence.class,
                Condition.Flaking::new,
                situation -> spread(situation, DamageKind.FLAKING).anywhere(Presence.class),
                damage(DamageKind.FLAKING));
        survey(
                Condition.Lanes.class,
                LaneContrast.class,
                Condition.Lanes::new,
                Facts::lanes,
                damage(DamageKind.SCRATCHES),
                damage(DamageKind.ETCHES));
        survey(
                Condition.GlossRead.class,
                Finish.class,
                Condition.GlossRead::new,
                situation -> glossRead(situation, Comparator.naturalOrder()),
                READINGS);
        survey(
                Condition.StatedFinish.class,
                FinishMatch.class,
                Condition.StatedFinish::new,
                Facts::statedFinish,
                READINGS,
                SurveyField.FINISH_NOW.name());
        survey(
                Site.FloorSize.class,
                SizeClass.class,
                Site.FloorSize::new,
                situation -> scaled(situation, "floor-size", SizeClass.class, SurveyField.AREA),
                SurveyField.AREA.name());
        choice(Site.Place.class, Setting.class, Site.Place::new, SurveyField.SETTING);
        choice(Site.PeopleAbout.class, Occupied.class, Site.PeopleAbout::new, SurveyField.OCCUPIED);
        choice(Site.FloorDrain.class, Presence.class, Site.FloorDrain::new, SurveyField.DRAIN);
        choice(Site.TapWater.class, Presence.class, Site.TapWater::new, SurveyField.WATER_SUPPLY);
        choice(Site.Slopes.class, Slope.class, Site.Slopes::new, SurveyField.SLOPE);
        choice(Site.UsedWet.class, WetUse.class, Site.UsedWet::new, SurveyField.WET_USE);
        choice(Site.Reached.class, Access.class, Site.Reached::new, SurveyField.ACCESS);
        choice(Site.CarriedBy.class, Structure.class, Site.CarriedBy::new, SurveyField.STRUCTURE);
        survey(
                Site.FloorCarries.class,
                LoadClass.class,
                Site.FloorCarries::new,
                situation -> scaled(situation, "floor-load", LoadClass.class, SurveyField.FLOOR_LOAD),
                SurveyField.FLOOR_LOAD.name());
        choice(Site.LoadConfirmedBy.class, LoadConfirmed.class, Site.LoadConfirmedBy::new, SurveyField.LOAD_CONFIRMED);
        choice(Site.HistoricFabric.class, Historic.class, Site.HistoricFabric::new, SurveyField.HISTORIC);
        choice(Site.Works.class, WorksKind.class, Site.Works::new, SurveyField.WORKS);
        survey(
                Site.CrewSize.class,
                CrewClass.class,
                Site.CrewSize::new,
                situation -> scaled(situation, "crew", CrewClass.class, SurveyField.CREW),
                SurveyField.CREW.name());
        survey(
                Site.Reopening.class,
                ReopenClass.class,
                Site.Reopening::new,
                situation -> scaled(situation, "reopening", ReopenClass.class, SurveyField.REOPENS_AFTER),
                SurveyField.REOPENS_AFTER.name());
        choice(Wishes.StoneChosen.class, MixedChoice.class, Wishes.StoneChosen::new, SurveyField.MIXED_CHOICE);
        survey(Site.Treads.class, Presence.class, Site.Treads::new, Facts::treads, damage(DamageKind.WEAR));
        choice(Site.OfficerConsent.class, Presence.class, Site.OfficerConsent::new, SurveyField.CONSENT);
        choice(Site.FootTraffic.class, Traffic.class, Site.FootTraffic::new, SurveyField.TRAFFIC);
        survey(
                Site.PowerSupply.class,
                SupplyClass.class,
                Site.PowerSupply::new,
                Facts::supply,
                SurveyField.VOLTS.name(),
                SurveyField.AMPS.name());
        choice(Equipment.ExtractorOnHand.class, Extractor.class, Equipment.ExtractorOnHand::new, SurveyField.EXTRACTOR);
        choice(Equipment.WetVacuumOnHand.class, Presence.class, Equipment.WetVacuumOnHand::new, SurveyField.WET_VACUUM);
        survey(
                Equipment.GradesOnHand.class,
                Presence.class,
                Equipment.GradesOnHand::new,
                situation -> situation
                        .survey()
                        .answer(SurveyField.GRADES)
                        .value()
                        .<Set<Presence>>map(grades -> EnumSet.of(grades.isEmpty() ? Presence.NONE : Presence.PRESENT))
                        .orElseGet(() -> EnumSet.allOf(Presence.class)),
                SurveyField.GRADES.name());
        choice(Wishes.OwnerGoal.class, Goal.class, Wishes.OwnerGoal::new, SurveyField.GOAL);
        survey(
                Wishes.WantedFinish.class,
                Finish.class,
                Wishes.WantedFinish::new,
                Facts::wanted,
                SurveyField.GOAL.name(),
                SurveyField.GOAL_GLOSS.name(),
                SurveyField.FINISH_NOW.name());
        survey(
                Wishes.FinishToGo.class,
                FinishGap.class,
                Wishes.FinishToGo::new,
                Facts::gap,
                SurveyField.GOAL.name(),
                SurveyField.GOAL_GLOSS.name(),
                SurveyField.FINISH_NOW.name());

        add(new FactType<>(
                StoneTraits.StoneFamily.class,
                Family.class,
                StoneTraits.StoneFamily::new,
                Facts::families,
                Optional.of(Stage.SURVEY),
                List.of(),
                List.of(Topics.STONE),
                false));
        add(new FactType<>(
                StoneTraits.Identified.class,
                Identification.class,
                StoneTraits.Identified::new,
                Facts::identified,
                Optional.of(Stage.SURVEY),
                List.of(
                        SurveyField.STONE_NAME.name(),
                        SurveyField.IDENTIFIED_BY.name(),
                        SurveyField.ACID_DROP.name(),
                        SurveyField.SCRIBER.name(),
                        SurveyField.COATING.name(),
                        SurveyField.SOLVENT_RAG.name(),
                        SurveyField.LAST_TREATMENT.name()),
                List.of(Topics.STONE),
                false));
        trait(StoneTraits.AcidResponse.class, AcidReaction.class, StoneTraits.AcidResponse::new, Traits::acid);
        add(new FactType<>(
                StoneTraits.CuttingHardness.class,
                Hardness.class,
                StoneTraits.CuttingHardness::new,
                Facts::hardness,
                Optional.of(Stage.SURVEY),
                List.of(SurveyField.SCRIBER.name()),
                List.of(Topics.STONE),
                false));
        add(new FactType<>(
                StoneTraits.HighestFinish.class,
                FinishReach.class,
                StoneTraits.HighestFinish::new,
                Facts::finishReach,
                Optional.of(Stage.SURVEY),
                List.of(SurveyField.WATER_DROP.name(), SurveyField.COATING.name(), SurveyField.FINISH_NOW.name()),
                List.of(Topics.STONE),
                false));
        trait(StoneTraits.WaterStanding.class, WaterTolerance.class, StoneTraits.WaterStanding::new, Traits::water);
        add(new FactType<>(
                StoneTraits.FibreSuspicion.class,
                FibreRisk.class,
                StoneTraits.FibreSuspicion::new,
                Facts::fibres,
                Optional.of(Stage.SURVEY),
                List.of(
                        SurveyField.COLOUR.name(),
                        SurveyField.LABORATORY.name(),
                        SurveyField.IDENTIFIED_BY.name(),
                        SurveyField.ACID_DROP.name(),
                        SurveyField.SCRIBER.name()),
                List.of(Topics.STONE),
                false));
        trait(StoneTraits.SilicaShare.class, SilicaContent.class, StoneTraits.SilicaShare::new, Traits::silica);
        trait(StoneTraits.BoundBy.class, Body.class, StoneTraits.BoundBy::new, Traits::body);
        trait(StoneTraits.MetalTolerance.class, MetalBondUse.class, StoneTraits.MetalTolerance::new, Traits::metal);
        add(new FactType<>(
                StoneTraits.RemovalBudget.class,
                BudgetClass.class,
                StoneTraits.RemovalBudget::new,
                Facts::budget,
                Optional.of(Stage.SURVEY),
                List.of(SurveyField.THICKNESS.name()),
                List.of(Topics.STONE),
                false));

        add(new FactType<>(
                Decided.Permission.class,
                Verdict.class,
                Decided.Permission::new,
                Situation::permission,
                Optional.of(Stage.GO_NO_GO),
                List.of(),
                List.of(Topics.VERDICT),
                false));
        decided(Decided.FinishDecided.class, Finish.class, Decided.FinishDecided::new, Topics.FINISH);
        add(new FactType<>(
                Decided.MetalBond.class,
                MetalBondUse.class,
                Decided.MetalBond::new,
                Facts::metalBond,
                Optional.of(Stage.GO_NO_GO),
                List.of(),
                List.of(Topics.BONDS),
                false));
        add(new FactType<>(
                Decided.StartCut.class,
                Cut.class,
                Decided.StartCut::new,
                Facts::coarsestCut,
                Optional.of(Stage.FIRST_CUT),
                List.of(),
                List.of(Topics.FIRST_CUT),
                false));
        add(new FactType<>(
                Decided.LocalMarks.class,
                RepairResult.class,
                Decided.LocalMarks::new,
                Facts::localMarks,
                Optional.of(Stage.FIRST_CUT),
                List.of(),
                List.of(Topics.FIRST_CUT),
                false));
        decided(Decided.Sealing.class, Sealer.class, Decided.Sealing::new, Topics.SEALER);
        LOG_LINES.forEach(Facts::add);
    }

    private Facts() {}

    /** The facts that a stage adds once its topics are closed; with no stage, those of the survey and the job log. */
    public static List<Object> after(Optional<Stage> stage, Situation situation) {
        return after(stage, situation, type -> true);
    }

    /** The same, without the types that nobody reads; machines and what a log tells are there in any case. */
    public static List<Object> after(Optional<Stage> stage, Situation situation, Predicate<Class<?>> read) {
        List<Object> facts = new ArrayList<>();
        for (FactType<?> line : TABLE.values()) {
            if (line.after().equals(stage) && read.test(line.type()) && isOf(line, situation)) {
                facts.add(line.fact(situation));
            }
        }
        if (stage.isEmpty()) {
            for (MachineClass machine : MachineClass.values()) {
                facts.add(new Equipment.MachineOnHand(machine, onHand(situation, machine)));
            }
            situation.log().ifPresent(log -> facts.addAll(LogFacts.read(log)));
        }
        if (stage.equals(Optional.of(Stage.SIGNS)) && situation.log().isPresent()) {
            facts.addAll(LogFacts.suspected(situation));
        }
        return facts;
    }

    /** How a cause stands in the decision about the causes. */
    public static Standing standing(Decision causes, Fault fault) {
        return LogFacts.standing(causes, fault);
    }

    /** A log is read where there is one; how far the job has come is no matter of a diagnosis. */
    private static boolean isOf(FactType<?> line, Situation situation) {
        if (line.type() == OnSite.JobState.class) {
            return situation.log().filter(LogReview::followsUp).isPresent();
        }
        return situation.log().isPresent() || !LOG_TYPES.contains(line.type());
    }

    /**
     * Refuses numbers whose scales do not rise, before a survey meets them.
     *
     * @throws InvalidInputException naming the first limit that does not rise
     */
    public static void requireScales(Parameters parameters) {
        Scale.of("floor-size", SizeClass.class, parameters);
        Scale.of("floor-load", LoadClass.class, parameters);
        Scale.of("crew", CrewClass.class, parameters);
        Scale.of("reopening", ReopenClass.class, parameters);
        Scale.of("removal-budget", BudgetClass.class, parameters);
        Scale.of("supply", SupplyClass.class, parameters);
        Scale.of("finish", Finish.class, parameters);
        Damage.requireScales(parameters);
    }

    /** The steps of a track as facts. */
    public static List<Step> steps(TrackKind track, List<AbrasiveGrade> path, WorkMethod metal) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            AbrasiveGrade grade = path.get(i);
            steps.add(new Step(
                    new Subject.OfStep(track, grade.key()),
                    track,
                    grade.bond(),
                    gritClass(grade.number()),
                    i == 0 ? StepOrder.FIRST : i == 1 ? StepOrder.SECOND : StepOrder.LATER,
                    i == path.size() - 1 ? StepEnd.LAST : StepEnd.NOT_LAST,
                    grade.bond() == Bond.METAL ? metal : WorkMethod.WET));
        }
        return steps;
    }

    static GritClass gritClass(int number) {
        if (number < 100) {
            return GritClass.COARSE;
        }
        if (number < 400) {
            return GritClass.MEDIUM;
        }
        if (number <= 800) {
            return GritClass.FINE;
        }
        return number < 2000 ? GritClass.POLISHING : GritClass.FINEST;
    }

    /** All types of facts, in the order of the table. */
    public static List<Class<?>> types() {
        List<Class<?>> types = new ArrayList<>(TABLE.keySet());
        types.addAll(ONE_OF_MANY);
        types.add(Step.class);
        return types;
    }

    /** Every fact of a type that differs in what a rule can see of it. */
    public static List<Object> space(Class<?> type) {
        return SPACES.computeIfAbsent(type, Facts::makeSpace);
    }

    private static List<Object> makeSpace(Class<?> type) {
        List<Object> space = new ArrayList<>();
        if (type == Equipment.MachineOnHand.class) {
            each(MachineClass.values(), Presence.class, Equipment.MachineOnHand::new, space);
        } else if (type == OnSite.EventStands.class) {
            each(EventKind.values(), Presence.class, OnSite.EventStands::new, space);
        } else if (type == OnSite.BondRun.class) {
            each(Bond.values(), Presence.class, OnSite.BondRun::new, space);
        } else if (type == OnSite.SignSeen.class) {
            each(Sign.values(), Presence.class, OnSite.SignSeen::new, space);
        } else if (type == OnSite.Suspected.class) {
            each(Fault.values(), Standing.class, OnSite.Suspected::new, space);
        } else if (type == Step.class) {
            for (TrackKind track : TrackKind.values()) {
                for (Bond bond : Bond.values()) {
                    for (GritClass grit : GritClass.values()) {
                        for (StepOrder order : StepOrder.values()) {
                            for (StepEnd end : StepEnd.values()) {
                                for (WorkMethod method : WorkMethod.values()) {
                                    String grade = String.join("-", Term.keys(List.of(bond, grit, order, end, method)));
                                    Subject.OfStep subject = new Subject.OfStep(track, grade);
                                    space.add(new Step(subject, track, bond, grit, order, end, method));
                                }
                            }
                        }
                    }
                }
            }
        } else {
            space.addAll(line(type).space());
        }
        return List.copyOf(space);
    }

    private static <K, E extends Enum<E>> void each(
            K[] constants, Class<E> classes, BiFunction<K, Set<E>, Object> make, List<Object> space) {
        for (K constant : constants) {
            for (E one : classes.getEnumConstants()) {
                space.add(make.apply(constant, EnumSet.of(one)));
            }
            space.add(make.apply(constant, EnumSet.allOf(classes)));
        }
    }

    /** What a decision record keeps of a matched fact. */
    public static MatchedFact matched(Object fact) {
        if (fact instanceof Step step) {
            return new MatchedFact(
                    "Step", List.of(step.subject().key()), true, List.of(), List.of(Topics.GRIT_PATH.id()));
        }
        Feature<?> feature = (Feature<?>) fact;
        if (fact instanceof OneOfMany<?> one) {
            return new MatchedFact(
                    LogFacts.name(fact.getClass(), one.which()),
                    Term.keys(feature.mayBe()),
                    feature.mayBe().size() == 1,
                    fields(fact.getClass()),
                    topics(fact.getClass()).stream().map(Topic::id).toList());
        }
        FactType<?> line = line(fact.getClass());
        return new MatchedFact(
                fact.getClass().getSimpleName(),
                Term.keys(feature.mayBe()),
                line.known(feature),
                line.fields(),
                line.topicIds());
    }

    /** Names of the survey fields or damage kinds that a type of fact is read from. */
    public static List<String> fields(Class<?> type) {
        if (type == Equipment.MachineOnHand.class) {
            return List.of(SurveyField.MACHINES.name());
        }
        if (type == OnSite.EventStands.class) {
            return List.of("event");
        }
        if (type == OnSite.BondRun.class) {
            return List.of("work");
        }
        if (type == OnSite.SignSeen.class) {
            return List.of("look.signs");
        }
        return type == Step.class || type == OnSite.Suspected.class
                ? List.of()
                : line(type).fields();
    }

    /**
     * Names of all survey fields and damage kinds that can make a difference to a type of fact, those behind its topics
     * left out.
     */
    public static List<String> reads(Class<?> type) {
        return READS.computeIfAbsent(
                type,
                key -> Stream.concat(
                                fields(key).stream(), ALSO_READ.getOrDefault(key.getSimpleName(), List.of()).stream())
                        .toList());
    }

    /** The same of a matched fact. */
    public static List<String> reads(MatchedFact fact) {
        return Stream.concat(fact.fields().stream(), ALSO_READ.getOrDefault(fact.name(), List.of()).stream())
                .toList();
    }

    /**
     * The facts of a survey that differs from another in some answers only.
     *
     * @param before the facts of the other survey, as {@link #after} gives them without a stage
     * @param changed names of the fields and damage kinds whose answers differ
     * @param situation the survey
     */
    public static List<Object> again(List<Object> before, Set<String> changed, Situation situation) {
        return before.stream()
                .map(fact -> reads(fact.getClass()).stream().noneMatch(changed::contains)
                        ? fact
                        : fact instanceof Equipment.MachineOnHand machine
                                ? new Equipment.MachineOnHand(machine.machine(), onHand(situation, machine.machine()))
                                : line(fact.getClass()).fact(situation))
                .toList();
    }

    /** Topics that a type of fact is concluded from. */
    public static List<Topic<?>> topics(Class<?> type) {
        if (type == Step.class) {
            return List.of(Topics.GRIT_PATH);
        }
        if (type == OnSite.Suspected.class) {
            return List.of(Topics.CAUSES);
        }
        return ONE_OF_MANY.contains(type) ? List.of() : line(type).topics();
    }

    /** The name by which questions refer to a kind of damage. */
    public static String damage(DamageKind kind) {
        return "damages." + kind.key();
    }

    private static FactType<?> line(Class<?> type) {
        FactType<?> line = TABLE.get(type);
        if (line == null) {
            throw new InvalidInputException("fact", type.getName(), "a type of the table of facts");
        }
        return line;
    }

    private static void add(FactType<?> line) {
        TABLE.put(line.type(), line);
    }

    private static <E extends Enum<E> & Term> void choice(
            Class<?> type, Class<E> classes, Function<Set<E>, Feature<E>> make, SurveyField<E> field) {
        survey(type, classes, make, situation -> situation.answer(field, classes), field.name());
    }

    private static <E extends Enum<E> & Term> void survey(
            Class<?> type,
            Class<E> classes,
            Function<Set<E>, Feature<E>> make,
            Function<Situation, Set<E>> classify,
            String... fields) {
        add(new FactType<>(type, classes, make, classify, Optional.empty(), List.of(fields), List.of(), false));
    }

    private static <E extends Enum<E> & Term> void trait(
            Class<?> type, Class<E> classes, Function<Set<E>, Feature<E>> make, Function<Traits, Set<E>> trait) {
        add(new FactType<>(
                type,
                classes,
                make,
                situation -> Traits.across(families(situation), classes, trait),
                Optional.of(Stage.SURVEY),
                List.of(),
                List.of(Topics.STONE),
                false));
    }

    private static <E extends Enum<E> & Term> void decided(
            Class<?> type, Class<E> classes, Function<Set<E>, Feature<E>> make, Topic<E> topic) {
        add(new FactType<>(
                type,
                classes,
                make,
                situation -> situation.decided(topic, classes),
                Optional.of(topic.stage()),
                List.of(),
                List.of(topic),
                false));
    }

    /** The class of a measured answer, or all classes when it is unknown. */
    private static <E extends Enum<E> & Term> Set<E> scaled(
            Situation situation, String scale, Class<E> classes, SurveyField<? extends Quantity> field) {
        return situation
                .survey()
                .answer(field)
                .value()
                .<Set<E>>map(measured -> EnumSet.of(
                        Scale.of(scale, classes, situation.parameters()).classify(measured)))
                .orElseGet(() -> EnumSet.allOf(classes));
    }

    private static Set<Family> namedAs(Situation situation) {
        return situation
                .survey()
                .answer(SurveyField.STONE_NAME)
                .value()
                .map(name -> StoneCatalogue.standard()
                        .get(name, SurveyField.STONE_NAME.name())
                        .families())
                .orElseGet(() -> EnumSet.allOf(Family.class));
    }

    /** Excluded only because of something that nobody knows is the same as not knowing. */
    private static Set<MetalBondUse> metalBond(Situation situation) {
        List<Reason> exclusions = situation.decision(Topics.BONDS, Subject.FLOOR).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> reason.kind() == ContributionKind.VETO)
                .filter(reason -> reason.values().contains(Bond.METAL.key()))
                .toList();
        if (exclusions.isEmpty()) {
            return EnumSet.of(MetalBondUse.ALLOWED);
        }
        return exclusions.stream().anyMatch(Reason::certain)
                ? EnumSet.of(MetalBondUse.EXCLUDED)
                : EnumSet.allOf(MetalBondUse.class);
    }

    private static Set<Cut> coarsestCut(Situation situation) {
        return Stream.of(Subject.OPEN_FIELD, Subject.EDGE, Subject.LOCAL_REPAIR)
                .flatMap(track -> situation.values(Topics.FIRST_CUT, track).stream())
                .max(Comparator.naturalOrder())
                .<Set<Cut>>map(EnumSet::of)
                .orElseGet(() -> EnumSet.allOf(Cut.class));
    }

    /** A wish for a coarser cut than the one decided was excluded. */
    private static Set<RepairResult> localMarks(Situation situation) {
        Optional<Decision> local = situation.decision(Topics.FIRST_CUT, Subject.LOCAL_REPAIR);
        Cut cut = situation.values(Topics.FIRST_CUT, Subject.LOCAL_REPAIR).stream()
                .findFirst()
                .orElse(Cut.NONE);
        if (cut == Cut.NONE) {
            return EnumSet.of(RepairResult.NONE);
        }
        boolean softens = local.stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> reason.kind() == ContributionKind.WISH)
                .anyMatch(reason -> !reason.values().get(0).equals(cut.key()));
        return EnumSet.of(softens ? RepairResult.SOFTENS : RepairResult.CLEARS);
    }

    private static Set<Family> families(Situation situation) {
        return situation.decided(Topics.STONE, Family.class);
    }

    /**
     * A green stone that may be serpentine is suspect, however little else is known, and one with fibres found is too. A
     * green natural stone is not believed on its name or on one test.
     */
    private static Set<FibreRisk> fibres(Situation situation) {
        Set<FibreRisk> risks = Traits.across(families(situation), FibreRisk.class, Traits::fibres);
        boolean green = situation.survey().answer(SurveyField.COLOUR).value().equals(Optional.of(StoneColour.GREEN));
        boolean found = situation
                .survey()
                .answer(SurveyField.LABORATORY)
                .value()
                .equals(Optional.of(LaboratoryResult.FIBRES_FOUND));
        boolean known = identified(situation).contains(Identification.TWO_TESTS);
        boolean natural = families(situation).stream()
                .anyMatch(family ->
                        family == Family.BRECCIA || Traits.of(family).body().contains(Body.STONE));
        boolean suspect = (green || found) && risks.contains(FibreRisk.POSSIBLE) || green && natural && !known;
        return suspect ? EnumSet.of(FibreRisk.POSSIBLE) : risks;
    }

    private static Set<Identification> identified(Situation situation) {
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

    /** Of stone that is dense or porous by kind, the drop of water tells which, and so does a shine that is there. */
    private static Set<FinishReach> finishReach(Situation situation) {
        Set<WaterDrop> drop = waterDrop(situation);
        Set<Finish> now = situation.answer(SurveyField.FINISH_NOW, Finish.class);
        boolean mayBeDense = drop.contains(WaterDrop.NOT_DARKENED)
                || now.stream().anyMatch(finish -> finish.compareTo(Finish.SATIN) > 0);
        boolean mayBePorous = drop.stream().anyMatch(seen -> seen != WaterDrop.NOT_DARKENED)
                && now.stream().anyMatch(finish -> finish.compareTo(Finish.SATIN) <= 0);
        EnumSet<FinishReach> reaches = EnumSet.noneOf(FinishReach.class);
        for (Family family : families(situation)) {
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

    /** Of a kind that may be hard or not, the scriber tells; not of sandstone, whose hard grains sit in a weak binder. */
    static Set<Hardness> hardness(Situation situation) {
        Set<Hardness> byKind = Traits.across(families(situation), Hardness.class, Traits::hardness);
        Optional<ScriberTest> mark =
                situation.survey().answer(SurveyField.SCRIBER).value();
        boolean silent =
                mark.isEmpty() || byKind.size() == 1 || families(situation).contains(Family.SANDSTONE);
        if (silent) {
            return byKind;
        }
        Set<Hardness> told = EnumSet.copyOf(byKind);
        told.removeIf(hardness -> (hardness == Hardness.HARD) == (mark.get() == ScriberTest.SCRATCHED));
        return told.isEmpty() ? byKind : told;
    }

    /** A drop that does not darken the face tells something only when nothing keeps it out. */
    private static Set<WaterDrop> waterDrop(Situation situation) {
        Set<WaterDrop> seen = situation.answer(SurveyField.WATER_DROP, WaterDrop.class);
        boolean keptOut =
                !situation.survey().answer(SurveyField.COATING).value().equals(Optional.of(Coating.NONE));
        return keptOut && seen.contains(WaterDrop.NOT_DARKENED) ? EnumSet.allOf(WaterDrop.class) : seen;
    }

    /** The most stone that may be taken off in the life of the floor; the least of what it may be. */
    static Optional<Length> mostRemoval(Situation situation) {
        return situation.survey().answer(SurveyField.THICKNESS).value().map(thickness -> {
            double least = Traits.across(families(situation), Body.class, Traits::body).stream()
                    .mapToDouble(body -> removalShare(body, situation.parameters()))
                    .min()
                    .orElseThrow();
            return new Length(thickness.millimetres() * least);
        });
    }

    private static double removalShare(Body body, Parameters parameters) {
        String share = body == Body.CEMENT ? "removal-share.topping" : "removal-share.stone";
        return parameters.get(share, Share.class).percent() / 100;
    }

    private static Set<BudgetClass> budget(Situation situation) {
        Optional<Length> thickness =
                situation.survey().answer(SurveyField.THICKNESS).value();
        if (thickness.isEmpty()) {
            return EnumSet.allOf(BudgetClass.class);
        }
        Scale<BudgetClass> scale = Scale.of("removal-budget", BudgetClass.class, situation.parameters());
        EnumSet<BudgetClass> budgets = EnumSet.noneOf(BudgetClass.class);
        for (Body body : Traits.across(families(situation), Body.class, Traits::body)) {
            Length most = new Length(thickness.get().millimetres() * removalShare(body, situation.parameters()));
            budgets.add(exceeds(situation, most) ? BudgetClass.SMALL : scale.classify(most));
        }
        return budgets;
    }

    /** True when grinding the measured damage out would take more than may be taken off. */
    private static boolean exceeds(Situation situation, Length most) {
        return Stream.of(DamageKind.SCRATCHES, DamageKind.LIPPAGE)
                .flatMap(kind -> spread(situation, kind).governingDepth().stream())
                .anyMatch(depth -> depth.compareTo(most) > 0);
    }

    private static Set<Damp> damp(Situation situation) {
        Optional<Share> moisture =
                situation.survey().answer(SurveyField.MOISTURE).value();
        Optional<Share> reference =
                situation.survey().answer(SurveyField.DRY_REFERENCE).value();
        if (moisture.isEmpty() || reference.isEmpty()) {
            return EnumSet.allOf(Damp.class);
        }
        Share tolerance = situation.parameters().get("moisture.above-reference", Share.class);
        Share limit = new Share(reference.get().percent() + tolerance.percent());
        boolean above = moisture.get().compareTo(limit) > 0;
        return EnumSet.of(above ? Damp.ABOVE_REFERENCE : Damp.AS_DRY_REFERENCE);
    }

    private static Set<SupplyClass> supply(Situation situation) {
        FloorSurvey survey = situation.survey();
        if (!survey.answer(SurveyField.VOLTS).isKnown()
                || !survey.answer(SurveyField.AMPS).isKnown()) {
            return EnumSet.allOf(SupplyClass.class);
        }
        double volts = survey.answer(SurveyField.VOLTS).value().orElseThrow().volts();
        double amperes = survey.answer(SurveyField.AMPS).value().orElseThrow().amperes();
        double part =
                situation.parameters().get("supply.continuous", Share.class).percent() / 100;
        Power power = new Power(volts * amperes * part / 1000);
        return EnumSet.of(
                Scale.of("supply", SupplyClass.class, situation.parameters()).classify(power));
    }

    /** A gloss counts where a sample is to be matched; while the goal is unknown it could be any other. */
    private static Set<Finish> wanted(Situation situation) {
        FloorSurvey survey = situation.survey();
        Optional<Goal> goal = survey.answer(SurveyField.GOAL).value();
        if (goal.isEmpty()) {
            return EnumSet.allOf(Finish.class);
        }
        if (goal.get() == Goal.JUST_BETTER) {
            return situation.answer(SurveyField.FINISH_NOW, Finish.class);
        }
        if (goal.get() != Goal.MATCH_SAMPLE) {
            return EnumSet.of(Finish.valueOf(goal.get().name()));
        }
        return survey.answer(SurveyField.GOAL_GLOSS)
                .value()
                .<Set<Finish>>map(gloss -> EnumSet.of(
                        Scale.of("finish", Finish.class, situation.parameters()).classify(gloss)))
                .orElseGet(() -> EnumSet.allOf(Finish.class));
    }

    private static Set<FinishGap> gap(Situation situation) {
        if (situation.survey().answer(SurveyField.GOAL).value().equals(Optional.of(Goal.JUST_BETTER))) {
            return EnumSet.of(FinishGap.MET);
        }
        Set<Finish> wanted = wanted(situation);
        Set<Finish> now = situation.answer(SurveyField.FINISH_NOW, Finish.class);
        EnumSet<FinishGap> gaps = EnumSet.noneOf(FinishGap.class);
        for (Finish target : wanted) {
            for (Finish present : now) {
                gaps.add(target == present ? FinishGap.MET : FinishGap.NOT_MET);
            }
        }
        return gaps;
    }

    private static Set<Presence> onHand(Situation situation, MachineClass machine) {
        return situation
                .survey()
                .answer(SurveyField.MACHINES)
                .value()
                .<Set<Presence>>map(
                        machines -> EnumSet.of(machines.contains(machine) ? Presence.PRESENT : Presence.NONE))
                .orElseGet(() -> EnumSet.allOf(Presence.class));
    }

    private static DamageSpread spread(Situation situation, DamageKind kind) {
        return DamageSpread.of(situation.survey(), kind, situation.parameters());
    }

    private static DamageSpread field(Situation situation, DamageKind kind) {
        return DamageSpread.ofField(situation.survey(), kind, situation.parameters());
    }

    private static Optional<DamageSpread> edges(Situation situation, DamageKind kind) {
        return DamageSpread.ofEdges(situation.survey(), kind, situation.parameters());
    }

    private static Set<LaneContrast> lanes(Situation situation) {
        Set<LaneContrast> scratches = contrast(situation, DamageKind.SCRATCHES, ScratchClass.class);
        Set<LaneContrast> etches = contrast(situation, DamageKind.ETCHES, EtchClass.class);
        EnumSet<LaneContrast> worse = EnumSet.noneOf(LaneContrast.class);
        for (LaneContrast one : scratches) {
            etches.forEach(other -> worse.add(one.compareTo(other) > 0 ? one : other));
        }
        return worse;
    }

    private static <E extends Enum<E>> Set<LaneContrast> contrast(
            Situation situation, DamageKind kind, Class<E> classes) {
        if (situation.survey().zones().isEmpty()) {
            return EnumSet.allOf(LaneContrast.class);
        }
        Optional<DamageSpread> lanes = DamageSpread.ofLanes(situation.survey(), kind, situation.parameters());
        Optional<DamageSpread> rest = DamageSpread.offLanes(situation.survey(), kind, situation.parameters());
        if (lanes.isEmpty() || rest.isEmpty()) {
            return EnumSet.copyOf(notApart(situation, LaneContrast.class));
        }
        EnumSet<LaneContrast> contrasts = EnumSet.noneOf(LaneContrast.class);
        for (E here : lanes.get().governing(classes)) {
            for (E beside : rest.get().governing(classes)) {
                contrasts.add(here.compareTo(beside) > 0 ? LaneContrast.LANES_WORSE : LaneContrast.EVEN);
            }
        }
        return contrasts;
    }

    /** A part of the floor that was left out may hold stairs. */
    private static Set<Presence> treads(Situation situation) {
        boolean seen = situation.survey().zones().stream().anyMatch(zone -> zone.kind() == ZoneKind.STAIR);
        return seen ? EnumSet.of(Presence.PRESENT) : notApart(situation, Presence.class);
    }

    /** Where nobody surveyed edges apart there is nothing to tell of them, unless a part of the floor was left out. */
    private static <E extends Enum<E>> Set<E> notApart(Situation situation, Class<E> classes) {
        double surveyed = situation.survey().zones().stream()
                .mapToDouble(zone -> zone.share().percent())
                .sum();
        return surveyed > 99.99 ? EnumSet.of(classes.getEnumConstants()[0]) : EnumSet.allOf(classes);
    }

    /** The worse of what is rare in the field and of what is rare along the edges. */
    private static <E extends Enum<E>> Set<E> local(Situation situation, DamageKind kind, Class<E> classes) {
        Set<E> field = field(situation, kind).local(classes);
        Optional<DamageSpread> edges = edges(situation, kind);
        if (edges.isEmpty()) {
            return field;
        }
        EnumSet<E> worse = EnumSet.noneOf(classes);
        for (E there : edges.get().local(classes)) {
            for (E here : field) {
                worse.add(here.compareTo(there) > 0 ? here : there);
            }
        }
        return worse;
    }

    private static Set<FinishMatch> statedFinish(Situation situation) {
        Set<Finish> brightest = glossRead(situation, Comparator.reverseOrder());
        Set<Finish> called = situation.answer(SurveyField.FINISH_NOW, Finish.class);
        EnumSet<FinishMatch> matches = EnumSet.noneOf(FinishMatch.class);
        for (Finish read : brightest) {
            for (Finish name : called) {
                matches.add(read.compareTo(name) < 0 ? FinishMatch.READS_LOWER : FinishMatch.MATCHES);
            }
        }
        return matches;
    }

    /** The class of the first zone in an order, by the mean of its readings at 60 degrees on clean, dry stone. */
    private static Set<Finish> glossRead(Situation situation, Comparator<Double> order) {
        return situation.survey().readings().stream()
                .filter(reading -> reading.geometry() == Geometry.DEG_60 && reading.state() == SurfaceState.CLEAN_DRY)
                .collect(Collectors.groupingBy(
                        GlossReading::zone,
                        Collectors.averagingDouble(reading -> reading.gloss().gloss())))
                .values()
                .stream()
                .min(order)
                .<Set<Finish>>map(mean -> EnumSet.of(
                        Scale.of("finish", Finish.class, situation.parameters()).classify(new Gloss(mean))))
                .orElseGet(() -> EnumSet.allOf(Finish.class));
    }
}
