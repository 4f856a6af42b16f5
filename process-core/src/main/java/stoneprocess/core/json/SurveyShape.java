package stoneprocess.core.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * A survey, by the table {@link SurveyField}: a section is an object, a field that is not known is left out or written
 * {@code "unknown"}.
 */
final class SurveyShape implements Shape {
    private static final String TITLE = "title";
    private static final Typed ZONES = new Typed(List.class, List.of(Typed.of(Zone.class)));
    private static final Typed READINGS = new Typed(List.class, List.of(Typed.of(GlossReading.class)));

    /** An answer to the field that was read before it. */
    static final Shape ANSWER = Shape.of(
            SurveyShape::answer,
            node -> read(field(node), node),
            definitions -> Shape.object(
                    "type",
                    List.of("string", "object", "array"),
                    "description",
                    "An answer to the field, as the schema of " + FloorSurvey.FORMAT + " describes it."));

    /** One member of an answer to the field that was read before it. */
    static final Shape MEMBER = Shape.of(
            SurveyShape::answer,
            node -> {
                SurveyField<?> field = field(node);
                Node alone = new Node(node.path(), List.of(node.value()), node.scope());
                if (shape(field.kind()).read(alone) instanceof Collection<?> members) {
                    return members.iterator().next();
                }
                throw new InvalidInputException(node.path(), field.name(), "a field that takes a set or a list");
            },
            definitions -> Shape.object("type", "string"));

    private static SurveyField<?> field(Node node) {
        return (SurveyField<?>) node.scope().find("field");
    }

    /** The shape of what a field takes. */
    private static Shape shape(FieldKind kind) {
        if (kind instanceof FieldKind.Choice choice) {
            return Shapes.of(choice.type());
        }
        if (kind instanceof FieldKind.Choices choices) {
            return Shapes.of(new Typed(Set.class, List.of(Typed.of(choices.type()))));
        }
        if (kind instanceof FieldKind.Measure measure) {
            return Amount.of(measure.dimension()).alone();
        }
        return kind instanceof FieldKind.Grades ? Shapes.list(Leaves.GRADE_KEY) : Leaves.TEXT;
    }

    private static Object answer(Object answer, Grades grades) {
        if (answer instanceof Collection<?> members) {
            return members.stream().map(member -> answer(member, grades)).toList();
        }
        if (answer instanceof Quantity quantity) {
            return Amount.of(quantity.dimension()).alone().print(quantity, grades);
        }
        if (answer instanceof AbrasiveGrade grade) {
            return grades.key(grade);
        }
        return answer instanceof Term term ? term.key() : answer;
    }

    private static Object read(SurveyField<?> field, Node node) {
        try {
            if (field.kind() instanceof FieldKind.Measure measure) {
                return measured(field, measure, node);
            }
            Object answer = shape(field.kind()).read(node);
            return node.checked(() -> field.check(answer));
        } catch (InvalidInputException e) {
            throw e.field().equals(node.path())
                    ? new InvalidInputException(e.field(), e.value(), e.accepted() + ", or " + Node.UNKNOWN)
                    : e;
        }
    }

    /** An answer is refused in the unit in which it is told. */
    private static Object measured(SurveyField<?> field, FieldKind.Measure measure, Node node) {
        Unit kept = measure.dimension().unit();
        double low = measure.limits().low();
        double high = measure.limits().high();
        double usual = low > 0 ? Math.min(10 * low, high) : high / 10;
        node.objectLike("{\"value\": " + rounded(usual, kept) + ", \"unit\": \"" + kept.symbol() + "\"}");
        Quantity answer = (Quantity) shape(measure).read(node);
        Unit told = Unit.of(measure.dimension()).stream()
                .filter(unit -> unit.symbol().equals(node.get("unit").value()))
                .findFirst()
                .orElse(kept);
        try {
            return field.check(answer);
        } catch (InvalidInputException e) {
            throw new InvalidInputException(
                    node.path(),
                    node.get("value").number().stripTrailingZeros().toPlainString() + " " + told.symbol(),
                    "a value from " + rounded(low, told) + " to " + rounded(high, told) + " " + told.symbol());
        }
    }

    /** A kept number in a unit, to four digits. */
    private static String rounded(double value, Unit unit) {
        return unit.fromKept(BigDecimal.valueOf(value))
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static Map<String, Map<String, SurveyField<?>>> sections() {
        Map<String, Map<String, SurveyField<?>>> sections = new LinkedHashMap<>();
        for (SurveyField<?> field : SurveyField.all()) {
            sections.computeIfAbsent(field.section(), name -> new LinkedHashMap<>())
                    .put(field.shortName(), field);
        }
        return sections;
    }

    private static List<String> names() {
        List<String> names = new ArrayList<>(List.of(RecordShape.FORMAT, TITLE));
        names.addAll(sections().keySet());
        names.addAll(List.of("zones", "readings"));
        return names;
    }

    @Override
    public Object print(Object value, Grades grades) {
        FloorSurvey survey = (FloorSurvey) value;
        Map<String, Object> printed = Shape.object(RecordShape.FORMAT, FloorSurvey.FORMAT, TITLE, survey.title());
        sections().forEach((section, fields) -> {
            Map<String, Object> answers = new LinkedHashMap<>();
            fields.forEach((name, field) ->
                    survey.answer(field).value().ifPresent(answer -> answers.put(name, answer(answer, grades))));
            if (!answers.isEmpty()) {
                printed.put(section, answers);
            }
        });
        if (!survey.zones().isEmpty()) {
            printed.put("zones", Shapes.of(ZONES).print(survey.zones(), grades));
        }
        if (!survey.readings().isEmpty()) {
            printed.put("readings", Shapes.of(READINGS).print(survey.readings(), grades));
        }
        return Extras.insert(survey.extras(), printed);
    }

    @Override
    @SuppressWarnings("unchecked")
    public Object read(Node around) {
        Extras extras = new Extras(around.path());
        Node node = around.with(around.scope().with(extras))
                .form(FloorSurvey.READ_FORMATS)
                .only(names());
        FloorSurvey.Builder builder = node.checkedParts(
                names(), () -> FloorSurvey.builder(node.get(TITLE).text()));
        List<InvalidInputException> refused = new ArrayList<>();
        sections()
                .forEach((section, fields) -> node.optional(section).ifPresent(answers -> {
                    answers.only(fields.keySet());
                    fields.forEach((name, field) -> answers.known(name).ifPresent(answer -> {
                        try {
                            builder.put(field, read(field, answer));
                        } catch (InvalidInputException e) {
                            refused.add(e);
                        }
                    }));
                }));
        if (!refused.isEmpty()) {
            refused.stream().skip(1).forEach(refused.get(0)::addSuppressed);
            throw refused.get(0);
        }
        node.optional("zones")
                .map(zones -> ZoneShares.told(zones, node))
                .ifPresent(zones -> builder.zones((List<Zone>) Shapes.of(ZONES).read(zones)));
        node.optional("readings")
                .ifPresent(readings -> builder.readings(
                        (List<GlossReading>) Shapes.of(READINGS).read(readings)));
        builder.extras(extras.kept());
        return node.checkedParts(names(), builder::build);
    }

    @Override
    public Map<String, Object> schema(Definitions definitions) {
        return RecordShape.ofItsOwnForm(FloorSurvey.READ_FORMATS);
    }

    /** How an answer is found out, where the table says it. */
    static String howFound(String field) {
        return SurveyField.all().stream()
                .filter(listed -> listed.name().equals(field))
                .map(listed -> "To find out: " + listed.howFound().key() + ".")
                .findFirst()
                .orElse("");
    }

    /** The schema of the survey itself. */
    static Map<String, Object> objectSchema(Definitions definitions) {
        Map<String, Object> properties = Shape.object(
                RecordShape.FORMAT,
                Leaves.words(FloorSurvey.READ_FORMATS.stream()),
                TITLE,
                Leaves.text(200).schema(definitions));
        sections().forEach((section, fields) -> {
            Map<String, Object> answers = new LinkedHashMap<>();
            fields.forEach((name, field) -> answers.put(name, schema(field, definitions)));
            properties.put(section, Leaves.objectSchema(answers, List.of()));
        });
        properties.put("zones", Shapes.of(ZONES).schema(definitions));
        ZoneShares.describe(definitions);
        properties.put(
                "readings",
                definitions.answer("readings", "", Shapes.of(READINGS).schema(definitions)));
        return Leaves.objectSchema(properties, List.of(RecordShape.FORMAT, TITLE));
    }

    private static Map<String, Object> schema(SurveyField<?> field, Definitions definitions) {
        String limits = field.kind() instanceof FieldKind.Measure measure
                ? "Accepted: " + SurveyField.printLimits(measure) + "."
                : "";
        return definitions.answer(field.name(), limits, schema(field.kind(), definitions));
    }

    private static Map<String, Object> schema(FieldKind kind, Definitions definitions) {
        if (kind instanceof FieldKind.Choice choice) {
            return words(Leaves.keys(choice.type()));
        }
        if (kind instanceof FieldKind.StoneName) {
            return words(StoneCatalogue.standard().all().stream().map(Stone::name));
        }
        return Shape.object("oneOf", List.of(shape(kind).schema(definitions), Shape.object("const", Node.UNKNOWN)));
    }

    private static Map<String, Object> words(Stream<String> words) {
        return Leaves.words(Stream.concat(words, Stream.of(Node.UNKNOWN)));
    }
}
