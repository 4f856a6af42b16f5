package stoneprocess.core.json;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.problem.InvalidInputException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * JSON text to a tree and back. An object is a map in the order of its fields, an array a list, a number a plain
 * decimal. Only the streaming part of Jackson is used.
 */
final class Tree {
    private static final int LONGEST_TEXT = 20_000_000;
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final ObjectWriteContext PRETTY = new ObjectWriteContext.Base() {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            return new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
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
            parser.nextToken();
            Object value = value(parser);
            if (parser.nextToken() != null) {
                throw new InvalidInputException(
                        what, parser.getString(), "nothing after the JSON object" + place(parser.currentLocation()));
            }
            return value;
        } catch (StreamConstraintsException e) {
            throw new InvalidInputException(what, "the text", "JSON within sane limits: " + e.getOriginalMessage());
        } catch (JacksonException e) {
            throw new InvalidInputException(
                    what, "the text", "valid JSON: " + e.getOriginalMessage() + place(e.getLocation()));
        }
    }

    private static String place(TokenStreamLocation location) {
        return ", at line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static Object value(JsonParser parser) {
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> parser.getString();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            default -> Null.NULL;
        };
    }

    private static Map<String, Object> object(JsonParser parser) {
        Map<String, Object> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            fields.put(name, value(parser));
        }
        return fields;
    }

    private static List<Object> array(JsonParser parser) {
        List<Object> members = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            members.add(value(parser));
        }
        return members;
    }

    /** JSON's null, which no field accepts: what is not known is left out. */
    enum Null {
        NULL;

        @Override
        public String toString() {
            return "null";
        }
    }

    /** The text of a tree, two spaces a level, ending with a line feed; the same on every machine. */
    static String print(Object tree) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = JSON.createGenerator(PRETTY, text)) {
            write(generator, tree);
        }
        return text + "\n";
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
        } else {
            generator.writeString((String) value);
        }
    }
}
