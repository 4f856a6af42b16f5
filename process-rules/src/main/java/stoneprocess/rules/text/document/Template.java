package stoneprocess.rules.text.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A phrase of a bundle, taken apart. In braces stand {@code {grade}} for an argument; {@code {finish^}} for one that begins
 * with a capital; {@code {count?# reading|# readings}} for the form that goes with a number; {@code {value:name}} and
 * {@code {range:name}} for parameters.
 */
record Template(List<Part> parts) {
    private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}");
    private static final Pattern ARGUMENT = Pattern.compile("([a-z][A-Za-z]*)(\\^?)");
    private static final Pattern FORMS = Pattern.compile("([a-z][A-Za-z]*)\\?(.*)");
    private static final Pattern PARAMETER = Pattern.compile("(value|range):([a-z0-9.-]+)");

    sealed interface Part {}

    record Literal(String text) implements Part {}

    record Argument(String name, boolean capital) implements Part {}

    record Forms(String name, List<String> forms) implements Part {}

    record Parameter(String name, boolean range) implements Part {}

    static Template of(String key, String phrase) {
        List<Part> parts = new ArrayList<>();
        Matcher braces = BRACES.matcher(phrase);
        int end = 0;
        while (braces.find()) {
            literal(key, phrase.substring(end, braces.start()), parts);
            parts.add(part(key, braces.group(1)));
            end = braces.end();
        }
        literal(key, phrase.substring(end), parts);
        return new Template(List.copyOf(parts));
    }

    private static void literal(String key, String text, List<Part> parts) {
        if (text.indexOf('{') >= 0 || text.indexOf('}') >= 0) {
            throw new InvalidInputException("phrase " + key, text, "braces in pairs");
        }
        if (!text.isEmpty()) {
            parts.add(new Literal(text));
        }
    }

    private static Part part(String key, String inBraces) {
        Matcher argument = ARGUMENT.matcher(inBraces);
        if (argument.matches()) {
            return new Argument(argument.group(1), !argument.group(2).isEmpty());
        }
        Matcher forms = FORMS.matcher(inBraces);
        if (forms.matches()) {
            return new Forms(forms.group(1), List.of(forms.group(2).split("\\|", -1)));
        }
        Matcher parameter = PARAMETER.matcher(inBraces);
        if (parameter.matches()) {
            return new Parameter(parameter.group(2), parameter.group(1).equals("range"));
        }
        throw new InvalidInputException(
                "phrase " + key,
                "{" + inBraces + "}",
                "{name}, {name^}, {name?one|more}, {value:parameter} and {range:parameter}");
    }

    /** The names of the arguments that the phrase asks for. */
    Set<String> arguments() {
        Set<String> names = new TreeSet<>();
        for (Part part : parts) {
            if (part instanceof Argument argument) {
                names.add(argument.name());
            } else if (part instanceof Forms forms) {
                names.add(forms.name());
            }
        }
        return names;
    }
}
