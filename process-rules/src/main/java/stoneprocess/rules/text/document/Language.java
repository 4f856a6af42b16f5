package stoneprocess.rules.text.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A language: phrases by key. A shipped one is the bundles of a folder that is called by its tag, {@code en} for English.
 * Immutable in what it says, and safe to share between threads.
 */
public final class Language {
    private static final List<String> BUNDLES = List.of("language", "phrases", "sheets");

    private static final String ROOM = "/stoneprocess/rules/text/";

    private static final class Shipped {
        private static final Language ENGLISH = new Language(Locale.ENGLISH, load("en"));
    }

    private final Locale locale;
    private final Map<String, String> phrases;
    private final Map<String, Template> templates = new ConcurrentHashMap<>();
    private final Plurals plurals;

    private Language(Locale locale, Map<String, String> phrases) {
        this.locale = locale;
        this.phrases = phrases;
        this.plurals = Plurals.of(phrases.getOrDefault("language.plurals", ""));
    }

    public static Language english() {
        return Shipped.ENGLISH;
    }

    /**
     * A language whose bundles are on the class path.
     *
     * @param locale {@code de-AT} is answered by the bundles of {@code de-AT}, or else of {@code de}
     * @throws InvalidInputException when neither is there, naming those that are, or when phrases are missing
     */
    public static Language of(Locale locale) {
        return parse(locale.toLanguageTag(), "locale");
    }

    /**
     * The same by the language's tag.
     *
     * @param tag such as {@code en} or {@code de-AT}
     * @param field what the tag answers, for the message
     * @throws InvalidInputException when there are no bundles for the tag, naming those that are, or when phrases are missing
     */
    public static Language parse(String tag, String field) {
        Locale locale = Locale.forLanguageTag(Objects.requireNonNull(tag, "tag"));
        Objects.requireNonNull(field, "field");
        if (locale.getLanguage().equals(Locale.ENGLISH.getLanguage())) {
            return english();
        }
        for (String folder : List.of(locale.toLanguageTag(), locale.getLanguage())) {
            if (isThere(folder)) {
                return of(locale, load(folder));
            }
        }
        throw new InvalidInputException(field, tag, "one of " + String.join(", ", tags()));
    }

    private static boolean isThere(String folder) {
        return Language.class.getResource(ROOM + folder + "/" + BUNDLES.get(0) + ".properties") != null;
    }

    /** The tags of the languages whose bundles are on the class path, of those that Java knows. */
    public static Set<String> tags() {
        return Stream.concat(
                        Stream.of(Locale.getISOLanguages()),
                        Stream.of(Locale.getAvailableLocales()).map(Locale::toLanguageTag))
                .filter(Language::isThere)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * A language from phrases by key.
     *
     * @throws InvalidInputException naming the phrases that English has and this lacks, or whose arguments differ
     */
    public static Language of(Locale locale, Map<String, String> phrases) {
        Language language = new Language(locale, Map.copyOf(Objects.requireNonNull(phrases, "phrases")));
        List<String> faults = new ArrayList<>();
        for (String key : english().keys()) {
            if (!language.has(key)) {
                faults.add(key);
            } else if (!language.template(key)
                    .arguments()
                    .equals(english().template(key).arguments())) {
                faults.add(key + ", which takes " + english().template(key).arguments());
            }
        }
        if (!faults.isEmpty()) {
            throw new InvalidInputException(
                    "language " + locale.toLanguageTag(), "incomplete", "phrases for " + String.join(", ", faults));
        }
        return language;
    }

    private static Map<String, String> load(String tag) {
        Map<String, String> phrases = new TreeMap<>();
        for (String bundle : BUNDLES) {
            String name = tag + "/" + bundle + ".properties";
            try (InputStream stream = Language.class.getResourceAsStream(ROOM + name)) {
                if (stream == null) {
                    throw new InvalidInputException("language " + tag, "missing", "the bundle " + name);
                }
                Properties read = new Properties();
                read.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
                read.stringPropertyNames().forEach(key -> phrases.put(key, read.getProperty(key)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return Map.copyOf(phrases);
    }

    public Locale locale() {
        return locale;
    }

    /** The keys of all phrases, in order. */
    public Set<String> keys() {
        return new TreeSet<>(phrases.keySet());
    }

    public boolean has(String key) {
        return phrases.containsKey(key);
    }

    /**
     * A phrase as the bundle has it, with its braces.
     *
     * @throws InvalidInputException when the language has no such phrase
     */
    public String phrase(String key) {
        String phrase = phrases.get(key);
        if (phrase == null) {
            throw new InvalidInputException("phrase", key, "a phrase of the language " + locale.toLanguageTag());
        }
        return phrase;
    }

    Template template(String key) {
        return templates.computeIfAbsent(key, missing -> Template.of(missing, phrase(missing)));
    }

    Plurals plurals() {
        return plurals;
    }
}
