package stoneprocess.rules.text.sheet;

import java.util.Arrays;
import java.util.List;

/** Reads a printed sheet back. */
final class Printed {
    private Printed() {}

    /** The cells behind a label. */
    static List<String> row(String sheet, String label) {
        String start = "  " + label + "   ";
        String line = sheet.lines()
                .filter(each -> each.startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No row '" + label + "' in\n" + sheet));
        return Arrays.asList(line.substring(start.length()).strip().split(" {3,}"));
    }

    /** The number at the start of a cell. */
    static double number(String cell) {
        return Double.parseDouble(cell.substring(0, cell.indexOf(' ')));
    }

    /** The sheet with its lines joined, for what may be wrapped. */
    static String joined(String sheet) {
        return sheet.replaceAll("\\s+", " ");
    }
}
