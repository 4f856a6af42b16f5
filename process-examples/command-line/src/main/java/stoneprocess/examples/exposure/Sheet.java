package stoneprocess.examples.exposure;

import java.util.List;
import stoneprocess.core.exposure.Limit;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;

/** A sheet under construction: a title, parts of items or rows, lines of at most 96 characters. */
final class Sheet {
    private static final int WIDTH = 96;
    private static final String INDENT = "  ";
    private static final String BETWEEN_COLUMNS = "   ";

    private final StringBuilder text = new StringBuilder();

    Sheet(String title) {
        text.append(title).append('\n').append("=".repeat(title.length())).append('\n');
    }

    /** The answer in a sentence or two; stands first. */
    Sheet answer(String sentences) {
        return wrapped("", "", sentences);
    }

    Sheet items(String heading, List<String> items) {
        heading(heading);
        items.forEach(item -> wrapped(INDENT + "- ", INDENT + "  ", item));
        return this;
    }

    /** Rows of as many cells each, in columns as wide as their widest cell; the last column wraps. */
    Sheet rows(String heading, List<List<String>> rows) {
        heading(heading);
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder start = new StringBuilder(INDENT);
            for (int i = 0; i < columns - 1; i++) {
                String cell = row.get(i);
                start.append(cell).append(" ".repeat(widths[i] - cell.length())).append(BETWEEN_COLUMNS);
            }
            wrapped(start.toString(), " ".repeat(start.length()), row.get(columns - 1));
        }
        return this;
    }

    /** Ends every sheet: what the figures rest on, cautions, who decides. */
    String close(List<String> rests, List<String> cautions, Role decides) {
        items("Rests on", rests);
        items("Cautions", cautions);
        heading("Who decides");
        wrapped(
                INDENT,
                INDENT,
                decider(decides) + " This sheet prepares that decision and does not take its place;"
                        + " local codes go before it.");
        return text.toString();
    }

    /** A limit's source, and a word where the figure was not read in it. */
    static String source(Limit<?> limit) {
        return source(limit.source());
    }

    static String source(Citation source) {
        return source.print() + (source.grade() == EvidenceGrade.MEMORY ? ", figure from memory: check it there" : "");
    }

    private static String decider(Role role) {
        return switch (role) {
            case HYGIENIST -> "An occupational hygienist, who measures.";
            case COMPETENT_PERSON -> "The employer's competent person, by the written exposure control plan.";
            case ERGONOMIST -> "The ergonomist or safety officer who answers for manual handling.";
            case SLIP_TESTER -> "A slip tester, who measures the floor.";
            case WASTE_AUTHORITY -> "The local water and waste authority.";
            case LABORATORY -> "A materials laboratory.";
            case ELECTRICIAN -> "A licensed electrician.";
            case ASBESTOS_SURVEYOR -> "A licensed asbestos surveyor.";
            case STRUCTURAL_ENGINEER -> "A structural engineer.";
            case CONSERVATOR -> "A conservator.";
            case RESPONSIBLE_OFFICER -> "The officer who is responsible for the building.";
            case WATER_AUTHORITY -> "The local water authority.";
            case BUILDING_MANAGER -> "The person in charge of the building.";
            case CREW_LEADER -> "The person in charge of the crew.";
        };
    }

    private void heading(String heading) {
        text.append('\n');
        append(heading);
    }

    private Sheet wrapped(String first, String next, String line) {
        StringBuilder current = new StringBuilder(first);
        int indent = first.length();
        for (String word : line.split(" ")) {
            if (current.length() > indent && current.length() + 1 + word.length() > WIDTH) {
                append(current);
                current = new StringBuilder(next);
                indent = next.length();
            }
            if (current.length() > indent) {
                current.append(' ');
            }
            current.append(word);
        }
        append(current);
        return this;
    }

    private void append(CharSequence line) {
        text.append(line.toString().replace(Figures.UNBROKEN, ' ').stripTrailing())
                .append('\n');
    }
}
