import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Sources;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Mend;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.SiteCheck;

/**
 * Run by the build before the rules are compiled: takes over the chapters, and writes a chapter for each table beside
 * them, one rule for each row. Only classes of core are at hand.
 */
public final class ChapterWriter {
    private static final List<String> COLUMNS =
            List.of("id", "cause", "standing", "topic", "outcome", "title", "because", "source", "since");

    private static final String HEAD = """
            package stoneprocess.rules.chapter.cause

            import stoneprocess.core.follow.*
            import stoneprocess.core.topic.*
            import stoneprocess.rules.feature.OnSite.*

            agenda-group "next"
            """;

    private static final String RULE = """

            rule "%s"
              @id("%s")
              @because("%s")
              @source("%s") @since("%s") @topic("%s")
            when
              Suspected( fault == Fault.%s, known %s )
            then
              insert( Topics.%s.need( %s.%s ) );
            end
            """;

    private final String table;
    private final Set<String> ids = new HashSet<>();
    private final Set<String> titles = new HashSet<>();
    private int line;
    private List<String> cells = List.of();

    private ChapterWriter(String table) {
        this.table = table;
    }

    /** The folder of the chapters, then the folder to be written. */
    public static void main(String[] folders) throws IOException {
        try {
            write(Path.of(folders[0]), Path.of(folders[1]));
        } catch (InvalidInputException e) {
            System.err.println(e.getMessage());
            System.exit(1);
        }
    }

    /**
     * Writes the chapters of a folder into another, which afterwards holds nothing else.
     *
     * @throws InvalidInputException for a wrong row, naming file, line and column
     */
    static void write(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (Path old : files(to)) {
            Files.delete(old);
        }
        for (Path file : files(from)) {
            String name = file.getFileName().toString();
            if (name.endsWith(".tsv")) {
                String chapter = new ChapterWriter(name).chapter(Files.readAllLines(file));
                Files.writeString(to.resolve(name.replace(".tsv", ".drl")), chapter);
            } else {
                Files.copy(file, to.resolve(name));
            }
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    /** Remarks before the column names head the chapter; those between rows stand between its rules. */
    private String chapter(List<String> lines) {
        StringBuilder chapter = new StringBuilder();
        boolean named = false;
        for (String text : lines) {
            line++;
            cells = Stream.of(text.split("\t", -1)).map(String::strip).toList();
            if (text.startsWith("#")) {
                chapter.append(named ? "\n//" : "//").append(text.substring(1)).append('\n');
            } else if (!named && !text.isBlank()) {
                named = true;
                if (!cells.equals(COLUMNS)) {
                    throw new InvalidInputException(table + ":" + line, text, "the columns " + COLUMNS);
                }
                chapter.append(HEAD);
            } else if (!text.isBlank()) {
                chapter.append(rule());
            }
        }
        return chapter.toString();
    }

    private String rule() {
        if (cells.size() != COLUMNS.size()) {
            throw new InvalidInputException(
                    table + ":" + line, cells.size() + " cells", COLUMNS.size() + " cells, one for each column");
        }
        if (!cell("id").matches("[A-Z]{3}-\\d{3}") || !ids.add(cell("id"))) {
            throw wrong("id", "three capital letters, a hyphen and three digits that no other row has");
        }
        if (!titles.add(text("title"))) {
            throw wrong("title", "a title that no other row has");
        }
        Class<? extends Term> values = values();
        return String.format(
                Locale.ROOT,
                RULE,
                text("title"),
                cell("id"),
                text("because"),
                source(),
                text("since"),
                cell("topic"),
                Term.parse(Fault.class, cell("cause"), place("cause")).name(),
                standing(),
                constantName(cell("topic")),
                values.getSimpleName(),
                outcome(values));
    }

    private Class<? extends Term> values() {
        return switch (cell("topic")) {
            case "move" -> Move.class;
            case "site-checks" -> SiteCheck.class;
            case "mends" -> Mend.class;
            case "asks" -> Ask.class;
            default -> throw wrong("topic", "one of move, site-checks, mends, asks");
        };
    }

    private String outcome(Class<? extends Term> values) {
        List<Term> all = List.of(values.getEnumConstants());
        return all.stream()
                .filter(value -> value.key().equals(cell("outcome")))
                .map(Term::name)
                .findFirst()
                .orElseThrow(() -> wrong("outcome", "one of " + String.join(", ", Term.keys(all))));
    }

    private String standing() {
        List<String> names = new ArrayList<>();
        for (String key : cell("standing").split("\\|")) {
            names.add("Standing."
                    + Term.parse(Standing.class, key, place("standing")).name());
        }
        return names.size() == 1
                ? "== " + names.get(0)
                : names.stream().collect(Collectors.joining(", ", "in ( ", " )"));
    }

    private String source() {
        try {
            return Sources.standard().get(cell("source")).id();
        } catch (InvalidInputException e) {
            throw wrong("source", "an id listed in sources.tsv");
        }
    }

    private String text(String column) {
        String text = cell(column);
        if (text.isEmpty() || text.contains("\"") || text.contains("\\")) {
            throw wrong(column, "a text without quotation marks and backslashes");
        }
        return text;
    }

    private String cell(String column) {
        return cells.get(COLUMNS.indexOf(column));
    }

    private String place(String column) {
        return table + ":" + line + ", column " + (COLUMNS.indexOf(column) + 1) + " (" + column + ")";
    }

    private InvalidInputException wrong(String column, String accepted) {
        return new InvalidInputException(place(column), cell(column), accepted);
    }

    private static String constantName(String key) {
        return key.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
