package stoneprocess.examples.command;

import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
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

    void print(Console console, Rulebase rulebase, Supplier<String> asJson, Function<AnswerText, Document> answer) {
        if (json) {
            console.print(asJson.get());
            return;
        }
        Texts texts = reader.texts();
        Document document = answer.apply(new AnswerText(rulebase.parameters()));
        console.print(brief ? texts.line(document) + "\n" : texts.page(document));
    }
}
