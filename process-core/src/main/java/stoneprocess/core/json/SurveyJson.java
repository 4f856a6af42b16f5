package stoneprocess.core.json;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;

/**
 * Surveys as JSON. What is not known is left out or written {@code "unknown"}; an empty list and {@code "none"} mean
 * that somebody looked. Fields and their kinds come from the {@link SurveyField} table. Printing and parsing give back
 * an equal survey.
 */
public final class SurveyJson {
    private static final String WHAT = "survey";
    private static final String UNKNOWN = "unknown";

    private SurveyJson() {}

    /**
     * Reads a survey whose grades on hand are of the usual sequence.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static FloorSurvey read(String json) {
        return read(json, GritSequence.standard());
    }

    /**
     * Reads a survey whose grades on hand are of the given sequence.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static FloorSurvey read(String json, GritSequence sequence) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT)), sequence));
    }

    /**
     * Prints a survey; what is not known is left out.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(FloorSurvey survey) {
        return Jackson.with(() -> Tree.print(tree(survey)));
    }

    static FloorSurvey read(Node root, GritSequence sequence) {
        root.form(WHAT, FloorSurvey.FORMAT);
        Map<String, List<SurveyField<?>>> sections = sections();
        List<String> accepted = new ArrayList<>(List.of("format", "title"));
        accepted.addAll(sections.keySet());
        accepted.addAll(List.of("zones", "readings"));
        root.only(accepted);
        Node title = root.get("title");
        FloorSurvey.Builder builder = root.checkedParts(() -> FloorSurvey.builder(title.text()));
        sections.forEach((section, fields) ->
                root.optional(section).ifPresent(node -> section(node, fields, sequence, builder)));
        root.optional("zones").ifPresent(zones -> zones.array().forEach(zone -> builder.zone(zone(zone))));
        root.optional("readings")
                .ifPresent(readings -> readings.array().forEach(reading -> builder.reading(reading(reading))));
        return root.checkedParts(builder::build);
    }

    private static Map<String, List<SurveyField<?>>> sections() {
        Map<String, List<SurveyField<?>>> sections = new LinkedHashMap<>();
        SurveyField.all()
                .forEach(field -> sections.computeIfAbsent(field.section(), name -> new ArrayList<>())
                        .add(field));
        return sections;
    }

    private static void section(
            Node node, List<SurveyField<?>> fields, GritSequence sequence, FloorSurvey.Builder builder) {
        node.only(fields.stream().map(SurveyField::shortName).toList());
        for (SurveyField<?> field : fields) {
            node.optional(field.shortName())
                    .filter(answer -> !answer.isText(UNKNOWN))
                    .ifPresent(answer -> {
                        Object value = value(answer, field.kind(), sequence);
                        answer.checked(() -> builder.put(field, value));
                    });
        }
    }

    static Object value(Node node, FieldKind kind, GritSequence sequence) {
        if (kind instanceof FieldKind.Choice choice) {
            return term(node, choice.type());
        }
        if (kind instanceof FieldKind.Choices choices) {
            return terms(node, choices.type());
        }
        if (kind instanceof FieldKind.Measure measure) {
            return node.quantity(measure.dimension());
        }
        if (kind instanceof FieldKind.Grades) {
            return node.list(grade -> sequence.get(grade.text(), grade.path()));
        }
        return node.text();
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    static Term term(Node node, Class<? extends Enum<?>> type) {
        return (Term) node.term((Class) type);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Set<?> terms(Node node, Class<? extends Enum<?>> type) {
        return node.terms((Class) type);
    }

    private static Zone zone(Node node) {
        node.only(List.of("name", "kind", "share", "damages"));
        String name = node.get("name").text();
        ZoneKind kind = node.get("kind").term(ZoneKind.class);
        Share share = (Share) node.get("share").quantity(Dimension.SHARE);
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        node.optional("damages").ifPresent(found -> {
            found.only(Term.keys(List.of(DamageKind.values())));
            for (DamageKind damageKind : DamageKind.values()) {
                found.optional(damageKind.key())
                        .filter(damage -> !damage.isText(UNKNOWN))
                        .ifPresent(damage -> damages.put(damageKind, damage(damage, found, damageKind)));
            }
        });
        return node.checkedParts(() -> new Zone(name, kind, share, damages));
    }

    static Damage damage(Node node, Node damages, DamageKind kind) {
        if (node.isText(kind.none().key()) || node.isText("none")) {
            return Damage.none(kind);
        }
        node.only(List.of("look", "depth", "share"));
        Optional<Term> look = node.optional("look").map(text -> term(text, kind.classes()));
        Optional<Length> depth = node.optional("depth").map(length -> (Length) length.quantity(Dimension.LENGTH));
        Optional<Share> share = node.optional("share").map(part -> (Share) part.quantity(Dimension.SHARE));
        return damages.checkedParts(() -> new Damage(kind, look, depth, share));
    }

    private static GlossReading reading(Node node) {
        node.only(List.of("zone", "geometry", "gloss", "state"));
        String zone = node.get("zone").text();
        Geometry geometry = node.get("geometry").term(Geometry.class);
        Gloss gloss = (Gloss) node.get("gloss").quantity(Dimension.GLOSS);
        SurfaceState state = node.get("state").term(SurfaceState.class);
        return node.checkedParts(() -> new GlossReading(zone, geometry, gloss, state));
    }

    static Map<String, Object> tree(FloorSurvey survey) {
        Fields root = new Fields().put("format", FloorSurvey.FORMAT).put("title", survey.title());
        sections().forEach((section, fields) -> {
            Fields answers = new Fields();
            for (SurveyField<?> field : fields) {
                survey.answer(field).value().ifPresent(value -> answers.put(field.shortName(), print(value)));
            }
            if (!answers.isEmpty()) {
                root.put(section, answers.tree());
            }
        });
        if (!survey.zones().isEmpty()) {
            root.put("zones", Fields.list(survey.zones(), SurveyJson::zone));
        }
        if (!survey.readings().isEmpty()) {
            root.put("readings", Fields.list(survey.readings(), SurveyJson::reading));
        }
        return root.tree();
    }

    static Object print(Object value) {
        if (value instanceof Quantity quantity) {
            return Fields.quantity(quantity);
        }
        if (value instanceof Term term) {
            return term.key();
        }
        if (value instanceof AbrasiveGrade grade) {
            return grade.key();
        }
        if (value instanceof Collection<?> members) {
            return members.stream().map(SurveyJson::print).toList();
        }
        return value;
    }

    private static Object zone(Zone zone) {
        Fields damages = new Fields();
        zone.damages().forEach((kind, damage) -> damages.put(kind.key(), damage(damage)));
        Fields fields = new Fields()
                .put("name", zone.name())
                .put("kind", zone.kind().key())
                .put("share", Fields.quantity(zone.share()));
        return damages.isEmpty()
                ? fields.tree()
                : fields.put("damages", damages.tree()).tree();
    }

    static Object damage(Damage damage) {
        if (damage.equals(Damage.none(damage.kind()))) {
            return "none";
        }
        return new Fields()
                .putIf("look", damage.look().map(Term::key))
                .putIf("depth", damage.depth().map(Fields::quantity))
                .putIf("share", damage.share().map(Fields::quantity))
                .tree();
    }

    private static Object reading(GlossReading reading) {
        return new Fields()
                .put("zone", reading.zone())
                .put("geometry", reading.geometry().key())
                .put("gloss", Fields.quantity(reading.gloss()))
                .put("state", reading.state().key())
                .tree();
    }
}
