package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.Sign;
import stoneprocess.core.term.Term;

/** The derived schema of a job log against its records, read here in another way. */
class JobLogSchemaTest {
    private static final Described SCHEMA = Described.by(Json.JOB_LOG);

    static Stream<Arguments> records() {
        return Stream.of(
                Arguments.of(Entry.Worked.class, "work"),
                Arguments.of(Entry.Looked.class, "look"),
                Arguments.of(Reading.class, "reading"),
                Arguments.of(Entry.Happened.class, "event"),
                Arguments.of(Entry.Tried.class, "test-area"));
    }

    private static Described definition(String name) {
        return name.equals("entry") ? entry() : entry().get("properties").get(name);
    }

    private static Described entry() {
        return SCHEMA.get("properties").get("entries").get("items");
    }

    private static List<RecordComponent> components(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .filter(component -> !component.getName().equals("at"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("records")
    void fields_of_the_schema_are_those_of_the_record(Class<?> type, String name) {
        List<String> fields = new ArrayList<>();
        List<String> required = new ArrayList<>();
        for (RecordComponent component : components(type)) {
            fields.add(component.getName());
            if (component.getType() != Optional.class && component.getType() != Direction.class) {
                required.add(component.getName());
            }
        }
        assertThat(definition(name).get("properties").names()).containsExactlyElementsOf(fields);
        assertThat(definition(name).get("required").texts()).isEqualTo(required);
        assertThat(definition(name).get("additionalProperties").value()).isEqualTo(false);
        assertThat(definition("entry").get("properties").names()).contains(name);
    }

    @ParameterizedTest
    @MethodSource("records")
    void words_of_the_schema_are_those_of_the_enums(Class<?> type, String name) {
        for (RecordComponent component : components(type)) {
            boolean optional = component.getType() == Optional.class;
            Type of = optional
                    ? ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                    : component.getType();
            if (of instanceof Class<?> words && words.isEnum()) {
                Described property = definition(name).get("properties").get(component.getName());
                boolean orUnknown = optional || words == Direction.class;
                Described listed = orUnknown ? property.first("anyOf") : property;
                assertThat(listed.get("enum").texts()).as(component.toString()).isEqualTo(keys(words));
                assertThat(property.optional("anyOf")
                                .map(either -> either.value().toString().contains("unknown")))
                        .isEqualTo(orUnknown ? Optional.of(true) : Optional.empty());
            }
        }
        Described signs = definition("look").get("properties").get("signs").first("anyOf");
        assertThat(Set.copyOf(signs.get("items").get("enum").texts())).isEqualTo(Set.copyOf(keys(Sign.class)));
    }

    private static List<String> keys(Class<?> words) {
        return Arrays.stream(words.getEnumConstants())
                .map(constant -> ((Term) constant).key())
                .toList();
    }
}
