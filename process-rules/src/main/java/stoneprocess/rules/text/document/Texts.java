package stoneprocess.rules.text.document;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.UnitSystem;

/**
 * Says what a {@link Wording} or a {@link Document} holds, in a language and in the reader's units. Made last; never parse
 * what it says. Immutable and safe to share between threads.
 */
public final class Texts {
    private final Language language;
    private final UnitSystem units;
    private final Parameters parameters;
    private final Numbers numbers;

    private Texts(Language language, UnitSystem units, Parameters parameters) {
        this.language = language;
        this.units = units;
        this.parameters = parameters;
        this.numbers = new Numbers(language, units);
    }

    /** English, metric, with the shipped numbers. */
    public static Texts english() {
        return in(Language.english());
    }

    /**
     * A shipped language, metric, with the shipped numbers.
     *
     * @throws stoneprocess.core.problem.InvalidInputException when it is not shipped
     */
    public static Texts in(Locale locale) {
        return in(Language.of(locale));
    }

    /** A language, metric, with the shipped numbers. */
    public static Texts in(Language language) {
        return new Texts(Objects.requireNonNull(language, "language"), UnitSystem.METRIC, Parameters.standard());
    }

    /** The same in a reader's units. */
    public Texts in(UnitSystem readersUnits) {
        return new Texts(language, readersUnits, parameters);
    }

    /** The same with the numbers of a rulebase, which phrases name. */
    public Texts with(Parameters numbersOfRulebase) {
        return new Texts(language, units, numbersOfRulebase);
    }

    /** The document as plain text: lines of at most 96 characters, ending with a line feed. */
    public String page(Document document) {
        return new PlainPage(with(document.parameters()), PlainPage.WIDTH).print(document);
    }

    /** The document as plain text whose lines are as long as they are. */
    public String unwrapped(Document document) {
        return new PlainPage(with(document.parameters()), Integer.MAX_VALUE).print(document);
    }

    /**
     * The document in one line.
     *
     * @throws IllegalArgumentException for a document that has no short form
     */
    public String line(Document document) {
        return with(document.parameters())
                .word(document.line()
                        .orElseThrow(() -> new IllegalArgumentException("The document has no short form")));
    }

    /** The document in Markdown. */
    public String markdown(Document document) {
        return new MarkdownPage(with(document.parameters())).print(document);
    }

    /**
     * The words.
     *
     * @throws IllegalArgumentException for a phrase that the language does not have, or without an argument that it takes
     */
    public String word(Wording wording) {
        if (wording instanceof Wording.Phrase phrase) {
            return fill(phrase);
        }
        if (wording instanceof Wording.Tabled tabled) {
            return language.has(tabled.key()) ? language.phrase(tabled.key()) : tabled.english();
        }
        if (wording instanceof Wording.Name name) {
            return name.text();
        }
        if (wording instanceof Wording.Amount amount) {
            return numbers.print(amount.quantity(), amount.precision());
        }
        if (wording instanceof Wording.AmountRange range) {
            return numbers.print(range.low(), range.high());
        }
        if (wording instanceof Wording.Number number) {
            return numbers.print(number.value(), number.grouped());
        }
        if (wording instanceof Wording.Listing listing) {
            return join(listing);
        }
        if (wording instanceof Wording.Stating stating) {
            return word(stating.words());
        }
        Wording.Shortest shortest = (Wording.Shortest) wording;
        String text = "";
        for (Wording candidate : shortest.fromRichest()) {
            text = word(candidate);
            if (text.length() < shortest.limit()) {
                return text;
            }
        }
        return text;
    }

    private String fill(Wording.Phrase phrase) {
        StringBuilder text = new StringBuilder();
        for (Template.Part part : language.template(phrase.key()).parts()) {
            if (part instanceof Template.Literal literal) {
                text.append(literal.text());
            } else if (part instanceof Template.Argument argument) {
                String words = word(argument(phrase, argument.name()));
                text.append(argument.capital() ? capital(words) : words);
            } else if (part instanceof Template.Forms forms) {
                text.append(form(forms, argument(phrase, forms.name())));
            } else {
                text.append(number((Template.Parameter) part));
            }
        }
        return text.toString();
    }

    private static Wording argument(Wording.Phrase phrase, String name) {
        Wording argument = phrase.arguments().get(name);
        if (argument == null) {
            throw new InvalidInputException(
                    "phrase " + phrase.key(),
                    "without " + name,
                    name + " beside " + phrase.arguments().keySet());
        }
        return argument;
    }

    private String capital(String words) {
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(language.locale()) + words.substring(1);
    }

    private String form(Template.Forms forms, Wording argument) {
        if (!(argument instanceof Wording.Number number)) {
            throw new InvalidInputException(forms.name(), word(argument), "a number, which chooses a plural");
        }
        int form = language.plurals().form(number.value().longValue());
        return forms.forms().get(Math.min(form, forms.forms().size() - 1)).replace("#", word(number));
    }

    private String number(Template.Parameter parameter) {
        return parameter.range()
                ? numbers.print(
                        parameters.get(parameter.name() + ".low", Quantity.class),
                        parameters.get(parameter.name() + ".high", Quantity.class))
                : numbers.print(parameters.get(parameter.name(), Quantity.class), Precision.USUAL);
    }

    private String join(Wording.Listing listing) {
        List<Wording> members = listing.members();
        String text = members.isEmpty() ? "" : word(members.get(0));
        String key = "list." + listing.joint().key();
        for (int i = 1; i < members.size(); i++) {
            String last = i == members.size() - 1 && language.has(key + ".last") ? key + ".last" : key;
            text = word(new Wording.Phrase(
                    last, Map.of("before", Wording.name(text), "next", Wording.name(word(members.get(i))))));
        }
        return text;
    }
}
