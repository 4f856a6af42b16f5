package stoneprocess.examples.command;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.ExposureInput;
import stoneprocess.core.exposure.ExposureInputs;
import stoneprocess.core.json.Json;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.ExposureSheet;

/** How a question about exposure is answered. */
final class ExposureAnswer {
    @Option(names = "--json", description = "Print the question as JSON, for \"exposure file\".")
    private boolean json;

    @Mixin
    private Reader reader = new Reader();

    void print(Console console, ExposureInput input) {
        print(console, new ExposureInputs(List.of(input)));
    }

    /** The sheets, one after another. */
    void print(Console console, ExposureInputs asked) {
        if (json) {
            console.print(Json.EXPOSURE.print(asked));
            return;
        }
        Texts texts = reader.texts();
        console.print(ExposureSheet.of(asked).stream().map(texts::page).collect(Collectors.joining("\n")));
    }
}
