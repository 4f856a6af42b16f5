package stoneprocess.rules.text.document;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** A document in Markdown. Emphasis stands in the phrases. */
final class MarkdownPage {
    private final Texts texts;
    private final StringBuilder page = new StringBuilder();

    MarkdownPage(Texts texts) {
        this.texts = texts;
    }

    String print(Document document) {
        document.title().ifPresent(title -> line("# " + texts.word(title)).append('\n'));
        document.sections().forEach(section -> section(section, "##"));
        return page.toString().stripTrailing() + "\n";
    }

    private void section(Section section, String rank) {
        apart();
        section.heading()
                .ifPresent(heading -> line(rank + " " + texts.word(heading)).append('\n'));
        section.items().forEach(item -> print(item, "", rank));
    }

    private void print(Item item, String indent, String rank) {
        if (item instanceof Item.Paragraph paragraph) {
            line(indent + texts.word(paragraph.words()));
            end(indent);
        } else if (item instanceof Item.Bullet bullet) {
            line(indent + (bullet.bare() ? "" : "- ") + texts.word(bullet.words()));
            bullet.under().forEach(under -> print(under, indent + "  ", rank));
            end(indent);
        } else if (item instanceof Item.Numbered numbered) {
            line(indent + numbered.number() + ". " + texts.word(numbered.words()));
            numbered.under().forEach(under -> print(under, indent + "   ", rank));
            end(indent);
        } else if (item instanceof Item.Labelled labelled) {
            line(indent + texts.word(labelled.label()) + ": " + texts.word(labelled.words()));
            end(indent);
        } else if (item instanceof Item.Table table) {
            table(table);
        } else {
            section((Section) item, rank + "#");
        }
    }

    /** What stands by itself ends with an empty line; what belongs to an item goes on. */
    private void end(String indent) {
        if (indent.isEmpty()) {
            page.append('\n');
        }
    }

    private void table(Item.Table table) {
        row(
                table.headings().isEmpty()
                        ? Collections.nCopies(table.columns().size(), Wording.name(""))
                        : table.headings());
        line(table.columns().stream()
                .map(align -> align == Item.Align.RIGHT ? "---:" : "---")
                .collect(Collectors.joining("|", "|", "|")));
        table.rows().forEach(this::row);
    }

    /** What follows a table begins after an empty line. */
    private void apart() {
        if (page.length() > 1 && page.charAt(page.length() - 2) != '\n') {
            page.append('\n');
        }
    }

    private void row(List<Wording> cells) {
        line(cells.stream().map(texts::word).collect(Collectors.joining(" | ", "| ", " |")));
    }

    private StringBuilder line(String line) {
        return page.append(line).append('\n');
    }
}
