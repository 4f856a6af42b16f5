package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.json.Json;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** The questions of a survey in words, for whoever asks them: what is asked, how it is found out, what may be answered. */
public final class SurveyQuestions {
    private static final String DAMAGES = "damages.";
    private static final int ONE_LINE = 84;

    private final Texts texts;
    private final Parameters parameters = Parameters.standard();

    /** The questions in a language. */
    public SurveyQuestions(Texts texts) {
        this.texts = texts;
    }

    /**
     * The question of a field and how its answer is found out.
     *
     * @param field name of a field, such as {@code site.area}, {@code damages.scratches} or {@code readings}
     * @throws stoneprocess.core.problem.InvalidInputException for a name that no survey has
     */
    public String question(String field) {
        return texts.word(asked(field));
    }

    private static Wording asked(String field) {
        return Wording.sentences(FieldWords.question(field), FieldWords.howFound(field));
    }

    /** The JSON schema of a survey, where each field is described by its question and each word by its meaning. */
    public String schema() {
        return Json.SURVEY.schema(this::described);
    }

    private String described(String field) {
        List<Wording> words = words(field);
        return words.isEmpty()
                ? question(field)
                : question(field) + " " + texts.word(Wording.list(Joint.SEMICOLON, words));
    }

    /**
     * The whole form: every field with its question, how to find out, and what it takes, in the order of the survey; first in
     * each section what a laboratory has to clear before anything is touched.
     */
    public Document form() {
        Draft draft = Draft.titled(phrase("form.title"), parameters)
                .paragraph("form.before")
                .paragraph("form.caution");
        Map<String, List<SurveyField<?>>> sections = new LinkedHashMap<>();
        SurveyField.all()
                .forEach(field -> sections.computeIfAbsent(field.section(), section -> new ArrayList<>())
                        .add(field));
        sections.forEach((section, fields) -> {
            draft.section(Wording.name(section));
            fields.stream()
                    .sorted(Comparator.comparing(field -> field.howFound() != HowFound.LABORATORY))
                    .forEach(field -> draft.bullet(entry(field.name()), taken(field)));
        });
        draft.section(Wording.name("zones")).paragraph("form.zones");
        Stream.of(ZoneKind.values()).forEach(kind -> draft.bullet(word(kind)));
        draft.paragraph("form.damages");
        for (DamageKind kind : DamageKind.values()) {
            draft.bullet(entry(DAMAGES + kind.key()), listed(words(DAMAGES + kind.key())));
        }
        return draft.section(Wording.name("readings"))
                .paragraph("form.readings")
                .document();
    }

    private static Wording entry(String field) {
        return phrase("form.field").with("field", field).with("question", asked(field));
    }

    private List<Item> taken(SurveyField<?> field) {
        List<Wording> words = words(field.name());
        if (!words.isEmpty()) {
            return listed(words);
        }
        String key = field.kind() instanceof FieldKind.Measure
                ? "form.example." + field.name()
                : field.kind() instanceof FieldKind.Grades ? "form.grades" : "form.stone-name";
        return List.of(new Item.Paragraph(phrase(key)));
    }

    /** What a field takes: in one line where it is short. */
    private List<Item> listed(List<Wording> words) {
        Wording inOneLine = Wording.list(Joint.SEMICOLON, words);
        if (texts.word(inOneLine).length() < ONE_LINE) {
            return List.of(new Item.Paragraph(phrase("form.words").with("words", inOneLine)));
        }
        return words.stream()
                .<Item>map(word -> new Item.Bullet(false, word, List.of()))
                .toList();
    }

    /** The words that a field takes, each with what it means; none for a field that takes no words of its own. */
    private List<Wording> words(String field) {
        return terms(field).map(this::word).toList();
    }

    private static Stream<? extends Term> terms(String field) {
        if (field.startsWith(DAMAGES)) {
            return Term.parse(DamageKind.class, field.substring(DAMAGES.length()), "field").terms().stream();
        }
        if (field.equals("readings")) {
            return Stream.of();
        }
        FieldKind kind = SurveyField.named(field).kind();
        Optional<Class<? extends Enum<?>>> type = kind instanceof FieldKind.Choice choice
                ? Optional.of(choice.type())
                : kind instanceof FieldKind.Choices choices ? Optional.of(choices.type()) : Optional.empty();
        return type.stream()
                .flatMap(words -> Stream.of(words.getEnumConstants()))
                .map(Term.class::cast);
    }

    private Wording word(Term term) {
        if (term instanceof Presence
                || texts.word(meaning(term)).replace('-', ' ').equals(term.key().replace('-', ' '))) {
            return Wording.name(term.key());
        }
        return phrase("form.word").with("key", term.key()).with("meaning", meaning(term));
    }

    /** The meaning of a word in the form; for a class of measured values also the value at which it begins. */
    private Wording meaning(Term term) {
        String key = "form." + Wording.key(term);
        Wording meaning = Language.english().has(key) ? phrase(key) : ValueWords.name(term);
        return limit(term)
                .<Wording>map(from -> phrase("form.from")
                        .with("meaning", meaning)
                        .with("from", Wording.amount(parameters.parameter(from).value())))
                .orElse(meaning);
    }

    /** The parameter at which a class of a measured damage, or a finish, begins. */
    private Optional<String> limit(Term term) {
        Stream<String> scales = term instanceof Goal
                ? Stream.of(Finish.SCALE.name())
                : Stream.concat(
                        Stream.of(Finish.SCALE.name()).filter(name -> term instanceof Finish),
                        Stream.of(DamageKind.values())
                                .filter(kind -> kind.terms().contains(term))
                                .flatMap(kind -> kind.depthScale().stream()));
        return scales.map(scale -> scale + "." + term.key())
                .filter(parameters::has)
                .findFirst();
    }
}
