package stoneprocess.core.json;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.internal.input.Decimals;
import stoneprocess.core.problem.InvalidInputException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/**
 * JSON text to a tree and back. An object is a map in the order of its fields, an array a list, a number a plain
 * decimal. Only the streaming part of Jackson is used.
 */
final class Tree {
    static final int LONGEST_TEXT = 20_000_000;
    private static final int DEEPEST = 100;
    private static final int LONGEST_NAME = 1_000;
    /** Brackets, names and values; a large recommendation has a tenth of it. */
    private static final int MOST_TOKENS = 1_000_000;

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(Decimals.LONGEST)
                    .maxNameLength(LONGEST_NAME)
                    .maxTokenCount(MOST_TOKENS)
                    .build())
            .disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES, JsonWriteFeature.ESCAPE_NON_ASCII)
            .characterEscapes(new UnseenEscapes())
            .build();
    /** Written out, so that another release of Jackson prints the same bytes. */
    private static final Separators SEPARATORS = new Separators(
            " ", ':', Separators.Spacing.BOTH, ',', Separators.Spacing.NONE, " ", ',', Separators.Spacing.NONE, " ");

    private static final ObjectWriteContext PRETTY = new ObjectWriteContext.Base() {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            return new DefaultPrettyPrinter(SEPARATORS)
                    .withObjectIndenter(indenter)
                    .withArrayIndenter(indenter);
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    };

    private Tree() {}

    /**
     * Reads one JSON value and nothing after it.
     *
     * @param what what the text is meant to be, for error messages
     */
    static Object parse(String text, String what) {
        if (text.length() > LONGEST_TEXT) {
            throw new InvalidInputException(
                    what, text.length() + " characters", "a text of at most " + LONGEST_TEXT + " characters");
        }
        if (text.isBlank()) {
            throw new InvalidInputException(what, text, "a JSON object; the text is empty");
        }
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), text)) {
            return document(parser, what);
        }
    }

    /** Says in its own words what is wrong: Jackson's messages name settings that a user of this library cannot reach. */
    private static Object document(JsonParser parser, String what) {
        try {
            parser.nextToken();
            Object value = value(parser, "");
            if (parser.nextToken() != null) {
                throw new InvalidInputException(
                        what, parser.getString(), "nothing after the JSON object" + place(parser.currentLocation()));
            }
            return value;
        } catch (InvalidInputException e) {
            // A number that is the whole text has no path of its own.
            throw e.field().isEmpty() ? e.within(what) : e;
        } catch (StreamConstraintsException e) {
            throw new InvalidInputException(
                    what,
                    "the text",
                    "nesting to " + DEEPEST + " levels, field names and numbers of " + Decimals.LONGEST
                            + " characters, " + MOST_TOKENS + " names and values in all; one of these is exceeded"
                            + place(parser.currentLocation()));
        } catch (StreamReadException e) {
            throw new InvalidInputException(what, "the text", "valid JSON; it stops being so" + place(e.getLocation()));
        }
    }

    private static String place(TokenStreamLocation location) {
        return " at line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static Object value(JsonParser parser, String path) {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser, path);
            case START_ARRAY -> array(parser, path);
            case VALUE_STRING -> parser.getString();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Decimals.parse(parser.getString(), path);
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            default -> Null.NULL;
        };
    }

    private static Map<String, Object> object(JsonParser parser, String path) {
        Map<String, Object> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            String field = Node.pathOf(path, name);
            if (fields.containsKey(name)) {
                throw new InvalidInputException(field, "the field", "each field once");
            }
            parser.nextToken();
            fields.put(name, value(parser, field));
        }
        return fields;
    }

    private static List<Object> array(JsonParser parser, String path) {
        List<Object> members = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            members.add(value(parser, path + "[" + members.size() + "]"));
        }
        return members;
    }

    /** JSON's null, which no field but the user's own accepts: what is not known is left out. */
    enum Null {
        NULL;

        @Override
        public String toString() {
            return "null";
        }
    }

    /**
     * The text of a tree, the same on every machine.
     *
     * @param pretty two spaces a level, ending with a line feed; otherwise without any space
     */
    static String print(Object tree, boolean pretty) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(pretty ? PRETTY : ObjectWriteContext.empty(), text)) {
            write(generator, tree);
        }
        return pretty ? text + "\n" : text.toString();
    }

    private static void write(JsonGenerator generator, Object value) {
        if (value instanceof Map<?, ?> fields) {
            generator.writeStartObject();
            fields.forEach((name, member) -> {
                generator.writeName((String) name);
                write(generator, member);
            });
            generator.writeEndObject();
        } else if (value instanceof List<?> members) {
            generator.writeStartArray();
            members.forEach(member -> write(generator, member));
            generator.writeEndArray();
        } else if (value instanceof BigDecimal number) {
            generator.writeNumber(number.toPlainString());
        } else if (value instanceof Integer number) {
            generator.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            generator.writeBoolean(flag);
        } else if (value == Null.NULL) {
            generator.writeNull();
        } else {
            generator.writeString((String) value);
        }
    }
}
