package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.tool.Powder;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.BuildUp;
import stoneprocess.rules.feature.Condition;
import stoneprocess.rules.feature.Decided;
import stoneprocess.rules.feature.Equipment;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.Site;
import stoneprocess.rules.feature.StoneFacts;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.feature.Wishes;
import stoneprocess.rules.internal.classify.FactLine.Origin;

/** The table of facts: every fact that a rule may read, and where it comes from. */
final class FactTable {
    /** The name by which questions refer to the gloss readings. */
    static final String READINGS = "readings";

    private static final Map<Class<?>, FactLine> LINES = new LinkedHashMap<>();
    private static final Map<Optional<Stage>, List<FactLine>> BY_STAGE;
    private static final Map<String, Set<Class<?>>> READING = new HashMap<>();

    /** Reads the classes of a kind of damage off the floor. */
    private interface Weighing<E extends Enum<E>> {
        Set<E> classes(Situation situation, DamageKind kind, Class<E> classes);
    }

    static {
        FieldFacts.lines().forEach(FactTable::add);
        answers();
        zones();
        stoneTraits();
        decisions();
        LogFacts.lines().forEach(FactTable::add);
        onHand(Equipment.MachineOnHand.class, MachineClass.class, SurveyField.MACHINES);
        onHand(Equipment.PowderOnHand.class, Powder.class, SurveyField.POWDERS);
        add(FactPerConstant.of(
                Decided.PowderUse.class,
                Powder.class,
                DecisionClasses::powderUse,
                Origin.decisions(Topics.PREPARATION, Topics.REPAIRS, Topics.POLISHING_AGENT)));
        LogFacts.linesPerConstant().forEach(FactTable::add);
        add(new StepFacts());
        BY_STAGE = LINES.values().stream()
                .collect(Collectors.groupingBy(line -> line.origin().after()));
        LINES.forEach((type, line) -> line.origin()
                .reads()
                .forEach(name ->
                        READING.computeIfAbsent(name, key -> new HashSet<>()).add(type)));
    }

    private FactTable() {}

    /** What answers of a survey mean that are read together or looked up. */
    private static void answers() {
        add(new SingleFact<>(
                FeatureRecord.of(StoneFacts.NamedAs.class, Set.class),
                StoneClasses::namedAs,
                Origin.fields(SurveyField.STONE_NAME.name()),
                true));
        survey(StoneFacts.WaterTest.class, StoneClasses::waterDrop, SurveyField.WATER_DROP, SurveyField.COATING);
        survey(
                Condition.CementFace.class,
                SurveyClasses::cementFace,
                SurveyField.CEMENT_SURFACE,
                SurveyField.LAST_TREATMENT);
        survey(BuildUp.LayerBelow.class, SurveyClasses::layer, SurveyField.HAZARDOUS_LAYER, SurveyField.LAID_AGO);
        survey(
                BuildUp.Moisture.class,
                SurveyClasses::damp,
                SurveyField.MOISTURE,
                SurveyField.DRY_REFERENCE,
                SurveyField.DAMP);
        survey(StoneFacts.LaidFace.class, SurveyClasses::laidFace, SurveyField.FACE, SurveyField.TILE_EDGE);
        survey(Site.EdgesMeasured.class, SurveyClasses::edges, SurveyField.EDGES, SurveyField.AREA);
        survey(Site.PowerSupply.class, SurveyClasses::supply, SurveyField.VOLTS, SurveyField.AMPS);
        survey(Equipment.GradesOnHand.class, SurveyClasses::anyGrade, SurveyField.GRADES);
        survey(Equipment.FinestOnHand.class, SurveyClasses::finestOnHand, SurveyField.GRADES);
        survey(
                Wishes.WantedFinish.class,
                SurveyClasses::wanted,
                SurveyField.GOAL,
                SurveyField.GOAL_GLOSS,
                SurveyField.FINISH_NOW);
        survey(
                Wishes.FinishToGo.class,
                SurveyClasses::gap,
                SurveyField.GOAL,
                SurveyField.GOAL_GLOSS,
                SurveyField.FINISH_NOW);
    }

    /** What was seen and read in the zones of a floor. */
    private static void zones() {
        damage(Condition.Scratches.class, DamageKind.SCRATCHES, DamageClasses::inField);
        damage(Condition.EdgeScratches.class, DamageKind.SCRATCHES, DamageClasses::alongEdges);
        damage(Condition.LocalScratches.class, DamageKind.SCRATCHES, DamageClasses::inPlaces);
        damage(Condition.Wear.class, DamageKind.WEAR, DamageClasses::overall);
        damage(Condition.Etches.class, DamageKind.ETCHES, DamageClasses::inField);
        damage(Condition.EdgeEtches.class, DamageKind.ETCHES, DamageClasses::alongEdges);
        damage(Condition.LocalEtches.class, DamageKind.ETCHES, DamageClasses::inPlaces);
        damage(Condition.Lippage.class, DamageKind.LIPPAGE, DamageClasses::overall);
        damage(Condition.LocalLippage.class, DamageKind.LIPPAGE, DamageClasses::rareOverall);
        damage(Condition.Waviness.class, DamageKind.WAVINESS, DamageClasses::overall);
        damage(Condition.HighestLip.class, DamageKind.LIPPAGE, DamageClasses::anywhere);
        damage(Condition.DeepestWave.class, DamageKind.WAVINESS, DamageClasses::anywhere);
        damage(Condition.Cracks.class, DamageKind.CRACKS, DamageClasses::anywhere);
        damage(Condition.OilStains.class, DamageKind.OIL_STAINS, DamageClasses::anywhere);
        damage(Condition.OrganicStains.class, DamageKind.ORGANIC_STAINS, DamageClasses::anywhere);
        damage(Condition.RustStains.class, DamageKind.RUST_STAINS, DamageClasses::anywhere);
        damage(Condition.Salts.class, DamageKind.SALTS, DamageClasses::anywhere);
        damage(Condition.Flaking.class, DamageKind.FLAKING, DamageClasses::anywhere);
        line(
                Condition.Lanes.class,
                DamageClasses::lanes,
                Origin.fields(damage(DamageKind.SCRATCHES), damage(DamageKind.ETCHES)));
        Origin lanes = Origin.fields(damage(DamageKind.SCRATCHES), damage(DamageKind.ETCHES), damage(DamageKind.WEAR));
        line(Condition.LanesWorn.class, DamageClasses::lanesWorn, lanes);
        line(
                Wishes.WorkExtent.class,
                DamageClasses::extent,
                Origin.fields(SurveyField.EXTENT.name())
                        .behind(damage(DamageKind.SCRATCHES), damage(DamageKind.ETCHES), damage(DamageKind.WEAR)));
        line(Site.NoFloor.class, DamageClasses::noFloor, Origin.fields(damage(DamageKind.WEAR)));
        line(Site.Treads.class, DamageClasses::treads, Origin.fields(damage(DamageKind.WEAR)));
        line(
                Site.Slopes.class,
                DamageClasses::slopes,
                Origin.fields(SurveyField.SLOPE.name()).behind(damage(DamageKind.WEAR)));
        line(
                Condition.GlossRead.class,
                situation -> SurveyClasses.glossRead(situation, Comparator.naturalOrder()),
                Origin.fields(READINGS));
        line(
                Condition.StatedFinish.class,
                SurveyClasses::statedFinish,
                Origin.fields(READINGS, SurveyField.FINISH_NOW.name()));
    }

    private static void stoneTraits() {
        Origin stone = Origin.decisions(Topics.STONE);
        line(StoneTraits.StoneFamily.class, StoneClasses::families, stone);
        line(
                Site.HistoricFabric.class,
                StoneClasses::historic,
                stone.withFields(names(SurveyField.HISTORIC, SurveyField.LAID_AGO)));
        line(
                StoneTraits.Identified.class,
                StoneClasses::identified,
                stone.withFields(names(
                        SurveyField.STONE_NAME,
                        SurveyField.IDENTIFIED_BY,
                        SurveyField.ACID_DROP,
                        SurveyField.SCRIBER,
                        SurveyField.COATING,
                        SurveyField.SOLVENT_RAG,
                        SurveyField.LAST_TREATMENT)));
        trait(StoneTraits.AcidResponse.class, Traits::acid);
        line(
                StoneTraits.CuttingHardness.class,
                situation -> situation.stone().hardness(),
                stone.withFields(SurveyField.SCRIBER.name()));
        line(
                StoneTraits.HighestFinish.class,
                StoneClasses::finishReach,
                stone.withFields(names(SurveyField.WATER_DROP, SurveyField.COATING, SurveyField.FINISH_NOW)));
        trait(StoneTraits.WaterStanding.class, Traits::water);
        line(BuildUp.BackedBy.class, StoneClasses::backing, stone.withFields(SurveyField.BACKING.name()));
        line(StoneTraits.ChipsSeen.class, StoneClasses::chips, stone.withFields(SurveyField.CHIPS.name()));
        line(
                StoneTraits.FibreSuspicion.class,
                StoneClasses::fibres,
                stone.withFields(names(
                                SurveyField.COLOUR,
                                SurveyField.CHIPS,
                                SurveyField.LABORATORY,
                                SurveyField.IDENTIFIED_BY,
                                SurveyField.ACID_DROP,
                                SurveyField.SCRIBER))
                        .behind(names(
                                SurveyField.STONE_NAME,
                                SurveyField.COATING,
                                SurveyField.SOLVENT_RAG,
                                SurveyField.LAST_TREATMENT)));
        line(Condition.CeilingRead.class, StoneClasses::ceiling, stone.withFields(READINGS));
        trait(StoneTraits.SilicaShare.class, Traits::silica);
        trait(StoneTraits.BoundBy.class, Traits::body);
        trait(StoneTraits.MetalTolerance.class, Traits::metal);
        line(
                StoneTraits.RemovalBudget.class,
                RemovalClasses::budget,
                stone.withFields(SurveyField.THICKNESS.name())
                        .behind(damage(DamageKind.SCRATCHES), damage(DamageKind.LIPPAGE), SurveyField.EXTENT.name()));
        line(
                StoneTraits.QuickerMetal.class,
                MachineClasses::metal,
                stone.withFields(names(SurveyField.AREA, SurveyField.SCRIBER))
                        .behind(
                                SurveyField.MACHINES.name(),
                                SurveyField.GRADES.name(),
                                damage(DamageKind.SCRATCHES),
                                damage(DamageKind.LIPPAGE),
                                damage(DamageKind.WAVINESS),
                                SurveyField.AGGREGATE.name(),
                                SurveyField.CEMENT_SURFACE.name(),
                                SurveyField.EXTENT.name()));
    }

    private static void decisions() {
        line(Decided.Permission.class, Situation::permission, Origin.decisions(Topics.VERDICT));
        decided(Decided.FinishDecided.class, Topics.FINISH);
        line(Decided.MetalBond.class, DecisionClasses::metalBond, Origin.decisions(Topics.BONDS));
        line(Decided.StartCut.class, DecisionClasses::coarsestCut, Origin.decisions(Topics.FIRST_CUT));
        line(Decided.LocalMarks.class, DecisionClasses::localMarks, Origin.decisions(Topics.FIRST_CUT));
        line(
                Decided.QuickerMachine.class,
                MachineClasses::quicker,
                Origin.decisions(Topics.GRIT_PATH, Topics.METAL_METHOD, Topics.STONE)
                        .withFields(names(SurveyField.AREA, SurveyField.SCRIBER))
                        .behind(
                                damage(DamageKind.SCRATCHES),
                                damage(DamageKind.LIPPAGE),
                                damage(DamageKind.WAVINESS),
                                SurveyField.AGGREGATE.name(),
                                SurveyField.CEMENT_SURFACE.name(),
                                SurveyField.EXTENT.name()));
        line(
                Decided.DeadlineKept.class,
                MachineClasses::deadlineFit,
                Origin.decisions(
                                Topics.GRIT_PATH, Topics.METAL_METHOD, Topics.MACHINE, Topics.PREPARATION, Topics.STONE)
                        .withFields(names(SurveyField.DEADLINE, SurveyField.CREW, SurveyField.SHIFT, SurveyField.AREA))
                        .behind(
                                SurveyField.LAID_AGO.name(),
                                SurveyField.FILLED_AGO.name(),
                                SurveyField.SCRIBER.name(),
                                damage(DamageKind.SCRATCHES),
                                damage(DamageKind.LIPPAGE),
                                damage(DamageKind.WAVINESS),
                                SurveyField.AGGREGATE.name(),
                                SurveyField.CEMENT_SURFACE.name(),
                                SurveyField.EXTENT.name()));
        decided(Decided.Sealing.class, Topics.SEALER);
    }

    /** All lines, in the order in which their facts reach the rules. */
    static List<FactLine> lines() {
        return List.copyOf(LINES.values());
    }

    /** Those whose facts a stage adds, in the same order; with no stage, those of the survey and the job log. */
    static List<FactLine> lines(Optional<Stage> after) {
        return BY_STAGE.getOrDefault(after, List.of());
    }

    /**
     * The line of a type of fact.
     *
     * @throws InvalidInputException when it is no type of this table
     */
    static FactLine line(Class<?> type) {
        FactLine line = LINES.get(type);
        if (line == null) {
            throw new InvalidInputException("fact", type.getName(), "a type of the table of facts");
        }
        return line;
    }

    /** The types of facts to which a field or a kind of damage can make a difference, those behind their topics left out. */
    static Set<Class<?>> reading(String name) {
        return READING.getOrDefault(name, Set.of());
    }

    /** The name by which questions refer to a kind of damage. */
    static String damage(DamageKind kind) {
        return "damages." + kind.key();
    }

    private static String[] names(SurveyField<?>... fields) {
        List<String> names = new ArrayList<>();
        for (SurveyField<?> field : fields) {
            names.add(field.name());
        }
        return names.toArray(String[]::new);
    }

    private static void add(FactLine line) {
        LINES.put(line.type(), line);
    }

    private static <E extends Enum<E> & Term, F extends Feature<E>> void line(
            Class<F> type, Function<Situation, Set<E>> classify, Origin origin) {
        add(SingleFact.of(type, classify, origin));
    }

    private static <E extends Enum<E> & Term, F extends Feature<E>> void survey(
            Class<F> type, Function<Situation, Set<E>> classify, SurveyField<?>... fields) {
        line(type, classify, Origin.fields(names(fields)));
    }

    private static <E extends Enum<E> & Term, F extends Feature<E>> void damage(
            Class<F> type, DamageKind kind, Weighing<E> weighing) {
        FeatureRecord<E, F> feature = FeatureRecord.of(type, Set.class);
        // Whether lanes alone are worked decides which zones are weighed.
        line(
                type,
                situation -> weighing.classes(situation, kind, feature.classes()),
                Origin.fields(damage(kind)).behind(SurveyField.EXTENT.name()));
    }

    private static <E extends Enum<E> & Term, F extends Feature<E>> void trait(
            Class<F> type, Function<Traits, Set<E>> trait) {
        FeatureRecord<E, F> feature = FeatureRecord.of(type, Set.class);
        line(
                type,
                situation -> Traits.across(StoneClasses.families(situation), feature.classes(), trait),
                Origin.decisions(Topics.STONE));
    }

    private static <K extends Enum<K> & Term, F extends OneOfMany<Presence>> void onHand(
            Class<F> type, Class<K> kinds, SurveyField<Set<K>> field) {
        add(FactPerConstant.of(
                type,
                kinds,
                (situation, kind) -> SurveyClasses.onHand(situation, field, kind),
                Origin.fields(field.name())));
    }

    private static <E extends Enum<E> & Term, F extends Feature<E>> void decided(Class<F> type, Topic<E> topic) {
        FeatureRecord<E, F> feature = FeatureRecord.of(type, Set.class);
        line(type, situation -> situation.decided(topic, feature.classes()), Origin.decisions(topic));
    }
}
