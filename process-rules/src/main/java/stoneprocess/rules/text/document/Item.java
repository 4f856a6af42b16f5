package stoneprocess.rules.text.document;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;

/** A piece of a section. */
public sealed interface Item permits Item.Paragraph, Item.Bullet, Item.Numbered, Item.Labelled, Item.Table, Section {

    /** Sentences in a row. */
    record Paragraph(Wording words) implements Item {
        public Paragraph {
            Refuse.nulls(Paragraph.class, words);
        }
    }

    /** A member of a list, with what belongs to it; a bare one has no mark before it and heads what belongs to it. */
    record Bullet(boolean bare, Wording words, List<Item> under) implements Item {
        public Bullet {
            Refuse.nulls(Bullet.class, words, under);
            under = List.copyOf(under);
        }
    }

    /** A member of a list whose order counts. */
    record Numbered(int number, Wording words, List<Item> under) implements Item {
        public Numbered {
            Refuse.nulls(Numbered.class, words, under);
            under = List.copyOf(under);
        }
    }

    /** A label and what it stands for. */
    record Labelled(Wording label, Wording words) implements Item {
        public Labelled {
            Refuse.nulls(Labelled.class, label, words);
        }
    }

    /**
     * Rows of as many cells each.
     *
     * @param columns how the cells of a column stand
     * @param headings the columns' names; empty where they have none
     * @param rows the cells
     */
    record Table(List<Align> columns, List<Wording> headings, List<List<Wording>> rows) implements Item {
        public Table {
            Refuse.nulls(Table.class, columns, headings, rows);
            columns = List.copyOf(columns);
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<Wording> row : rows) {
                if (row.size() != columns.size()) {
                    throw new InvalidInputException(
                            "rows", row.size() + " cells", columns.size() + " cells, one a column");
                }
            }
        }
    }

    /** How the cells of a column stand. */
    enum Align {
        LEFT,
        /** Figures, one below the other. */
        RIGHT
    }
}
