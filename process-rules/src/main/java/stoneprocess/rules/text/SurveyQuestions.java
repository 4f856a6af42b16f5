package stoneprocess.rules.text;

import stoneprocess.core.json.Json;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** The questions of a survey in words, for whoever asks them. */
public final class SurveyQuestions {
    private final Texts texts;

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
        return texts.word(Wording.sentences(FieldWords.question(field), FieldWords.howFound(field)));
    }

    /** The JSON schema of a survey, where each field is described by its question. */
    public String schema() {
        return Json.SURVEY.schema(this::question);
    }
}
