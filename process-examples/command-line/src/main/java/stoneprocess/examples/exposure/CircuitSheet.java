package stoneprocess.examples.exposure;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.exposure.Circuit;
import stoneprocess.core.exposure.CircuitLoad;
import stoneprocess.core.exposure.CircuitVerdict;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.quantity.Voltage;

/** What a circuit carries for hours, and what hangs on it. */
public final class CircuitSheet {
    private final Circuit circuit = Circuit.of(Parameters.standard());
    private final Figures figures;

    /** The sheet in the reader's units. */
    public CircuitSheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /**
     * The text.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for volts or amperes outside their range
     */
    public String render(Voltage volts, Current breaker, List<Power> loads) {
        CircuitLoad load = circuit.load(volts, breaker, loads);
        Sheet sheet = new Sheet("A circuit under load for hours").answer(sentence(load.verdict()));
        List<List<String>> given = new ArrayList<>();
        given.add(List.of("circuit", figures.given(volts) + ", breaker " + figures.given(breaker)));
        loads.forEach(power -> given.add(List.of("load", figures.given(power))));
        sheet.rows("Given", given);
        sheet.rows(
                "Result",
                List.of(
                        List.of("carries for hours", figures.atMost(load.continuous())),
                        List.of("hangs on it", figures.atLeast(load.load())),
                        List.of("left to add", figures.atMost(load.spare()))));
        String share = figures.given(load.limit().value());
        sheet.items(
                "Limit",
                List.of(share + " of volts times amperes, single phase (" + Sheet.source(load.limit()) + ")."));
        return sheet.close(
                List.of(
                        "Volts, amperes and loads as given: nothing was measured here.",
                        (load.limit().source().published() ? "Published source" : "Common practice, no source")
                                + ": a breaker is loaded to " + share + " for hours. " + Figures.ROUNDING),
                List.of(
                        "Motors draw several times as much on starting, and more than their power says by their power"
                                + " factor: give the volt-amperes of the plate where they stand there.",
                        "Count everything on the circuit: vacuum, lamps, heaters, the neighbour's machines. Find out"
                                + " which outlets share the breaker.",
                        "A long or thin cable loses volts and grows hot on the drum: roll it out.",
                        "Wet work needs a residual-current (ground-fault) device that is tested before the start."),
                load.limit().decides());
    }

    private static String sentence(CircuitVerdict verdict) {
        return switch (verdict) {
            case WITHIN_LIMIT -> "WITHIN THE LIMIT: the circuit carries this for hours.";
            case OVER_LIMIT -> "OVER THE LIMIT: move a load to another circuit, or run the machines by turns.";
        };
    }
}
