package stoneprocess.rules.testkit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.rules.internal.classify.Facts;

/** One answer for each class of a field that the rules can tell apart. Immutable and safe to share between threads. */
public final class FieldClasses {
    private final Parameters parameters;
    private final GritSequence sequence;

    /**
     * @param parameters the numbers that part the classes
     * @param sequence where grades on hand come from
     */
    public FieldClasses(Parameters parameters, GritSequence sequence) {
        this.parameters = parameters;
        this.sequence = sequence;
    }

    /**
     * Answers to a field, one in each class; none for a measured field whose value no rule classifies.
     *
     * @param base what the other answers are where a class depends on them
     */
    public List<Object> of(SurveyField<?> field, FloorSurvey base) {
        FieldKind kind = field.kind();
        if (kind instanceof FieldKind.Choice choice) {
            return List.of((Object[]) choice.type().getEnumConstants());
        }
        if (field == SurveyField.MACHINES) {
            return List.of(
                    EnumSet.allOf(MachineClass.class),
                    EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.EDGE_TOOL),
                    EnumSet.of(MachineClass.PLANETARY, MachineClass.EDGE_TOOL),
                    EnumSet.of(MachineClass.PROPANE_MACHINE, MachineClass.BURNISHER, MachineClass.SCRUBBER),
                    EnumSet.of(MachineClass.EDGE_TOOL));
        }
        if (kind instanceof FieldKind.Choices choices) {
            return Stream.concat(
                            Stream.of(Set.of(choices.type().getEnumConstants()), Set.of()),
                            Arrays.stream(choices.type().getEnumConstants()).map(Set::of))
                    .map(set -> (Object) set)
                    .toList();
        }
        if (kind instanceof FieldKind.StoneName) {
            return stones();
        }
        if (kind instanceof FieldKind.Grades) {
            return List.of(sequence.grades(), sequence.grades(Bond.RESIN), sequence.grades(Bond.METAL), List.of());
        }
        FieldKind.Measure measure = (FieldKind.Measure) kind;
        List<Quantity> limits = limits(field, measure, base);
        if (limits.isEmpty()) {
            return List.of();
        }
        List<Object> classes = new ArrayList<>();
        Quantity low = quantity(BigDecimal.valueOf(measure.limits().low()), measure.dimension());
        if (!limits.contains(low)) {
            classes.add(low);
        }
        classes.addAll(limits);
        return classes;
    }

    /** One name for each family that a name alone can mean, and each name that may mean several. */
    private static List<Object> stones() {
        Map<Object, Object> names = new LinkedHashMap<>();
        for (Family family : Family.values()) {
            StoneCatalogue.standard().all().stream()
                    .filter(stone -> stone.families().contains(family))
                    .min(Comparator.comparing((Stone stone) -> stone.families().size())
                            .thenComparing(Stone::name))
                    .ifPresent(stone -> names.putIfAbsent(stone.families(), stone.name()));
        }
        return List.copyOf(names.values());
    }

    /** Where classes of a measured field begin, at the precision of its dimension, inside what it accepts. */
    public List<Quantity> limits(SurveyField<?> field, FieldKind.Measure measure, FloorSurvey base) {
        TreeSet<Quantity> limits = new TreeSet<>();
        for (double limit : Facts.limits(field, base, parameters)) {
            BigDecimal value = BigDecimal.valueOf(limit)
                    .setScale(12, RoundingMode.HALF_EVEN)
                    .setScale(measure.dimension().decimals(), RoundingMode.CEILING);
            if (measure.limits().contains(value.doubleValue())) {
                limits.add(quantity(value, measure.dimension()));
            }
        }
        return List.copyOf(limits);
    }

    /** Where classes of a measured depth begin; none for a kind that is not measured. */
    public List<Length> depths(DamageKind kind) {
        return kind.depthScale().stream()
                .flatMap(scale -> Arrays.stream(kind.classes().getEnumConstants())
                        .map(constant -> scale + "." + ((Term) constant).key()))
                .flatMap(name -> parameters.all().stream()
                        .filter(parameter -> parameter.name().equals(name)))
                .flatMap(parameter -> parameter.value() instanceof Length length ? Stream.of(length) : Stream.empty())
                .toList();
    }

    /** The value one step of the precision before another. */
    public static Quantity stepBefore(Quantity value) {
        return quantity(
                value.decimal()
                        .subtract(BigDecimal.ONE.movePointLeft(value.dimension().decimals())),
                value.dimension());
    }

    private static Quantity quantity(BigDecimal value, Dimension dimension) {
        return Quantity.of(value, dimension.unit());
    }
}
