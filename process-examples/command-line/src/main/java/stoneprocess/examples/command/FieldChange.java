package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;

/**
 * A fact of a survey made another, as the command line says it: {@code owner.goal=hone},
 * {@code build-up.thickness=30 mm}, {@code lanes/damages.scratches=seen, 40 %}.
 *
 * @param zone name of the zone, for damage
 * @param field name of the field, or {@code damages.} and a kind
 * @param value what it becomes
 */
record FieldChange(Optional<String> zone, String field, String value) {
    private static final String DAMAGES = "damages.";
    private static final String UNKNOWN = "unknown";
    private static final String NONE = "none";

    /**
     * Reads a change.
     *
     * @throws InvalidInputException for another form, and for a field that a survey does not have
     */
    static FieldChange parse(String text) {
        int equals = text.indexOf('=');
        if (equals < 1) {
            throw new InvalidInputException("FIELD=VALUE", text, "a field, an equals sign and a value");
        }
        String name = text.substring(0, equals).strip();
        int slash = name.lastIndexOf('/');
        Optional<String> zone = slash < 0 ? Optional.empty() : Optional.of(name.substring(0, slash));
        String field = name.substring(slash + 1);
        boolean known = FieldAnswer.names().contains(field) && !field.equals("readings");
        if (!known || field.startsWith(DAMAGES) != zone.isPresent()) {
            throw new InvalidInputException(
                    "FIELD",
                    name,
                    "one of "
                            + String.join(
                                    ", ",
                                    FieldAnswer.names().stream()
                                            .filter(question -> !question.equals("readings"))
                                            .map(question ->
                                                    question.startsWith(DAMAGES) ? "ZONE/" + question : question)
                                            .toList()));
        }
        return new FieldChange(zone, field, text.substring(equals + 1).strip());
    }

    /**
     * The survey with the change.
     *
     * @throws InvalidInputException for a value that the field does not take, for a zone that the survey does not have,
     *     and when nothing changes
     */
    FloorSurvey in(FloorSurvey survey, GritSequence sequence) {
        FloorSurvey changed = field.startsWith(DAMAGES) ? damaged(survey) : answered(survey, sequence);
        if (changed.equals(survey)) {
            throw new InvalidInputException(field, value, "another answer than the survey's");
        }
        return changed;
    }

    private FloorSurvey answered(FloorSurvey survey, GritSequence sequence) {
        SurveyField<?> asked = SurveyField.named(field);
        FloorSurvey.Builder builder = survey.toBuilder();
        return (value.equals(UNKNOWN) ? builder.unknown(asked) : builder.put(asked, typed(asked, sequence))).build();
    }

    private Object typed(SurveyField<?> asked, GritSequence sequence) {
        if (asked.kind() instanceof FieldKind.Choice choice) {
            return constant(choice.type(), value);
        }
        if (asked.kind() instanceof FieldKind.Choices choices) {
            Set<Object> chosen = new LinkedHashSet<>();
            parts().forEach(part -> chosen.add(constant(choices.type(), part)));
            return chosen;
        }
        if (asked.kind() instanceof FieldKind.Grades) {
            return parts().stream().map(part -> sequence.get(part, field)).toList();
        }
        return asked.kind() instanceof FieldKind.Measure ? Quantity.parse(value, field) : value;
    }

    private Object constant(Class<? extends Enum<?>> type, String key) {
        List<String> keys = new ArrayList<>();
        for (Enum<?> constant : type.getEnumConstants()) {
            if (((Term) constant).key().equals(key)) {
                return constant;
            }
            keys.add(((Term) constant).key());
        }
        throw new InvalidInputException(field, key, "one of " + String.join(", ", keys) + ", or " + UNKNOWN);
    }

    private List<String> parts() {
        return value.equals(NONE) ? List.of() : List.of(value.split(" *, *"));
    }

    private FloorSurvey damaged(FloorSurvey survey) {
        String name = zone.orElseThrow();
        Zone before = survey.zones().stream()
                .filter(candidate -> candidate.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        "ZONE",
                        name,
                        survey.zones().isEmpty()
                                ? "a survey with zones"
                                : "one of "
                                        + String.join(
                                                ", ",
                                                survey.zones().stream()
                                                        .map(Zone::name)
                                                        .toList())));
        DamageKind kind = Term.parse(DamageKind.class, field.substring(DAMAGES.length()), "FIELD");
        Zone after = value.equals(UNKNOWN) ? before.without(kind) : before.with(damage(kind));
        return survey.toBuilder().replace(before, after).build();
    }

    /** A look or a depth, then the share. */
    private Damage damage(DamageKind kind) {
        List<String> parts = List.of(value.split(" *, *"));
        Optional<Term> look = Optional.empty();
        Optional<Length> depth = Optional.empty();
        Optional<Share> share = Optional.empty();
        for (String part : parts) {
            if (!part.contains(" ")) {
                look = Optional.of((Term) constant(kind.classes(), part));
            } else if (Quantity.parse(part, field) instanceof Length length) {
                depth = Optional.of(length);
            } else if (Quantity.parse(part, field) instanceof Share of) {
                share = Optional.of(of);
            } else {
                throw new InvalidInputException(field, part, "a look, a depth or a share, for example seen, 40 %");
            }
        }
        return new Damage(kind, look, depth, share);
    }
}
