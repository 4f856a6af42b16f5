package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;

/** Words for the questions of a survey, for how they are settled and for what is answered. */
final class FieldWords {
    private static final String READINGS = "readings";
    private static final String SURFACE = SurfaceState.class.getSimpleName() + ".";
    private static final String DAMAGES = "damages.";

    private final UnitSystem units;
    private final Phrases phrases;

    FieldWords(UnitSystem units, Phrases phrases) {
        this.units = units;
        this.phrases = phrases;
    }

    String question(String field) {
        return phrases.get("field." + field);
    }

    /** The quickest test that settles it. */
    String howFound(String field) {
        if (field.equals(READINGS)) {
            return phrases.get("question.how-readings");
        }
        return field.startsWith(DAMAGES)
                ? phrases.get("question.how-damages")
                : phrases.of(SurveyField.named(field).howFound());
    }

    String answer(FieldAnswer answer) {
        if (!answer.known()) {
            return phrases.get("fact.nobody-knows");
        }
        return answer.given().isEmpty()
                ? phrases.get("answer.none-there")
                : String.join(
                        "; ",
                        answer.given().stream()
                                .map(given -> given(answer.field(), given))
                                .toList());
    }

    private String given(String field, Given given) {
        List<String> words = new ArrayList<>();
        given.keys().forEach(key -> words.add(word(field, key)));
        given.amounts().forEach(amount -> words.add(units.print(amount)));
        String zone = given.zone().map(name -> name + ": ").orElse("");
        return zone + (words.isEmpty() ? phrases.get("answer.none-there") : String.join(", ", words));
    }

    /** The word for a key that answers a field. */
    String word(String field, String key) {
        if (field.equals(READINGS)) {
            return Phrases.has(SURFACE + key)
                    ? phrases.get(SURFACE + key)
                    : phrases.get("answer.degrees").formatted(key);
        }
        return constants(field)
                .filter(term -> term.key().equals(key))
                .findFirst()
                .map(term -> phrases.get(name(term)))
                .orElse(key.replace('-', ' '));
    }

    private static String name(Term term) {
        String name = Phrases.key(term) + ".name";
        return Phrases.has(name) ? name : Phrases.key(term);
    }

    private static Stream<Term> constants(String field) {
        Optional<Class<? extends Enum<?>>> type = Optional.empty();
        if (field.startsWith(DAMAGES)) {
            type = Optional.of(Term.parse(DamageKind.class, field.substring(DAMAGES.length()), "field")
                    .classes());
        } else if (SurveyField.named(field).kind() instanceof FieldKind.Choice choice) {
            type = Optional.of(choice.type());
        } else if (SurveyField.named(field).kind() instanceof FieldKind.Choices choices) {
            type = Optional.of(choices.type());
        }
        return type.stream()
                .flatMap(choices -> Stream.of(choices.getEnumConstants()).map(Term.class::cast));
    }

    /** The word for a typed answer. */
    String value(String field, Object value) {
        if (value instanceof Quantity quantity) {
            return units.print(quantity);
        }
        if (value instanceof Damage damage) {
            List<String> parts = new ArrayList<>();
            damage.look().ifPresent(look -> parts.add(phrases.get(name(look))));
            damage.depth().ifPresent(depth -> parts.add(units.print(depth)));
            damage.share().ifPresent(share -> parts.add(units.print(share)));
            return String.join(", ", parts);
        }
        if (value instanceof Collection<?> members) {
            return members.isEmpty()
                    ? phrases.get("answer.none-there")
                    : String.join(
                            ", ",
                            members.stream().map(member -> value(field, member)).toList());
        }
        if (value instanceof Term term) {
            return word(field, term.key());
        }
        String key = value instanceof AbrasiveGrade grade ? grade.key() : (String) value;
        return word(field, key);
    }

    /** A change: what it is, what it becomes, and what it was. */
    String change(Change change) {
        if (change instanceof Change.OfMember member) {
            String word = value(change.name(), member.member());
            return phrases.get(member.added() ? "change.more" : "change.less").formatted(question(change.name()), word);
        }
        Optional<?> from;
        Object to;
        String zone = "";
        if (change instanceof Change.OfDamage damage) {
            from = damage.from();
            to = damage.to();
            zone = damage.zone() + ": ";
        } else {
            Change.OfAnswer answer = (Change.OfAnswer) change;
            from = answer.from();
            to = answer.to();
        }
        String now = from.map(value ->
                        phrases.get("change.instead").formatted(value(change.name(), to), value(change.name(), value)))
                .orElseGet(() -> phrases.get("change.found").formatted(value(change.name(), to)));
        return question(change.name()) + " " + zone + now;
    }

    /** Who can bring a change about. */
    String who(Change change) {
        return phrases.get(change.isFoundOut() ? "change.to-find-out" : Phrases.key(change.changedBy()));
    }
}
