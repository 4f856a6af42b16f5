package stoneprocess.rules.text;

import java.util.Collection;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.term.Term;

/**
 * The English words for keys. {@code {range:name}} and {@code {value:name}} in a phrase stand for parameters, printed
 * in the reader's units.
 */
public final class Phrases {
    private static final ResourceBundle ENGLISH =
            ResourceBundle.getBundle("stoneprocess.rules.text.english", Locale.ROOT, Phrases.class.getClassLoader());
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(range|value):([a-z0-9.-]+)}");

    private final UnitSystem units;
    private final Parameters parameters;

    public Phrases(UnitSystem units, Parameters parameters) {
        this.units = units;
        this.parameters = parameters;
    }

    /** The phrase for a constant: {@code Task.mask} for {@code Task.MASK}. */
    public String of(Term term) {
        return get(key(term));
    }

    /** A part of what is said about a constant: {@code Hazard.noise.controls}. */
    public String of(Term term, String part) {
        return get(key(term) + "." + part);
    }

    /** What each term says, one after the other. */
    String sentence(Collection<? extends Term> terms) {
        return String.join(" ", terms.stream().map(this::of).toList());
    }

    /** Who decides about a hazard, as the end of a sentence. */
    public String decides(SafetyWarning warning) {
        return String.join(" and ", warning.decides().stream().map(this::of).toList()) + ".";
    }

    /** The key of a constant in the bundle. */
    public static String key(Term term) {
        Class<?> type = ((Enum<?>) term).getDeclaringClass();
        return type.getSimpleName() + "." + term.key();
    }

    /** True when the bundle has the key. */
    public static boolean has(String key) {
        return ENGLISH.containsKey(key);
    }

    /**
     * The phrase for a key.
     *
     * @throws MissingResourceException when the bundle lacks it; a test keeps the bundle complete
     */
    public String get(String key) {
        Matcher matcher = PLACEHOLDER.matcher(ENGLISH.getString(key));
        StringBuilder text = new StringBuilder();
        while (matcher.find()) {
            matcher.appendReplacement(text, Matcher.quoteReplacement(number(matcher.group(1), matcher.group(2))));
        }
        return matcher.appendTail(text).toString();
    }

    private String number(String kind, String parameter) {
        return kind.equals("value")
                ? units.print(parameters.get(parameter, Quantity.class))
                : units.print(Range.of(
                        parameters.get(parameter + ".low", Quantity.class),
                        parameters.get(parameter + ".high", Quantity.class)));
    }
}
