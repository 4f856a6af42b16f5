package stoneprocess.examples.estimate;

import java.util.List;

/** Plain text under construction: wrapped sentences, and rows with figures in columns. */
final class EstimatePage {
    private static final int WIDTH = 96;
    private static final int LABEL = 44;
    private static final int FIGURE = 10;

    private final StringBuilder text = new StringBuilder();

    void title(String title) {
        text.append(title).append('\n');
        text.append("=".repeat(Math.min(WIDTH, title.length()))).append('\n');
    }

    void heading(String heading) {
        text.append('\n').append(heading).append('\n');
    }

    /** A heading with the names of its columns. */
    void heading(String heading, List<String> columns, String last) {
        text.append('\n');
        cells("", heading, columns, last);
    }

    void line(String sentence) {
        wrapped("", "", sentence);
    }

    void item(String sentence) {
        wrapped("  - ", "    ", sentence);
    }

    /** A label, figures to the right of their columns, and a last word to the left. */
    void row(String label, List<String> figures, String last) {
        cells("  ", label, figures, last);
    }

    private void cells(String indent, String label, List<String> figures, String last) {
        String start = indent + label;
        if (start.length() > LABEL) {
            text.append(start).append('\n');
            start = "";
        }
        StringBuilder line = new StringBuilder(start).append(" ".repeat(LABEL - start.length()));
        for (String figure : figures) {
            line.append(" ".repeat(Math.max(1, FIGURE - figure.length()))).append(figure);
        }
        line.append("  ").append(last);
        text.append(line.toString().stripTrailing()).append('\n');
    }

    private void wrapped(String first, String next, String sentence) {
        StringBuilder line = new StringBuilder(first);
        int indent = first.length();
        for (String word : sentence.split(" ")) {
            boolean begun = line.length() > indent;
            if (begun && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(next);
                indent = next.length();
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
