package stoneprocess.examples.gloss;

import java.util.List;

/** A page under construction: a title, headings, items and rows, lines of at most 96 characters. */
final class Sheet {
    private static final int WIDTH = 96;
    private static final String BETWEEN_COLUMNS = "   ";

    private final StringBuilder text = new StringBuilder();

    Sheet(String title) {
        wrapped("", "", title);
        text.append("=".repeat(Math.min(WIDTH, title.length()))).append('\n');
    }

    Sheet line(String line) {
        return wrapped("", "", line);
    }

    Sheet heading(String heading) {
        text.append('\n');
        return line(heading);
    }

    Sheet group(String name) {
        return wrapped("  ", "  ", name);
    }

    Sheet under(String line) {
        return wrapped("      ", "      ", line);
    }

    Sheet item(String item) {
        return wrapped("  - ", "    ", item);
    }

    Sheet items(List<String> items) {
        items.forEach(this::item);
        return this;
    }

    /** Rows of as many cells each, in columns as wide as their widest cell; the last column wraps. */
    Sheet rows(List<List<String>> rows) {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder start = new StringBuilder("  ");
            for (int i = 0; i < columns - 1; i++) {
                String cell = row.get(i);
                start.append(cell).append(" ".repeat(widths[i] - cell.length())).append(BETWEEN_COLUMNS);
            }
            wrapped(start.toString(), " ".repeat(start.length()), row.get(columns - 1));
        }
        return this;
    }

    private Sheet wrapped(String first, String next, String line) {
        StringBuilder current = new StringBuilder(first);
        int indent = first.length();
        for (String word : line.split(" ")) {
            if (current.length() > indent && current.length() + 1 + word.length() > WIDTH) {
                text.append(current.toString().stripTrailing()).append('\n');
                current = new StringBuilder(next);
                indent = next.length();
            }
            if (current.length() > indent) {
                current.append(' ');
            }
            current.append(word);
        }
        text.append(current.toString().stripTrailing()).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
