package stoneprocess.rules.text;

import java.util.Collection;

/** A page of plain text under construction: headings, items, and lines wrapped at a width that prints on paper. */
final class Page {
    private static final int WIDTH = 96;

    private final StringBuilder text = new StringBuilder();

    Page title(String title) {
        text.append(title).append('\n');
        text.append("=".repeat(Math.min(WIDTH, title.length()))).append('\n');
        return this;
    }

    Page heading(String heading) {
        text.append('\n').append(heading).append('\n');
        return this;
    }

    Page line(String line) {
        return wrapped("", "", line);
    }

    Page item(String item) {
        return wrapped("  - ", "    ", item);
    }

    Page items(Collection<String> items) {
        items.forEach(this::item);
        return this;
    }

    Page numbered(int number, String item) {
        return wrapped("  " + number + ". ", "     ", item);
    }

    /** A line with a label in a column of its own. */
    Page labelled(String indent, String label, String value) {
        String start = indent + label + " ".repeat(Math.max(1, 9 - label.length()));
        return wrapped(start, " ".repeat(start.length()), value);
    }

    private Page wrapped(String first, String next, String line) {
        StringBuilder current = new StringBuilder(first);
        int indent = first.length();
        for (String word : line.split(" ")) {
            if (current.length() > indent && current.length() + 1 + word.length() > WIDTH) {
                text.append(current).append('\n');
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
