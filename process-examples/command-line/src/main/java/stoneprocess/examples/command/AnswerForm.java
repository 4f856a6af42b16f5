package stoneprocess.examples.command;

import java.util.function.BiFunction;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.json.Form;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.text.AnswerText;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Texts;

/** How an answer about a plan is printed. */
final class AnswerForm {
    @Option(names = "--json", description = "Print the answer as JSON and nothing else.")
    private boolean json;

    @Option(names = "--short", description = "Print one line of fewer than 140 characters.")
    private boolean brief;

    @Mixin
    private Reader reader = new Reader();

    /** What differs between two recommendations. */
    void print(Console console, Recommendation one, Recommendation other) {
        print(
                console,
                Json.DIFFERENCE,
                Difference.between(one, other),
                (text, difference) -> text.document(difference, one, other));
    }

    <T> void print(Console console, Form<T> form, T answer, BiFunction<AnswerText, T, Document> words) {
        if (json) {
            console.print(form.print(answer));
            return;
        }
        Texts texts = reader.texts();
        Document document = words.apply(new AnswerText(Rulebase.standard().parameters()), answer);
        console.print(brief ? texts.line(document) + "\n" : texts.page(document));
    }
}
