package stoneprocess.rules.text.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * A table under construction: rows of a label, figures, and last words. On a plain page the figures of all such tables stand
 * below each other. Not safe to share.
 */
public final class Ledger {
    private final int figures;
    private final List<Wording> headings;
    private final List<List<Wording>> rows = new ArrayList<>();

    private Ledger(int figures, List<Wording> headings) {
        this.figures = figures;
        this.headings = headings;
    }

    /** A table of so many figures a row that goes on below another one. */
    public static Ledger of(int figures) {
        return new Ledger(figures, List.of());
    }

    /**
     * A table whose columns have names.
     *
     * @param figures the names of the columns of figures
     * @param last the name of the last words
     */
    public static Ledger headed(List<? extends Wording> figures, Wording last) {
        List<Wording> headings = new ArrayList<>(Objects.requireNonNull(figures, "figures"));
        headings.add(Objects.requireNonNull(last, "last"));
        return new Ledger(figures.size(), headings);
    }

    /**
     * Adds a row.
     *
     * @throws IllegalArgumentException for more or fewer figures than the table has columns of them
     */
    public Ledger row(Wording label, List<? extends Wording> figuresOfRow, Wording last) {
        if (figuresOfRow.size() != figures) {
            throw new IllegalArgumentException(figuresOfRow.size() + " figures in a table of " + figures);
        }
        List<Wording> row = new ArrayList<>();
        row.add(label);
        row.addAll(figuresOfRow);
        row.add(last);
        rows.add(row);
        return this;
    }

    public Item.Table table() {
        List<Item.Align> columns = new ArrayList<>(Collections.nCopies(figures, Item.Align.RIGHT));
        columns.add(0, Item.Align.LEFT);
        columns.add(Item.Align.LEFT);
        return new Item.Table(columns, headings, rows);
    }
}
