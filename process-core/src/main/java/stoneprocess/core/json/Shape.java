package stoneprocess.core.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;

/** How values of one type are printed, read and described. A value's tree is made of maps, lists, texts and numbers. */
interface Shape {
    Object print(Object value, Grades grades);

    Object read(Node node);

    /** The JSON schema of the value; parts that have a name are put into the definitions and referred to. */
    Map<String, Object> schema(Definitions definitions);

    /** A shape that looks at nothing but the value. */
    static Shape of(Function<Object, Object> print, Function<Node, Object> read, Map<String, Object> schema) {
        return of((value, grades) -> print.apply(value), read, definitions -> schema);
    }

    static Shape of(
            BiFunction<Object, Grades, Object> print,
            Function<Node, Object> read,
            Function<Definitions, Map<String, Object>> schema) {
        return new Shape() {
            @Override
            public Object print(Object value, Grades grades) {
                return print.apply(value, grades);
            }

            @Override
            public Object read(Node node) {
                return read.apply(node);
            }

            @Override
            public Map<String, Object> schema(Definitions definitions) {
                return schema.apply(definitions);
            }
        };
    }

    /** An object of a tree, its fields in the order given. */
    static Map<String, Object> object(Object... namesAndValues) {
        Map<String, Object> fields = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fields.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return fields;
    }
}
