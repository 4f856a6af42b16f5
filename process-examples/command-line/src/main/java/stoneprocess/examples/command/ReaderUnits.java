package stoneprocess.examples.command;

import picocli.CommandLine.Option;
import stoneprocess.core.quantity.UnitSystem;

/** The option for the units of a text. */
final class ReaderUnits {
    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "Units of the text: metric (default) or us.",
            defaultValue = "metric")
    private UnitSystem units = UnitSystem.METRIC;

    UnitSystem units() {
        return units;
    }
}
