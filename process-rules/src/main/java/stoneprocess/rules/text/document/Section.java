package stoneprocess.rules.text.document;

import java.util.List;
import java.util.Optional;

/**
 * A part of a document or of a larger section.
 *
 * @param heading what it is about; empty for what stands first
 * @param items what it says
 */
public record Section(Optional<Wording> heading, List<Item> items) implements Item {
    public Section {
        items = List.copyOf(items);
    }
}
