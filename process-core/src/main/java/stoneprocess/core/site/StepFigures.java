package stoneprocess.core.site;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Coverage;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.WaterLevel;

/** The figures of a step, computed from closed decisions and parameters. All are common practice, of low confidence. */
public final class StepFigures {
    private static final NamedScale<ResinClass> COVERAGE_GRIT = new NamedScale<>("coverage-grit", ResinClass.class);

    /** What lays pieces anew; on a mortar bed in mortar, which sets for as long as any. */
    private static final Set<Task> BEDDED = EnumSet.of(Task.RELAY_LIPPED, Task.FIX_HOLLOW);

    private StepFigures() {}

    /**
     * Refuses numbers whose limits of grits do not rise.
     *
     * @throws InvalidInputException naming the first limit that does not rise
     */
    public static void requireScales(Parameters parameters) {
        COVERAGE_GRIT.in(parameters);
    }

    private static ResinClass classOf(AbrasiveGrade grade, NamedScale<ResinClass> scale, Parameters parameters) {
        return scale.in(parameters).classify(new Count(grade.number()));
    }

    /**
     * Water for one pass over an area: coverage by bond and grit, times the area. Scant water is the lower half of the
     * range, generous water the upper half.
     *
     * @return the range; empty when the area is not known or the grade is worked dry
     */
    public static Optional<Range<Volume>> litres(
            AbrasiveGrade grade, WaterLevel level, Optional<Area> area, Parameters parameters) {
        Objects.requireNonNull(grade, "grade");
        Objects.requireNonNull(parameters, "parameters");
        Objects.requireNonNull(level, "level");
        if (area.isEmpty() || level == WaterLevel.NONE) {
            return Optional.empty();
        }
        Range<Coverage> coverage = parameters.range(coverageParameter(grade, parameters), Coverage.class);
        double low = coverage.low().litresPerSquareMetre();
        double high = coverage.high().litresPerSquareMetre();
        double middle = (low + high) / 2;
        double from = level == WaterLevel.GENEROUS ? middle : low;
        double to = level == WaterLevel.SCANT ? middle : high;
        double squareMetres = area.get().squareMetres();
        return Optional.of(Range.of(new Volume(from * squareMetres), new Volume(to * squareMetres)));
    }

    /** Name of the range of water on a square metre for a grade. */
    public static String coverageParameter(AbrasiveGrade grade, Parameters parameters) {
        Objects.requireNonNull(parameters, "parameters");
        return grade.bond() == Bond.METAL
                ? "coverage.metal"
                : "coverage." + classOf(grade, COVERAGE_GRIT, parameters).key();
    }

    /**
     * Added weight as a mass for a class of machine; machines that take no weight have none.
     *
     * @param machine the machine of the step
     * @param weight how much weight is added, as a class
     */
    public static Range<Mass> mass(MachineClass machine, AddedWeight weight, Parameters parameters) {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(parameters, "parameters");
        boolean takesWeight = machine == MachineClass.SINGLE_DISC || machine == MachineClass.PLANETARY;
        if (Objects.requireNonNull(weight, "weight") == AddedWeight.NONE || !takesWeight) {
            return Range.of(new Mass(0), new Mass(0));
        }
        Range<Mass> usual = parameters.range("weight." + machine.key(), Mass.class);
        if (weight == AddedWeight.USUAL) {
            return usual;
        }
        double part = 1 - parameters.part("weight.reduction");
        return Range.of(
                new Mass(usual.low().kilograms() * part), new Mass(usual.high().kilograms() * part));
    }

    /** The middle of {@link #mass}: what removal is reckoned with. */
    public static Mass middleMass(MachineClass machine, AddedWeight weight, Parameters parameters) {
        Range<Mass> mass = mass(machine, weight, parameters);
        return new Mass((mass.low().kilograms() + mass.high().kilograms()) / 2);
    }

    /**
     * How long the floor rests after a task; empty when there is nothing to wait for or a reading ends the wait. What has
     * to cure waits for what it lacks of its age.
     *
     * @param stone what the floor is made of; stone is old, whenever it was laid
     */
    public static Optional<Range<TimeSpan>> rest(
            Task task, FloorSurvey survey, KnownStone stone, Parameters parameters) {
        Objects.requireNonNull(survey, "survey");
        Objects.requireNonNull(stone, "stone");
        if (task == Task.LET_CURE) {
            double wait = lacking(survey, SurveyField.FILLED_AGO, "fill-age.cured", parameters);
            if (stone.cementBound()) {
                String age = stone.concrete() ? "age.old" : "age.maturing";
                wait = Math.max(wait, lacking(survey, SurveyField.LAID_AGO, age, parameters));
            }
            TimeSpan rest = new TimeSpan(wait);
            return wait > 0 ? Optional.of(Range.of(rest, rest)) : Optional.empty();
        }
        String name = "rest." + task.key();
        if (!parameters.has(name + ".low")) {
            return Optional.empty();
        }
        Range<TimeSpan> rest = parameters.range(name, TimeSpan.class);
        boolean mortar = survey.answer(SurveyField.BED).value().equals(Optional.of(Bed.MORTAR));
        return Optional.of(mortar && BEDDED.contains(task) ? Range.of(rest.high(), rest.high()) : rest);
    }

    private static double lacking(
            FloorSurvey survey, SurveyField<TimeSpan> since, String parameter, Parameters parameters) {
        double asked = parameters.get(parameter, TimeSpan.class).minutes();
        return survey.answer(since)
                .value()
                .map(age -> Math.max(0, asked - age.minutes()))
                .orElse(0.0);
    }

    /** The two parameters that make a range. */
    public static List<String> rangeOf(String parameter) {
        return List.of(Objects.requireNonNull(parameter, "parameter") + ".low", parameter + ".high");
    }
}
