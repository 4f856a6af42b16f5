package stoneprocess.examples.command;

import picocli.CommandLine.Option;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.rules.text.document.Texts;

/** The options of who reads a text: language and units. */
final class Reader extends ReaderLanguage {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "Units of the text: metric (default) or us.",
            defaultValue = "metric")
    private UnitSystem units = UnitSystem.METRIC;

    @Override
    Texts texts() {
        return super.texts().in(units);
    }
}
