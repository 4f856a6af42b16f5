package stoneprocess.rules.text.document;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.source.Citation;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;

/** What is to be said, before any language: the key of a phrase with named arguments, or a value. {@link Texts} says it. */
public sealed interface Wording {

    /**
     * A phrase of the bundles.
     *
     * @param key its key
     * @param arguments what stands for the names in its braces
     */
    record Phrase(String key, Map<String, Wording> arguments) implements Wording {
        public Phrase {
            Refuse.nulls(Phrase.class, key, arguments);
            arguments = Map.copyOf(arguments);
        }

        /** The same with one more argument. */
        public Phrase with(String name, Wording argument) {
            Map<String, Wording> more = new LinkedHashMap<>(arguments);
            more.put(name, argument);
            return new Phrase(key, more);
        }

        /** The same with the word for a term. */
        public Phrase with(String name, Term term) {
            return with(name, of(term));
        }

        /** The same with a measured value. */
        public Phrase with(String name, Quantity quantity) {
            return with(name, amount(quantity));
        }

        /** The same with a range of measured values. */
        public <Q extends Quantity> Phrase with(String name, Range<Q> range) {
            return with(name, new AmountRange(range.low(), range.high()));
        }

        /** The same with a number, of which the phrase may choose its plural. */
        public Phrase with(String name, long number) {
            return with(name, number(number));
        }

        /** The same with a name, which no language translates. */
        public Phrase with(String name, String properName) {
            return with(name, name(properName));
        }
    }

    /** Words that stand in English in a shipped table or chapter, and under a key in the bundles of other languages. */
    record Tabled(String key, String english) implements Wording {
        public Tabled {
            Refuse.nulls(Tabled.class, key, english);
        }
    }

    /** A name or an id that reads the same in every language: of a zone, a rule, a publication, a rulebase. */
    record Name(String text) implements Wording {
        public Name {
            Refuse.nulls(Name.class, text);
        }
    }

    /** A measured value in the reader's units. */
    record Amount(Quantity quantity, Precision precision) implements Wording {
        public Amount {
            Refuse.nulls(Amount.class, quantity, precision);
        }
    }

    /** A range of measured values with one unit. */
    record AmountRange(Quantity low, Quantity high) implements Wording {
        public AmountRange {
            Refuse.nulls(AmountRange.class, low, high);
        }
    }

    /**
     * A number without a unit.
     *
     * @param grouped whether thousands are set apart
     */
    record Number(BigDecimal value, boolean grouped) implements Wording {
        public Number {
            Refuse.nulls(Number.class, value);
        }
    }

    /** Several, one after the other. */
    record Listing(Joint joint, List<Wording> members) implements Wording {
        public Listing {
            Refuse.nulls(Listing.class, joint, members);
            members = List.copyOf(members);
        }
    }

    /** The first that has fewer characters than the limit, else the last. */
    record Shortest(int limit, List<Wording> fromRichest) implements Wording {
        public Shortest {
            Refuse.nulls(Shortest.class, fromRichest);
            fromRichest = List.copyOf(fromRichest);
        }
    }

    /**
     * Words for decided values; they read as the words alone.
     *
     * @param values what the words state
     */
    record Stating(List<StatedValue> values, Wording words) implements Wording {
        public Stating {
            Refuse.nulls(Stating.class, values, words);
            values = List.copyOf(values);
        }
    }

    /** How several are joined; the bundles say it under {@code list.<key>}. */
    enum Joint implements Term {
        SENTENCES,
        COMMA,
        SEMICOLON,
        AND,
        OR
    }

    /** The phrase for a key. */
    static Phrase phrase(String key) {
        return new Phrase(key, Map.of());
    }

    /** The phrase for a constant: {@code Task.mask} for {@code Task.MASK}. */
    static Phrase of(Term term) {
        return phrase(key(term));
    }

    /** A part of what is said about a constant: {@code Hazard.noise.limit}. */
    static Phrase of(Term term, String part) {
        return phrase(key(term) + "." + Objects.requireNonNull(part, "part"));
    }

    /** The key of a constant in the bundles. */
    static String key(Term term) {
        return ((Enum<?>) term).getDeclaringClass().getSimpleName() + "." + term.key();
    }

    static Wording amount(Quantity quantity) {
        return new Amount(quantity, Precision.USUAL);
    }

    static Wording amount(Quantity quantity, Precision precision) {
        return new Amount(quantity, precision);
    }

    static Wording number(long number) {
        return new Number(BigDecimal.valueOf(number), false);
    }

    static Wording number(BigDecimal number) {
        return new Number(number, false);
    }

    static Wording name(String text) {
        return new Name(text);
    }

    /** One after the other. */
    static Wording list(Joint joint, Collection<? extends Wording> members) {
        return members.size() == 1 ? members.iterator().next() : new Listing(joint, List.copyOf(members));
    }

    /** The same with what is said of each member. */
    static <T> Wording list(Joint joint, Collection<T> members, Function<? super T, ? extends Wording> word) {
        return list(joint, members.stream().map(word).toList());
    }

    /** Sentence after sentence. */
    static Wording sentences(Wording... sentences) {
        return list(Joint.SENTENCES, List.of(Objects.requireNonNull(sentences, "sentences")));
    }

    /** What the terms say, sentence after sentence. */
    static Wording sentences(Collection<? extends Term> terms) {
        return list(Joint.SENTENCES, terms, Wording::of);
    }

    /** The title of a rule: in English as its chapter has it. */
    static Wording title(Card card) {
        return new Tabled("rule." + card.id() + ".title", card.title());
    }

    /** The reason of a rule: in English as its chapter has it. */
    static Wording because(Card card) {
        return new Tabled("rule." + card.id() + ".because", card.because());
    }

    /** What others do where practice differs: in English as the rule's chapter has it. */
    static Optional<Wording> differs(Card card) {
        return card.differs().map(differs -> new Tabled("rule." + card.id() + ".differs", differs));
    }

    /** A source: a publication by its name, common practice in words. */
    static Wording source(Citation citation) {
        return citation.practice() ? new Tabled("source." + citation.id(), citation.title()) : name(citation.print());
    }
}
