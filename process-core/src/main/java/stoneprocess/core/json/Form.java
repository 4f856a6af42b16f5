package stoneprocess.core.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.tool.GritSequence;

/**
 * How values of one type are written as JSON: lossless, versioned, the same bytes on every machine. Fields are the
 * record's components in their order; quantities carry their unit and are plain decimals, rounded to the step of their
 * {@linkplain stoneprocess.core.quantity.Dimension dimension}. A value that is read equals the one that was printed.
 *
 * <p>A field that the form does not have is refused, but for those whose names start with {@code x-}: they are the
 * user's own. A survey and a job log keep them; of every other form, {@link #readWithExtras} keeps them beside the value.
 *
 * <p>All methods that print or read text throw {@link MissingLibraryException} when Jackson is not on the class path.
 * Immutable and safe to share between threads.
 *
 * @param <T> the type of the values
 */
public final class Form<T> {
    private final String name;
    private final String version;
    private final Shape shape;
    private final String description;
    private final GritSequence sequence;
    private final boolean pretty;

    private Form(String name, String version, Shape shape, String description, GritSequence sequence, boolean pretty) {
        this.name = name;
        this.version = version;
        this.shape = shape;
        this.description = description;
        this.sequence = sequence;
        this.pretty = pretty;
    }

    /**
     * The form of a record of records, enums that are {@linkplain stoneprocess.core.term.Term terms}, quantities, ranges,
     * texts, whole numbers, truth values, optional parts, lists, sets and maps of these, and sealed interfaces of
     * records.
     *
     * @param name what the form is called, in lower case with hyphens
     * @param type a public record; where it has a public constant {@code FORMAT}, such as {@code
     *     "floor-recommendation/1"}, that is the version, and it is printed wherever the record is; otherwise it is the
     *     name and {@code /1}
     * @param description what a value is, in one sentence, for the schema
     */
    public static <T> Form<T> of(String name, Class<T> type, String description) {
        Objects.requireNonNull(description, "description");
        Optional<String> own = RecordShape.format(Objects.requireNonNull(type, "type"));
        String version = own.orElse(Objects.requireNonNull(name, "name") + "/1");
        Shape shape = own.isPresent() ? Shapes.of(type) : new RecordShape(Typed.of(type), RecordShape.FORMAT, version);
        return new Form<>(name, version, shape, description, GritSequence.standard(), true);
    }

    /** The same form, whose grades are of another sequence than the standard one. */
    public Form<T> with(GritSequence other) {
        return new Form<>(name, version, shape, description, other, pretty);
    }

    /** The same form, printed without spaces and line feeds. */
    public Form<T> compact() {
        return new Form<>(name, version, shape, description, sequence, false);
    }

    /** What the form is called, for example {@code job-log}. */
    public String name() {
        return name;
    }

    /** The version that is printed and read, for example {@code job-log/1}. */
    public String version() {
        return version;
    }

    /**
     * Prints a value; pretty text ends with a line feed.
     *
     * @throws InvalidInputException for a grade that the sequence printed along lacks, so that it could not be read back
     */
    public String print(T value) {
        return print(new WithExtras<>(value, Map.of()));
    }

    /**
     * Prints a value with fields of the user's own.
     *
     * @throws InvalidInputException as {@link #print(Object)}, and for a field whose name does not start with {@code x-}
     *     or whose value is no JSON
     */
    @SuppressWarnings("unchecked")
    public String print(WithExtras<T> value) {
        return Jackson.with(() -> {
            Map<String, Object> tree = (Map<String, Object>) shape.print(value.value(), Grades.ANY);
            return Tree.print(Extras.insert(value.extras(), tree), pretty);
        });
    }

    /**
     * Prints a value in UTF-8. The stream is flushed and left open.
     *
     * @throws InvalidInputException as {@link #print(Object)}
     * @throws UncheckedIOException when the stream fails
     */
    public void print(T value, OutputStream out) {
        try {
            out.write(print(value).getBytes(StandardCharsets.UTF_8));
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException("The " + what() + " cannot be written", e);
        }
    }

    /**
     * Reads a value.
     *
     * @throws NullPointerException naming {@code json} when it is null
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted; for
     *     another version than this library reads, it names the one that it does
     */
    public T read(String json) {
        return read(json, Scope.of(sequence));
    }

    /**
     * Reads a value and keeps the fields of the user's own that stand in it.
     *
     * @throws InvalidInputException as {@link #read(String)}, and for a field of the user's own whose name would not
     *     survive
     */
    public WithExtras<T> readWithExtras(String json) {
        Extras extras = new Extras("");
        T value = read(json, Scope.of(sequence).with(extras));
        return new WithExtras<>(value, extras.kept());
    }

    @SuppressWarnings("unchecked")
    private T read(String json, Scope scope) {
        Objects.requireNonNull(json, "json");
        return Jackson.with(() -> {
            Node root = new Node("", Tree.parse(json, what()), scope);
            if (!(root.value() instanceof Map)) {
                throw new InvalidInputException(what(), String.valueOf(root.value()), "a JSON object");
            }
            return (T) shape.read(root);
        });
    }

    /**
     * Reads a value to the end of a stream, which is left open.
     *
     * @throws InvalidInputException as {@link #read(String)}, and for what is no UTF-8
     * @throws UncheckedIOException when the stream fails
     */
    public T read(InputStream json) {
        Objects.requireNonNull(json, "json");
        try {
            Reader reader = new InputStreamReader(json, StandardCharsets.UTF_8.newDecoder());
            StringBuilder read = new StringBuilder();
            char[] buffer = new char[8192];
            for (int count = reader.read(buffer);
                    count >= 0 && read.length() <= Tree.LONGEST_TEXT;
                    count = reader.read(buffer)) {
                read.append(buffer, 0, count);
            }
            return read(read.toString());
        } catch (CharacterCodingException e) {
            throw new InvalidInputException(what(), "the text", "text in UTF-8");
        } catch (IOException e) {
            throw new UncheckedIOException("The " + what() + " cannot be read", e);
        }
    }

    /** The JSON schema (2020-12) of the form, derived from the record. */
    public String schema() {
        return schema(SurveyShape::howFound);
    }

    /**
     * The same, where each field of a survey is described by its question.
     *
     * @param questions from the name of a field, such as {@code site.area}, {@code damages.scratches} or {@code readings},
     *     to the question in a sentence or more; an empty text where there is nothing to say
     */
    public String schema(Function<String, String> questions) {
        return Jackson.with(() -> Tree.print(schemaTree(new Definitions(questions)), true));
    }

    private Map<String, Object> schemaTree(Definitions definitions) {
        Map<String, Object> object = shape instanceof RecordShape ofRecord
                ? ofRecord.objectSchema(definitions)
                : SurveyShape.objectSchema(definitions);
        Map<String, Object> schema = Shape.object(
                "$schema",
                "https://json-schema.org/draft/2020-12/schema",
                "$id",
                "urn:stoneprocess:" + version.replace('/', ':'),
                "description",
                description);
        schema.putAll(object);
        schema.put("$defs", definitions.byName());
        return schema;
    }

    @Override
    public String toString() {
        return version;
    }

    private String what() {
        return name.replace('-', ' ');
    }
}
