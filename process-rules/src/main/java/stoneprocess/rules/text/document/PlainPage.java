package stoneprocess.rules.text.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A document as plain text that prints on paper: lines wrapped at a width, figures in columns. */
final class PlainPage {
    static final int WIDTH = 96;

    private static final String INDENT = "  ";
    private static final String UNDER_BULLET = "      ";
    private static final int LABEL = 9;
    private static final String BETWEEN_COLUMNS = "   ";
    private static final String BETWEEN_HEADED_COLUMNS = "  ";
    private static final int LEDGER_LABEL = 44;
    private static final int FIGURE = 10;

    private final Texts texts;
    private final int width;
    private final StringBuilder page = new StringBuilder();

    PlainPage(Texts texts, int width) {
        this.texts = texts;
        this.width = width;
    }

    String print(Document document) {
        document.title().ifPresent(title -> {
            int start = page.length();
            wrapped("", "", title);
            page.append("=".repeat(Math.min(width, page.length() - start - 1))).append('\n');
        });
        document.sections().forEach(this::section);
        return page.toString();
    }

    private void section(Section section) {
        Optional<Item.Table> ledger = section.items().stream()
                .limit(1)
                .filter(Item.Table.class::isInstance)
                .map(Item.Table.class::cast)
                .filter(table -> isLedger(table) && !table.headings().isEmpty())
                .findFirst();
        section.heading().ifPresent(heading -> {
            page.append('\n');
            ledger.ifPresentOrElse(
                    table -> ledgerRow("", heading, table.headings(), table), () -> wrapped("", "", heading));
        });
        section.items().forEach(item -> print(item, INDENT));
    }

    private void print(Item item, String indent) {
        if (item instanceof Item.Paragraph paragraph) {
            String start = indent.equals(INDENT) ? "" : indent;
            wrapped(start, start, paragraph.words());
        } else if (item instanceof Item.Bullet bullet) {
            String mark = bullet.bare() ? "" : "- ";
            wrapped(indent + mark, indent + " ".repeat(mark.length()), bullet.words());
            bullet.under().forEach(under -> print(under, UNDER_BULLET));
        } else if (item instanceof Item.Numbered numbered) {
            String start = indent + numbered.number() + ". ";
            String next = " ".repeat(start.length());
            wrapped(start, next, numbered.words());
            numbered.under().forEach(under -> print(under, next));
        } else if (item instanceof Item.Labelled labelled) {
            String label = indent + texts.word(labelled.label());
            String start = label + " ".repeat(Math.max(1, indent.length() + LABEL - label.length()));
            wrapped(start, " ".repeat(start.length()), labelled.words());
        } else if (item instanceof Item.Table table) {
            table(table);
        } else {
            section((Section) item);
        }
    }

    private void table(Item.Table table) {
        if (isLedger(table)) {
            table.rows().forEach(row -> ledgerRow(INDENT, row.get(0), row.subList(1, row.size()), table));
        } else {
            fitted(table);
        }
    }

    private static boolean isLedger(Item.Table table) {
        return table.columns().contains(Item.Align.RIGHT);
    }

    /** All tables of figures of a page have the same columns, so that they stand below each other; a long head has more. */
    private void ledgerRow(String indent, Wording label, List<Wording> cells, Item.Table table) {
        StringBuilder line = new StringBuilder(indent + texts.word(label));
        if (line.length() > LEDGER_LABEL) {
            line(line);
            line = new StringBuilder();
        }
        line.append(" ".repeat(LEDGER_LABEL - line.length()));
        for (int i = 0; i < cells.size(); i++) {
            String cell = texts.word(cells.get(i));
            boolean figure = table.columns().get(i + 1) == Item.Align.RIGHT;
            line.append(figure ? " ".repeat(Math.max(1, figureWidth(table, i) - cell.length())) : INDENT)
                    .append(cell);
        }
        line(line);
    }

    private int figureWidth(Item.Table table, int figure) {
        int head = table.headings().isEmpty()
                ? 0
                : texts.word(table.headings().get(figure)).length();
        return Math.max(FIGURE, figure == 0 ? head : head + BETWEEN_HEADED_COLUMNS.length());
    }

    /** Columns as wide as their widest cell; the last one wraps. */
    private void fitted(Item.Table table) {
        List<List<String>> rows = new ArrayList<>();
        if (!table.headings().isEmpty()) {
            rows.add(table.headings().stream().map(texts::word).toList());
        }
        table.rows().forEach(row -> rows.add(row.stream().map(texts::word).toList()));
        int last = table.columns().size() - 1;
        int[] widths = new int[last];
        for (List<String> row : rows) {
            for (int i = 0; i < last; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        String between = table.headings().isEmpty() ? BETWEEN_COLUMNS : BETWEEN_HEADED_COLUMNS;
        for (List<String> row : rows) {
            StringBuilder start = new StringBuilder(INDENT);
            for (int i = 0; i < last; i++) {
                start.append(row.get(i))
                        .append(" ".repeat(widths[i] - row.get(i).length()))
                        .append(between);
            }
            wrapped(start.toString(), " ".repeat(start.length()), row.get(last));
        }
    }

    private void wrapped(String first, String next, Wording words) {
        wrapped(first, next, texts.word(words));
    }

    private void wrapped(String first, String next, String words) {
        StringBuilder line = new StringBuilder(first);
        int indent = first.length();
        for (String word : words.split(" ")) {
            if (line.length() > indent && line.length() + 1 + word.length() > width) {
                line(line);
                line = new StringBuilder(next);
                indent = next.length();
            }
            if (line.length() > indent) {
                line.append(' ');
            }
            line.append(word);
        }
        line(line);
    }

    private void line(CharSequence line) {
        page.append(line.toString().replace(Numbers.UNBROKEN, ' ').stripTrailing())
                .append('\n');
    }
}
