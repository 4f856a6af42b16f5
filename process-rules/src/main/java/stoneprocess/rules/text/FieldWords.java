package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for the questions of a survey, for how they are settled and for what is answered. */
final class FieldWords {
    private static final String READINGS = "readings";
    private static final String SURFACE = SurfaceState.class.getSimpleName() + ".";
    private static final String DAMAGES = "damages.";
    private static final String HOW = "how.";

    private FieldWords() {}

    static Wording question(String field) {
        return phrase("field." + field);
    }

    /**
     * The question of a field on this floor: where a damage was told without its share, the share is asked for, and where
     * a sample is to be matched, its reading.
     */
    static Wording question(FloorSurvey survey, String field) {
        if (field.equals(SurveyField.GOAL_GLOSS.name())
                && survey.answer(SurveyField.GOAL).value().equals(Optional.of(Goal.MATCH_SAMPLE))) {
            return phrase("field.owner.gloss.sample");
        }
        return isShareLacking(survey, field) ? phrase("field-share." + field) : question(field);
    }

    private static boolean isShareLacking(FloorSurvey survey, String field) {
        if (!field.startsWith(DAMAGES)) {
            return false;
        }
        List<Damage> told = survey.zones().stream()
                .flatMap(zone -> zone.damage(kind(field)).value().stream())
                .filter(damage -> !damage.equals(Damage.none(damage.kind())))
                .toList();
        return told.stream().anyMatch(damage -> damage.share().isEmpty());
    }

    /** Whether a question is about damage. */
    static boolean isDamage(String field) {
        return field.startsWith(DAMAGES);
    }

    private static DamageKind kind(String field) {
        return Term.parse(DamageKind.class, field.substring(DAMAGES.length()), "field");
    }

    /** The quickest test that settles a field of the survey; none for damage and readings, which are looked at and read. */
    static Optional<HowFound> howItIsFound(String field) {
        return field.equals(READINGS) || field.startsWith(DAMAGES)
                ? Optional.empty()
                : Optional.of(SurveyField.named(field).howFound());
    }

    /** The quickest test that settles it, in words of its own where the bundles have them. */
    static Wording.Phrase howFound(String field) {
        if (field.equals(READINGS)) {
            return phrase("question.how-readings");
        }
        if (Language.english().has(HOW + field)) {
            return phrase(HOW + field);
        }
        return Wording.of(SurveyField.named(field).howFound());
    }

    /** The same on a floor, where nothing waits for a laboratory unless something is suspect. */
    static Wording howFound(Recommendation recommendation, String field) {
        return PlanWords.clearedPhrase(howFound(field).key(), recommendation);
    }

    static Wording answer(FieldAnswer answer) {
        if (!answer.known()) {
            return phrase("fact.nobody-knows");
        }
        return answer.given().isEmpty()
                ? phrase("answer.none-there")
                : Wording.list(Joint.SEMICOLON, answer.given(), given -> given(answer.field(), given));
    }

    private static Wording given(String field, Given given) {
        List<Wording> words = new ArrayList<>();
        given.keys().forEach(key -> words.add(word(field, key)));
        given.amounts().forEach(amount -> words.add(Words.surveyed(amount)));
        Wording answer = orNone(words);
        return given.zone().map(zone -> inZone(zone, answer)).orElse(answer);
    }

    private static Wording inZone(String zone, Wording answer) {
        return phrase("answer.in-zone").with("zone", zone).with("answer", answer);
    }

    private static Wording orNone(List<Wording> words) {
        return words.isEmpty() ? phrase("answer.none-there") : Wording.list(Joint.COMMA, words);
    }

    /** The word for a key that answers a field. */
    static Wording word(String field, String key) {
        if (field.equals(READINGS)) {
            return Language.english().has(SURFACE + key)
                    ? phrase(SURFACE + key)
                    : phrase("answer.degrees").with("angle", key);
        }
        return constants(field)
                .filter(term -> term.key().equals(key))
                .findFirst()
                .map(ValueWords::name)
                .orElseGet(() -> field.equals(SurveyField.STONE_NAME.name()) ? stone(key) : ValueWords.grade(key));
    }

    /** What a stone is called: in English as the table of stones has it. */
    private static Wording stone(String key) {
        return new Wording.Tabled("stone." + key, key.replace('-', ' '));
    }

    private static Stream<Term> constants(String field) {
        Optional<Class<? extends Enum<?>>> type = Optional.empty();
        if (field.startsWith(DAMAGES)) {
            type = Optional.of(kind(field).classes());
        } else if (SurveyField.named(field).kind() instanceof FieldKind.Choice choice) {
            type = Optional.of(choice.type());
        } else if (SurveyField.named(field).kind() instanceof FieldKind.Choices choices) {
            type = Optional.of(choices.type());
        }
        return type.stream()
                .flatMap(choices -> Stream.of(choices.getEnumConstants()).map(Term.class::cast));
    }

    /** The word for a typed answer. */
    private static Wording value(String field, Object value) {
        if (value instanceof Quantity quantity) {
            return Words.surveyed(quantity);
        }
        if (value instanceof Damage damage) {
            List<Wording> parts = new ArrayList<>();
            damage.look().ifPresent(look -> parts.add(ValueWords.name(look)));
            damage.depth().ifPresent(depth -> parts.add(Wording.amount(depth)));
            damage.share().ifPresent(share -> parts.add(Wording.amount(share)));
            return Wording.list(Joint.COMMA, parts);
        }
        if (value instanceof Collection<?> members) {
            return orNone(members.stream().map(member -> value(field, member)).toList());
        }
        if (value instanceof Term term) {
            return word(field, term.key());
        }
        return value instanceof AbrasiveGrade grade ? ValueWords.grade(grade) : word(field, (String) value);
    }

    /** A change: what it is, what it becomes, and what it was. */
    static Wording change(Change change) {
        if (change instanceof Change.OfMember member) {
            return phrase(member.added() ? "change.more" : "change.less")
                    .with("question", question(change.name()))
                    .with("value", value(change.name(), member.member()));
        }
        if (change instanceof Change.OfDamage damage) {
            return becomes(change, inZone(damage.zone(), found(change, damage.from(), damage.to())));
        }
        Change.OfAnswer answer = (Change.OfAnswer) change;
        return becomes(change, found(change, answer.from(), answer.to()));
    }

    /** What a change would have to overcome: the answer as it is, which is open where there is none. */
    static Wording asItIs(Change change) {
        if (change instanceof Change.OfDamage damage && damage.from().isPresent()) {
            return inZone(damage.zone(), value(change.name(), damage.from().get()));
        }
        if (change instanceof Change.OfAnswer answer && answer.from().isPresent()) {
            return value(change.name(), answer.from().get());
        }
        return change instanceof Change.OfMember member
                ? phrase(member.added() ? "change.without" : "change.with")
                        .with("value", value(change.name(), member.member()))
                : phrase("fact.nobody-knows");
    }

    private static Wording becomes(Change change, Wording now) {
        return Wording.sentences(question(change.name()), now);
    }

    private static Wording found(Change change, Optional<?> from, Object to) {
        Wording now = value(change.name(), to);
        return from.<Wording>map(before ->
                        phrase("change.instead").with("now", now).with("before", value(change.name(), before)))
                .orElseGet(() -> phrase("change.found").with("now", now));
    }

    /** Who can bring a change about, or the work on the floor that does. */
    static Wording who(Change change) {
        String work = "change.work." + change.name();
        if (!change.isFoundOut() && Language.english().has(work)) {
            return phrase(work);
        }
        return change.isFoundOut() ? phrase("change.to-find-out") : Wording.of(change.changedBy());
    }
}
