package stoneprocess.core.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * What a survey answers to one question.
 *
 * @param field name of the survey field, {@code damages.} and a kind of damage, or {@code readings}
 * @param known false when nobody has found out; a kind of damage is known when some zone tells it
 * @param given what is said; none when it is not known, or when somebody looked and there is none
 */
public record FieldAnswer(String field, boolean known, List<Given> given) {
    private static final String DAMAGES = "damages.";
    private static final String READINGS = "readings";

    public FieldAnswer {
        Refuse.nulls(FieldAnswer.class, field, given);
        given = List.copyOf(given);
    }

    /** The names of all questions, in the order of a survey form. */
    public static List<String> names() {
        return Stream.of(
                        SurveyField.all().stream().map(SurveyField::name),
                        Stream.of(DamageKind.values()).map(kind -> DAMAGES + kind.key()),
                        Stream.of(READINGS))
                .flatMap(names -> names)
                .toList();
    }

    /**
     * What a survey answers.
     *
     * @param survey the survey
     * @param field one of {@link #names()}
     * @throws InvalidInputException when there is no such question
     */
    public static FieldAnswer of(FloorSurvey survey, String field) {
        if (field.equals(READINGS)) {
            List<Given> given =
                    survey.readings().stream().map(FieldAnswer::reading).toList();
            return new FieldAnswer(field, !given.isEmpty(), given);
        }
        if (field.startsWith(DAMAGES)) {
            return damages(survey, field);
        }
        Optional<?> value = survey.answer(SurveyField.named(field)).value();
        return new FieldAnswer(
                field, value.isPresent(), value.map(FieldAnswer::given).orElse(List.of()));
    }

    /** Every question that a survey answers, in the order of a survey form. */
    public static List<FieldAnswer> known(FloorSurvey survey) {
        return names().stream()
                .map(name -> of(survey, name))
                .filter(FieldAnswer::known)
                .toList();
    }

    private static FieldAnswer damages(FloorSurvey survey, String field) {
        DamageKind kind = Term.parse(DamageKind.class, field.substring(DAMAGES.length()), "field");
        List<Given> given = new ArrayList<>();
        for (Zone zone : survey.zones()) {
            zone.damage(kind).value().ifPresent(damage -> given.add(damage(zone, damage)));
        }
        return new FieldAnswer(field, !given.isEmpty(), given);
    }

    private static Given damage(Zone zone, Damage damage) {
        List<Quantity> amounts = new ArrayList<>();
        damage.depth().ifPresent(amounts::add);
        damage.share().ifPresent(amounts::add);
        return new Given(
                Optional.of(zone.name()), damage.look().map(Term::key).stream().toList(), amounts);
    }

    private static Given reading(GlossReading reading) {
        return new Given(
                Optional.of(reading.zone()),
                List.of(reading.geometry().key(), reading.state().key()),
                List.of(reading.gloss()));
    }

    private static List<Given> given(Object value) {
        if (value instanceof Collection<?> members) {
            return members.stream().map(FieldAnswer::one).toList();
        }
        return List.of(one(value));
    }

    private static Given one(Object value) {
        if (value instanceof Quantity quantity) {
            return new Given(Optional.empty(), List.of(), List.of(quantity));
        }
        return new Given(Optional.empty(), List.of(key(value)), List.of());
    }

    private static String key(Object value) {
        if (value instanceof Term term) {
            return term.key();
        }
        return value instanceof AbrasiveGrade grade ? grade.key() : (String) value;
    }
}
