package stoneprocess.examples.command;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.rules.text.document.Texts;

/** The options of who reads a text: language and units. */
final class Reader {
    @Mixin
    private ReaderLanguage language = new ReaderLanguage();

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "Units of the text: metric (default) or us.",
            defaultValue = "metric")
    private UnitSystem units = UnitSystem.METRIC;

    Texts texts() {
        return language.texts().in(units);
    }
}
