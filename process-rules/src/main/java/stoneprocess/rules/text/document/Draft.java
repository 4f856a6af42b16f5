package stoneprocess.rules.text.document;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.term.Term;

/** A document under construction, written from top to bottom. Not safe to share. */
public final class Draft {
    private final Optional<Wording> title;
    private final Parameters parameters;
    private final List<Section> sections = new ArrayList<>();
    private final List<Item> items = new ArrayList<>();
    private final List<List<Wording>> rows = new ArrayList<>();
    private Optional<Wording> line = Optional.empty();
    private Optional<Wording> heading = Optional.empty();
    private int number;

    private Draft(Optional<Wording> title, Parameters parameters) {
        this.title = title;
        this.parameters = parameters;
    }

    /**
     * Begins a document.
     *
     * @param parameters the numbers that its phrases name
     */
    public static Draft titled(Wording title, Parameters parameters) {
        return new Draft(Optional.of(title), Objects.requireNonNull(parameters, "parameters"));
    }

    /** Begins a document without a title. */
    public static Draft untitled(Parameters parameters) {
        return new Draft(Optional.empty(), Objects.requireNonNull(parameters, "parameters"));
    }

    /** Says the same in one line, for a reader who wants no more. */
    public Draft inOneLine(Wording words) {
        line = Optional.of(words);
        return this;
    }

    /** Begins a section whose heading is a phrase. */
    public Draft section(String key) {
        return section(Wording.phrase(key));
    }

    /** Begins a section. */
    public Draft section(Wording newHeading) {
        endSection();
        heading = Optional.of(newHeading);
        return this;
    }

    /** A section that lists what the terms say, unless there are none. */
    public Draft list(String key, Collection<? extends Term> terms) {
        return list(key, terms, Wording::of);
    }

    /** A section that lists what is said of each member, unless there are none. */
    public <T> Draft list(String key, Collection<T> members, Function<? super T, ? extends Wording> word) {
        return members.isEmpty() ? this : section(key).bullets(members, word);
    }

    public Draft paragraph(Wording words) {
        return add(new Item.Paragraph(words));
    }

    public Draft paragraph(String key) {
        return paragraph(Wording.phrase(key));
    }

    public Draft bullet(Wording words, Item... under) {
        return bullet(words, Arrays.asList(under));
    }

    public Draft bullet(Wording words, List<? extends Item> under) {
        return add(new Item.Bullet(false, words, List.copyOf(under)));
    }

    public Draft bullet(String key) {
        return bullet(Wording.phrase(key));
    }

    public Draft bullets(String... keys) {
        return bullets(List.of(keys), Wording::phrase);
    }

    public <T> Draft bullets(Collection<T> members, Function<? super T, ? extends Wording> word) {
        members.forEach(member -> bullet(word.apply(member)));
        return this;
    }

    /** A row of a table whose columns are as wide as their widest cell; the rows that follow have as many cells. */
    public Draft row(Wording... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /** The same, whose first cell is a phrase. */
    public Draft row(String labelKey, Wording... cells) {
        List<Wording> row = new ArrayList<>(List.of(cells));
        row.add(0, Wording.phrase(labelKey));
        rows.add(row);
        return this;
    }

    /** Words that head what belongs to them, without a mark. */
    public Draft group(Wording words, List<? extends Item> under) {
        return add(new Item.Bullet(true, words, List.copyOf(under)));
    }

    /** The next of a numbered list, which each section begins anew. */
    public Draft numbered(Wording words, Item... under) {
        return numbered(words, Arrays.asList(under));
    }

    public Draft numbered(Wording words, List<? extends Item> under) {
        number++;
        return add(new Item.Numbered(number, words, List.copyOf(under)));
    }

    public Draft labelled(String labelKey, Wording words) {
        return add(label(labelKey, words));
    }

    /** An item of the section that was begun; a section ends that one and stands for itself. */
    public Draft add(Item item) {
        endTable();
        if (item instanceof Section section) {
            endSection();
            heading = Optional.empty();
            sections.add(section);
        } else {
            items.add(item);
        }
        return this;
    }

    /** A label, which is a phrase, and what it stands for. */
    public static Item label(String labelKey, Wording words) {
        return new Item.Labelled(Wording.phrase(labelKey), words);
    }

    private void endTable() {
        if (!rows.isEmpty()) {
            items.add(new Item.Table(Collections.nCopies(rows.get(0).size(), Item.Align.LEFT), List.of(), rows));
            rows.clear();
        }
    }

    private void endSection() {
        endTable();
        if (heading.isPresent() || !items.isEmpty()) {
            sections.add(new Section(heading, items));
            items.clear();
        }
        number = 0;
    }

    /** What was written. */
    public Document document() {
        endSection();
        heading = Optional.empty();
        return new Document(title, line, sections, parameters);
    }
}
