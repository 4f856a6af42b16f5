package stoneprocess.core.internal.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads a shipped table: tab-separated, first line the column names, lines that start with {@code #} are remarks. A row
 * with a wrong number of cells is an error that names the table and the line.
 */
public final class Tsv {
    private Tsv() {}

    /** One line of a table. */
    public static final class Row {
        private final String place;
        private final Map<String, String> cells;

        private Row(String place, Map<String, String> cells) {
            this.place = place;
            this.cells = cells;
        }

        /** The cell of a column; an unknown column is an error. */
        public String get(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new IllegalStateException(place + " has no column " + column);
            }
            return cell;
        }

        /** The parts of a cell that lists several values separated by {@code |}; an empty cell has none. */
        public List<String> list(String column) {
            String cell = get(column);
            return cell.isEmpty() ? List.of() : List.of(cell.split("\\|"));
        }

        public double number(String column) {
            try {
                return Double.parseDouble(get(column));
            } catch (NumberFormatException e) {
                throw new IllegalStateException(place + " column " + column + " is not a number: " + get(column), e);
            }
        }
    }

    /** All rows of the table that lies beside {@code owner} on the class path. */
    public static List<Row> read(Class<?> owner, String name) {
        try (BufferedReader reader = open(owner, name)) {
            return read(name, reader);
        } catch (IOException e) {
            throw new UncheckedIOException("Table " + name + " cannot be read", e);
        }
    }

    /**
     * What the table that lies beside {@code owner} says, however it is laid out: its column names and rows, without
     * remarks, blank lines, and spaces around cells.
     */
    public static String content(Class<?> owner, String name) {
        try (BufferedReader reader = open(owner, name)) {
            return reader.lines()
                    .filter(line -> !isRemark(line))
                    .map(line ->
                            Stream.of(line.split("\t", -1)).map(String::strip).collect(Collectors.joining("\t")))
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException("Table " + name + " cannot be read", e);
        }
    }

    private static BufferedReader open(Class<?> owner, String name) {
        InputStream in = owner.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("Table " + name + " is missing beside " + owner.getName());
        }
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    private static boolean isRemark(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    static List<Row> read(String name, BufferedReader reader) throws IOException {
        List<Row> rows = new ArrayList<>();
        String[] columns = null;
        int number = 0;
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            number++;
            if (isRemark(line)) {
                continue;
            }
            String[] cells = line.split("\t", -1);
            if (columns == null) {
                columns = cells;
                continue;
            }
            String place = name + " line " + number;
            if (cells.length != columns.length) {
                throw new IllegalStateException(
                        place + " has " + cells.length + " cells, the table has " + columns.length + " columns");
            }
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < columns.length; i++) {
                row.put(columns[i], cells[i].strip());
            }
            rows.add(new Row(place, row));
        }
        return List.copyOf(rows);
    }
}
