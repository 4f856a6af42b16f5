package stoneprocess.rules.text.document;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;

/**
 * A part of a document or of a larger section.
 *
 * @param heading what it is about; empty for what stands first
 * @param items what it says
 */
public record Section(Optional<Wording> heading, List<Item> items) implements Item {
    public Section {
        Refuse.nulls(Section.class, heading, items);
        items = List.copyOf(items);
    }
}
