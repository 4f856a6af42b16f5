package stoneprocess.core.survey;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.exposure.SlipPotential;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Temperature;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.tool.Powder;

/**
 * One question of a survey. This table is the only list of them: JSON, schema test, questions, generators and documents
 * derive from it. Damages and gloss readings belong to zones and stand in {@link DamageKind} and {@link GlossReading}.
 *
 * @param <T> the type of a known answer
 */
public final class SurveyField<T> {
    private static final Map<String, SurveyField<?>> ALL = new LinkedHashMap<>();

    public static final SurveyField<String> STONE_NAME =
            add("stone.name", new FieldKind.StoneName(), String.class, HowFound.ASK, ChangedBy.NOBODY);
    public static final SurveyField<IdentifiedBy> IDENTIFIED_BY =
            choice("stone.identified-by", IdentifiedBy.class, HowFound.ASK, ChangedBy.OTHERS);
    public static final SurveyField<AcidDrop> ACID_DROP = choice(
                    "stone.acid-drop", AcidDrop.class, HowFound.ACID, ChangedBy.NOBODY)
            .as("AcidTest");
    public static final SurveyField<ScriberTest> SCRIBER = choice(
                    "stone.scriber", ScriberTest.class, HowFound.SCRIBER, ChangedBy.NOBODY)
            .as("ScriberMark");
    public static final SurveyField<WaterDrop> WATER_DROP =
            choice("stone.water-drop", WaterDrop.class, HowFound.WATER, ChangedBy.NOBODY);
    public static final SurveyField<SolventRag> SOLVENT_RAG = choice(
                    "stone.solvent-rag", SolventRag.class, HowFound.SOLVENT, ChangedBy.NOBODY)
            .as("SolventTest");
    public static final SurveyField<LaboratoryResult> LABORATORY = choice(
                    "stone.laboratory", LaboratoryResult.class, HowFound.LABORATORY, ChangedBy.NOBODY)
            .as("LaboratorySays");
    public static final SurveyField<StoneColour> COLOUR = choice(
                    "stone.colour", StoneColour.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("GroundColour");
    public static final SurveyField<ChipColour> CHIPS =
            choice("stone.chips", ChipColour.class, HowFound.LOOK, ChangedBy.NOBODY);
    public static final SurveyField<Face> FACE = choice("stone.face", Face.class, HowFound.LOOK, ChangedBy.NOBODY);
    public static final SurveyField<StoneMix> MIX =
            choice("stone.mix", StoneMix.class, HowFound.LOOK, ChangedBy.NOBODY).as("StonesMixed");
    public static final SurveyField<DataSheet> DATA_SHEET = choice(
                    "stone.data-sheet", DataSheet.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("DataSheetSays");

    public static final SurveyField<Length> THICKNESS =
            measure("build-up.thickness", Length.class, 3, 500, HowFound.DRAWINGS, ChangedBy.NOBODY);
    public static final SurveyField<Length> TILE_EDGE = measure(
                    "build-up.tile-edge", Length.class, 5, 5_000, HowFound.MEASURE, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("piece", PieceSize.class))
            .as("PiecesMeasured");
    public static final SurveyField<Length> JOINT_WIDTH = measure(
                    "build-up.joint-width", Length.class, 0, 100, HowFound.MEASURE, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("joint", JointSpan.class))
            .as("JointsMeasured");
    public static final SurveyField<Backing> BACKING =
            choice("build-up.backing", Backing.class, HowFound.DRAWINGS, ChangedBy.NOBODY);
    public static final SurveyField<Bed> BED = choice("build-up.bed", Bed.class, HowFound.DRAWINGS, ChangedBy.NOBODY)
            .as("LaidOn");
    public static final SurveyField<Heated> HEATED = choice(
                    "build-up.heated", Heated.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("FloorHeating");
    public static final SurveyField<Sounding> SOUNDING = choice(
                    "build-up.sounding", Sounding.class, HowFound.TAP, ChangedBy.CREW)
            .as("TapSound");
    public static final SurveyField<HazardousLayer> HAZARDOUS_LAYER =
            choice("build-up.hazardous-layer", HazardousLayer.class, HowFound.LABORATORY, ChangedBy.NOBODY);
    public static final SurveyField<Share> MOISTURE =
            measure("build-up.moisture", Share.class, 0, 100, HowFound.METER, ChangedBy.CREW);
    public static final SurveyField<Share> DRY_REFERENCE =
            measure("build-up.dry-reference", Share.class, 0, 100, HowFound.METER, ChangedBy.NOBODY);
    public static final SurveyField<Joints> JOINTS = choice(
                    "build-up.joints", Joints.class, HowFound.LOOK, ChangedBy.CREW)
            .as("JointState");
    public static final SurveyField<DividerStrips> STRIPS = choice(
                    "build-up.strips", DividerStrips.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("StripMaterial");

    public static final SurveyField<Coating> COATING = choice(
                    "condition.coating", Coating.class, HowFound.SOLVENT, ChangedBy.CREW)
            .as("Coated");
    public static final SurveyField<Finish> FINISH_NOW = choice(
                    "condition.finish-now", Finish.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("PresentFinish");
    public static final SurveyField<CleaningTrial> CLEANING_TRIAL = choice(
                    "condition.cleaning-trial", CleaningTrial.class, HowFound.TRIAL, ChangedBy.NOBODY)
            .as("CleaningTried");
    public static final SurveyField<CementSurface> CEMENT_SURFACE =
            choice("condition.cement-surface", CementSurface.class, HowFound.SCRAPE, ChangedBy.NOBODY);
    public static final SurveyField<StripLevel> STRIP_LEVEL = choice(
                    "condition.strips", StripLevel.class, HowFound.TOUCH, ChangedBy.CREW)
            .as("StripHeight");
    public static final SurveyField<Presence> SLIPPERY = choice(
                    "condition.slippery", Presence.class, HowFound.ASK, ChangedBy.OTHERS)
            .as("Slippery");
    public static final SurveyField<PendulumValue> SLIP = measure(
                    "condition.slip", PendulumValue.class, 0, 150, HowFound.SLIP_TESTER, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("slip-pendulum", SlipPotential.class))
            .as("SlipMeasured");
    public static final SurveyField<DampSource> DAMP = choice(
                    "condition.damp", DampSource.class, HowFound.LOOK, ChangedBy.OTHERS)
            .as("DampFrom");
    public static final SurveyField<CrackHarm> CRACK_HARM = choice(
                    "condition.crack-harm", CrackHarm.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("CracksHarm");
    public static final SurveyField<Holes> HOLES = choice("condition.holes", Holes.class, HowFound.LOOK, ChangedBy.CREW)
            .as("HolesFound");

    public static final SurveyField<LastTreatment> LAST_TREATMENT = choice(
                    "history.last-treatment", LastTreatment.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("LastTreated");
    public static final SurveyField<LastWorked> LAST_WORKED = choice(
                    "history.last-worked", LastWorked.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("LeftOffAt");
    public static final SurveyField<TreatedAgo> TREATED_AGO = choice(
                    "history.treated-ago", TreatedAgo.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("LastTreatedAgo");
    public static final SurveyField<Cleaner> CLEANER = choice(
                    "history.cleaner", Cleaner.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("CleanedWith");

    public static final SurveyField<OriginalFinish> ORIGINAL_FINISH = choice(
                    "history.original-finish", OriginalFinish.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("OriginallyFinished");
    public static final SurveyField<TimeSpan> LAID_AGO = measure(
                    "history.laid-ago", TimeSpan.class, 0, 500_000_000, HowFound.ASK, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("age", AgeClass.class))
            .as("LaidAgo");
    public static final SurveyField<TimeSpan> FILLED_AGO = measure(
                    "history.filled-ago", TimeSpan.class, 0, 500_000_000, HowFound.ASK, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("fill-age", FillAgeClass.class))
            .as("FilledAgo");

    public static final SurveyField<Area> AREA = measure(
                    "site.area", Area.class, 0.1, 1_000_000, HowFound.MEASURE, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("floor-size", SizeClass.class))
            .as("FloorSize");
    public static final SurveyField<Length> EDGES =
            measure("site.edges", Length.class, 0, 1_000_000, HowFound.MEASURE, ChangedBy.NOBODY);
    public static final SurveyField<Volume> ROOM_VOLUME = measure(
                    "site.room-volume", Volume.class, 1_000, 10_000_000_000d, HowFound.MEASURE, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("room-volume", RoomClass.class))
            .as("RoomSize");
    public static final SurveyField<Setting> SETTING = choice(
                    "site.setting", Setting.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("Place");
    public static final SurveyField<Occupied> OCCUPIED = choice(
                    "site.occupied", Occupied.class, HowFound.ASK, ChangedBy.OWNER)
            .as("PeopleAbout");
    public static final SurveyField<Presence> OPEN_DOORS = choice(
                    "site.open-doors", Presence.class, HowFound.LOOK, ChangedBy.CREW)
            .as("DoorsToOpen");
    public static final SurveyField<Presence> FAN =
            choice("site.fan", Presence.class, HowFound.LOOK, ChangedBy.CREW).as("FanOnSite");
    public static final SurveyField<Presence> DRAIN = choice(
                    "site.drain", Presence.class, HowFound.LOOK, ChangedBy.NOBODY)
            .as("FloorDrain");
    public static final SurveyField<Presence> WATER_SUPPLY = choice(
                    "site.water-supply", Presence.class, HowFound.LOOK, ChangedBy.CREW)
            .as("TapWater");
    public static final SurveyField<Slope> SLOPE =
            choice("site.slope", Slope.class, HowFound.MEASURE, ChangedBy.NOBODY);
    public static final SurveyField<WetUse> WET_USE =
            choice("site.wet-use", WetUse.class, HowFound.ASK, ChangedBy.NOBODY).as("UsedWet");
    public static final SurveyField<Voltage> VOLTS =
            measure("site.volts", Voltage.class, 12, 1000, HowFound.LOOK, ChangedBy.CREW);
    public static final SurveyField<Current> AMPS =
            measure("site.amps", Current.class, 1, 1000, HowFound.LOOK, ChangedBy.CREW);
    public static final SurveyField<Access> ACCESS =
            choice("site.access", Access.class, HowFound.LOOK, ChangedBy.OWNER).as("Reached");
    public static final SurveyField<Structure> STRUCTURE = choice(
                    "site.structure", Structure.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("CarriedBy");
    public static final SurveyField<AreaLoad> FLOOR_LOAD = measure(
                    "site.floor-load", AreaLoad.class, 0.1, 1000, HowFound.ENGINEER, ChangedBy.NOBODY)
            .inClasses(new NamedScale<>("floor-load", LoadClass.class))
            .as("FloorCarries");
    public static final SurveyField<LoadConfirmed> LOAD_CONFIRMED = choice(
                    "site.load-confirmed", LoadConfirmed.class, HowFound.ENGINEER, ChangedBy.OTHERS)
            .as("LoadConfirmedBy");
    public static final SurveyField<Historic> HISTORIC =
            choice("site.historic", Historic.class, HowFound.ASK, ChangedBy.NOBODY);
    public static final SurveyField<WorksKind> WORKS =
            choice("site.works", WorksKind.class, HowFound.ASK, ChangedBy.OWNER).as("Works");
    public static final SurveyField<Count> CREW = measure(
                    "site.crew", Count.class, 1, 100, HowFound.ASK, ChangedBy.CREW)
            .inClasses(new NamedScale<>("crew", CrewClass.class))
            .as("CrewSize");
    public static final SurveyField<TimeSpan> REOPENS_AFTER = measure(
                    "site.reopens-after", TimeSpan.class, 30, 1_000_000, HowFound.ASK, ChangedBy.OWNER)
            .inClasses(new NamedScale<>("reopening", ReopenClass.class))
            .as("Reopening");
    public static final SurveyField<Presence> CONSENT = choice(
                    "site.consent", Presence.class, HowFound.ASK, ChangedBy.OTHERS)
            .as("OfficerConsent");
    public static final SurveyField<Traffic> TRAFFIC = choice(
                    "site.traffic", Traffic.class, HowFound.ASK, ChangedBy.NOBODY)
            .as("FootTraffic");
    public static final SurveyField<Wheels> WHEELS =
            choice("site.wheels", Wheels.class, HowFound.ASK, ChangedBy.NOBODY).as("RollingLoad");
    public static final SurveyField<Temperature> FLOOR_TEMPERATURE = measure(
                    "site.floor-temperature", Temperature.class, -20, 60, HowFound.THERMOMETER, ChangedBy.CREW)
            .inClasses(new NamedScale<>("warmth", WarmthClass.class))
            .as("FloorWarmth");
    public static final SurveyField<Temperature> AIR_TEMPERATURE = measure(
                    "site.air-temperature", Temperature.class, -20, 50, HowFound.THERMOMETER, ChangedBy.CREW)
            .inClasses(new NamedScale<>("warmth", WarmthClass.class))
            .as("AirWarmth");
    public static final SurveyField<Presence> FROST =
            choice("site.frost", Presence.class, HowFound.ASK, ChangedBy.OTHERS).as("FrostExpected");
    public static final SurveyField<TimeSpan> DEADLINE = measure(
                    "site.deadline", TimeSpan.class, 60, 5_000_000, HowFound.ASK, ChangedBy.OWNER)
            .inClasses(new NamedScale<>("deadline", DeadlineClass.class))
            .as("Deadline");
    public static final SurveyField<TimeSpan> SHIFT = measure(
                    "site.shift", TimeSpan.class, 60, 1_440, HowFound.ASK, ChangedBy.OWNER)
            .inClasses(new NamedScale<>("shift", ShiftClass.class))
            .as("ShiftLength");
    public static final SurveyField<WorkingHours> WORKING_HOURS = choice(
                    "site.working-hours", WorkingHours.class, HowFound.ASK, ChangedBy.OWNER)
            .as("HoursOfWork");

    public static final SurveyField<Set<MachineClass>> MACHINES =
            choices("equipment.machines", MachineClass.class, ChangedBy.CREW);
    public static final SurveyField<List<AbrasiveGrade>> GRADES =
            add("equipment.grades", new FieldKind.Grades(), List.class, HowFound.COUNT, ChangedBy.CREW);
    public static final SurveyField<Set<Powder>> POWDERS = choices("equipment.powders", Powder.class, ChangedBy.CREW);
    public static final SurveyField<Extractor> EXTRACTOR = choice(
                    "equipment.extractor", Extractor.class, HowFound.COUNT, ChangedBy.CREW)
            .as("ExtractorOnHand");
    public static final SurveyField<Presence> WET_VACUUM = choice(
                    "equipment.wet-vacuum", Presence.class, HowFound.COUNT, ChangedBy.CREW)
            .as("WetVacuumOnHand");

    public static final SurveyField<Goal> GOAL =
            choice("owner.goal", Goal.class, HowFound.ASK, ChangedBy.OWNER).as("OwnerGoal");
    public static final SurveyField<Gloss> GOAL_GLOSS = measure(
                    "owner.gloss", Gloss.class, 0, 140, HowFound.ASK, ChangedBy.OWNER)
            .inClasses(Finish.SCALE)
            .as("GlossAgreed");
    public static final SurveyField<MixedChoice> MIXED_CHOICE = choice(
                    "owner.mixed-choice", MixedChoice.class, HowFound.ASK, ChangedBy.OWNER)
            .as("StoneChosen");
    public static final SurveyField<AggregateShown> AGGREGATE = choice(
                    "owner.aggregate", AggregateShown.class, HowFound.ASK, ChangedBy.OWNER)
            .as("AggregateWanted");

    public static final SurveyField<Extent> EXTENT =
            choice("owner.extent", Extent.class, HowFound.ASK, ChangedBy.OWNER);
    public static final SurveyField<PolishWith> POLISH_WITH = choice(
                    "owner.polish-with", PolishWith.class, HowFound.ASK, ChangedBy.OWNER)
            .as("PolishChosen");

    private static final List<SurveyField<?>> IN_ORDER = List.copyOf(ALL.values());

    private final String name;
    private final FieldKind kind;
    private final Class<?> type;
    private final HowFound howFound;
    private final ChangedBy changedBy;
    private final Optional<String> fact;

    private SurveyField(
            String name, FieldKind kind, Class<?> type, HowFound howFound, ChangedBy changedBy, Optional<String> fact) {
        this.name = name;
        this.kind = kind;
        this.type = type;
        this.howFound = howFound;
        this.changedBy = changedBy;
        this.fact = fact;
    }

    /** All fields in the order of a survey form. */
    public static List<SurveyField<?>> all() {
        return IN_ORDER;
    }

    /**
     * The field with the given name.
     *
     * @throws InvalidInputException when there is none
     */
    public static SurveyField<?> named(String name) {
        SurveyField<?> field = ALL.get(name);
        if (field == null) {
            throw new InvalidInputException("field", name, "one of " + String.join(", ", ALL.keySet()));
        }
        return field;
    }

    /** Section and field, for example {@code site.area}. */
    public String name() {
        return name;
    }

    /** The part of the name before the dot. */
    public String section() {
        return name.substring(0, name.indexOf('.'));
    }

    /** The part of the name after the dot. */
    public String shortName() {
        return name.substring(name.indexOf('.') + 1);
    }

    /** What kind of answer it takes. */
    public FieldKind kind() {
        return kind;
    }

    /** How a crew finds the answer. */
    public HowFound howFound() {
        return howFound;
    }

    /** Who can bring about another answer on the same floor. */
    public ChangedBy changedBy() {
        return changedBy;
    }

    /**
     * Name of the fact by which rules read this answer as it stands; empty when they read it only together with other
     * answers.
     */
    public Optional<String> fact() {
        return fact;
    }

    /** The scale that makes classes of a measured answer; empty for an answer that no scale classifies. */
    public Optional<NamedScale<?>> scale() {
        return kind instanceof FieldKind.Measure measure ? measure.scale() : Optional.empty();
    }

    /**
     * Checks a value and its members against the kind and its limits.
     *
     * @return the value, typed
     * @throws InvalidInputException naming this field, the value and what would be accepted
     */
    @SuppressWarnings("unchecked")
    public T check(Object value) {
        if (!type.isInstance(value)) {
            throw refused(value);
        }
        if (kind instanceof FieldKind.Choices choices) {
            requireMembers((Collection<?>) value, choices.type());
        }
        if (kind instanceof FieldKind.Grades) {
            requireMembers((Collection<?>) value, AbrasiveGrade.class);
        }
        if (kind instanceof FieldKind.StoneName) {
            StoneCatalogue.standard().get((String) value, name);
        }
        if (kind instanceof FieldKind.Measure measure) {
            Quantity quantity = (Quantity) value;
            if (!measure.limits().contains(quantity.kept())) {
                throw new InvalidInputException(name, quantity.print(), printLimits(measure));
            }
        }
        return (T) value;
    }

    private void requireMembers(Collection<?> members, Class<?> memberType) {
        for (Object member : members) {
            if (!memberType.isInstance(member)) {
                throw refused(member);
            }
        }
    }

    private InvalidInputException refused(@Nullable Object value) {
        String shown = value instanceof Quantity quantity ? quantity.print() : String.valueOf(value);
        return new InvalidInputException(name, shown, accepted());
    }

    /** What the field accepts, for an error message. */
    private String accepted() {
        if (kind instanceof FieldKind.Choice choice) {
            return "one of " + keys(choice.type());
        }
        if (kind instanceof FieldKind.Choices choices) {
            return "a set of " + keys(choices.type());
        }
        if (kind instanceof FieldKind.Measure measure) {
            return printLimits(measure);
        }
        return kind instanceof FieldKind.Grades ? "a list of grades" : "a name of the stone catalogue";
    }

    private static String keys(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> ((Term) constant).key())
                .collect(Collectors.joining(", "));
    }

    /** What a measure accepts, for an error message. */
    public static String printLimits(FieldKind.Measure measure) {
        return "a value from " + plain(measure.limits().low()) + " to "
                + plain(measure.limits().high()) + " "
                + measure.dimension().unit().symbol();
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    @Override
    public String toString() {
        return name;
    }

    private static <E extends Enum<E> & Term> SurveyField<E> choice(
            String name, Class<E> type, HowFound how, ChangedBy changedBy) {
        return add(name, new FieldKind.Choice(type), type, how, changedBy);
    }

    private static <E extends Enum<E> & Term> SurveyField<Set<E>> choices(
            String name, Class<E> type, ChangedBy changedBy) {
        return add(name, new FieldKind.Choices(type), Set.class, HowFound.COUNT, changedBy);
    }

    private static <Q extends Quantity> SurveyField<Q> measure(
            String name, Class<Q> type, double low, double high, HowFound how, ChangedBy changedBy) {
        FieldKind kind = new FieldKind.Measure(Dimension.of(type), Range.of(low, high), Optional.empty());
        return add(name, kind, type, how, changedBy);
    }

    private static <T> SurveyField<T> add(
            String name, FieldKind kind, Class<?> type, HowFound how, ChangedBy changedBy) {
        if (ALL.containsKey(name)) {
            throw new IllegalStateException("Field " + name + " is listed twice");
        }
        return list(new SurveyField<>(name, kind, type, how, changedBy, Optional.empty()));
    }

    /** The same field, whose answer rules read as the fact of this name. */
    private SurveyField<T> as(String factName) {
        return list(new SurveyField<>(name, kind, type, howFound, changedBy, Optional.of(factName)));
    }

    /** The same field, of whose answer a scale makes classes. */
    private SurveyField<T> inClasses(NamedScale<?> scale) {
        FieldKind.Measure measure = (FieldKind.Measure) kind;
        FieldKind scaled = new FieldKind.Measure(measure.dimension(), measure.limits(), Optional.of(scale));
        return list(new SurveyField<>(name, scaled, type, howFound, changedBy, fact));
    }

    private static <T> SurveyField<T> list(SurveyField<T> field) {
        ALL.put(field.name, field);
        return field;
    }
}
