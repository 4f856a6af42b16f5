package stoneprocess.rules.text.document;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;

/**
 * A text as data: what it says, in which order and rank, in no language yet.
 *
 * @param title its title; empty for one that starts at once
 * @param line the same in one line; empty for a text that has no short form
 * @param sections its parts
 * @param parameters the numbers that its phrases name
 */
public record Document(Optional<Wording> title, Optional<Wording> line, List<Section> sections, Parameters parameters) {
    public Document {
        Refuse.nulls(Document.class, title, line, sections, parameters);
        sections = List.copyOf(sections);
    }

    /** The decided values that its words state, in their order; none for a text that marks none. */
    public Set<StatedValue> stated() {
        return Collections.unmodifiableSet(StatedValues.in(sections));
    }
}
