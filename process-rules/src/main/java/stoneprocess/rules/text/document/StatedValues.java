package stoneprocess.rules.text.document;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds what the words of a document state. */
final class StatedValues {
    private final Set<StatedValue> found = new LinkedHashSet<>();

    private StatedValues() {}

    static Set<StatedValue> in(List<Section> sections) {
        StatedValues values = new StatedValues();
        sections.forEach(values::item);
        return values.found;
    }

    private void item(Item item) {
        if (item instanceof Item.Paragraph paragraph) {
            words(paragraph.words());
        } else if (item instanceof Item.Bullet bullet) {
            words(bullet.words());
            bullet.under().forEach(this::item);
        } else if (item instanceof Item.Numbered numbered) {
            words(numbered.words());
            numbered.under().forEach(this::item);
        } else if (item instanceof Item.Labelled labelled) {
            words(labelled.words());
        } else if (item instanceof Item.Table table) {
            table.rows().forEach(row -> row.forEach(this::words));
        } else if (item instanceof Section section) {
            section.heading().ifPresent(this::words);
            section.items().forEach(this::item);
        }
    }

    private void words(Wording wording) {
        if (wording instanceof Wording.Stating stating) {
            found.addAll(stating.values());
            words(stating.words());
        } else if (wording instanceof Wording.Phrase phrase) {
            phrase.arguments().values().forEach(this::words);
        } else if (wording instanceof Wording.Listing listing) {
            listing.members().forEach(this::words);
        } else if (wording instanceof Wording.Shortest shortest) {
            shortest.fromRichest().forEach(this::words);
        }
    }
}
