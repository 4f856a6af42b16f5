package stoneprocess.examples;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.text.document.Language;

/** English with every word of every phrase in brackets, so that what stands outside them came from no bundle. */
public final class BracketedLanguage {
    public static final String OPEN = "\u27E6";
    public static final String CLOSE = "\u27E7";

    /** A language that Java knows and nobody ships here. */
    public static final String TAG = "vo";

    private static final Pattern PIECE = Pattern.compile("\\{[^{}]*}|[^{}]+");
    private static final Pattern FORM = Pattern.compile("#|[^#]+");

    private BracketedLanguage() {}

    static Language language() {
        return Language.of(Locale.forLanguageTag(TAG), phrases());
    }

    /** The phrases by key, with what other languages keep in their bundles: rules, sources and stones. */
    public static Map<String, String> phrases() {
        Map<String, String> phrases = new TreeMap<>();
        for (String key : Language.english().keys()) {
            phrases.put(key, phrase(key, Language.english().phrase(key)));
        }
        for (Card card : Rulebase.standard().cards()) {
            phrases.put("rule." + card.id() + ".title", words(card.title()));
            phrases.put("rule." + card.id() + ".because", words(card.because()));
            card.differs().ifPresent(differs -> phrases.put("rule." + card.id() + ".differs", words(differs)));
        }
        Sources.standard().all().stream()
                .filter(Citation::practice)
                .forEach(source -> phrases.put("source." + source.id(), words(source.title())));
        StoneCatalogue.standard().all().forEach(stone -> phrases.put("stone." + stone.name(), words(stone.name())));
        return phrases;
    }

    private static String phrase(String key, String phrase) {
        if (key.equals("language.plurals")) {
            return phrase;
        }
        return pieces(PIECE, phrase)
                .map(piece -> piece.startsWith("{") ? inBraces(piece) : words(piece))
                .collect(Collectors.joining());
    }

    /** The forms of a plural hold words; the other braces hold names. */
    private static String inBraces(String piece) {
        int forms = piece.indexOf('?');
        if (forms < 0) {
            return piece;
        }
        String bracketed = Stream.of(
                        piece.substring(forms + 1, piece.length() - 1).split("\\|", -1))
                .map(form -> pieces(FORM, form)
                        .map(part -> part.equals("#") ? part : words(part))
                        .collect(Collectors.joining()))
                .collect(Collectors.joining("|"));
        return piece.substring(0, forms + 1) + bracketed + "}";
    }

    private static Stream<String> pieces(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group);
    }

    private static String words(String text) {
        return text.chars().anyMatch(Character::isLetter) ? OPEN + text + CLOSE : text;
    }
}
