package stoneprocess.examples.command;

import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.log.Sign;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.term.Term;

/** Reads quantities and words of the trade from the command line: {@code "95 dBA"}, {@code interior-wet}. */
final class Conversions {
    private Conversions() {}

    /**
     * Lets options that measure take a number and a unit of their dimension, options that count a whole number alone, and
     * options of a word its key.
     */
    static void register(CommandLine line) {
        for (Dimension dimension : Dimension.values()) {
            quantity(line, dimension.type(), dimension);
        }
        count(line);
        term(line, Coupling.class);
        term(line, GrindingTool.class);
        term(line, Sign.class);
        term(line, SilicaCommand.Dust.class);
        term(line, SlipPlace.class);
    }

    private static <Q extends Quantity> void quantity(CommandLine line, Class<Q> type, Dimension dimension) {
        String accepted = "a number, a space and one of " + String.join(", ", Unit.symbols(dimension));
        line.registerConverter(type, text -> {
            try {
                Quantity read = Quantity.parse(text, "");
                if (type.isInstance(read)) {
                    return type.cast(read);
                }
            } catch (InvalidInputException e) {
                throw refused(text, accepted);
            }
            throw refused(text, accepted);
        });
    }

    private static void count(CommandLine line) {
        line.registerConverter(Count.class, text -> {
            if (!text.matches("[0-9]{1,6}")) {
                throw refused(text, "a whole number from 0 to 999999");
            }
            return new Count(Integer.parseInt(text));
        });
    }

    private static <E extends Enum<E> & Term> void term(CommandLine line, Class<E> type) {
        line.registerConverter(type, text -> {
            try {
                return Term.parse(type, text, "");
            } catch (InvalidInputException e) {
                throw refused(text, e.accepted());
            }
        });
    }

    private static TypeConversionException refused(String text, String accepted) {
        return new TypeConversionException("'" + text + "' is not accepted; accepted: " + accepted);
    }
}
