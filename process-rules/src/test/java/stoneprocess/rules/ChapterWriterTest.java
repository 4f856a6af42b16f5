package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.internal.engine.Chapters;

/** The step of the build that turns a table into a chapter; the build runs it from its source. */
class ChapterWriterTest {
    private static final Path SOURCE = Path.of("src", "build", "java", "ChapterWriter.java");
    private static final Path CHAPTERS = Path.of("src", "main", "resources", "stoneprocess", "rules", "chapter");

    private static final String COLUMNS = "id\tcause\tstanding\ttopic\toutcome\ttitle\tbecause\tsource\tsince";
    private static final String ROW =
            "MEN-901\tglazed-pad\tleading\tmends\tdress-pad\tA glazed pad is dressed\tFree grains cut\tpractice\t0.1";

    @TempDir
    static Path compiled;

    private static Method write;

    @TempDir
    Path folder;

    private Path from;
    private Path to;

    @BeforeAll
    static void compile() throws IOException, ReflectiveOperationException {
        int result = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-Xlint:all",
                        "-Werror",
                        "-proc:none",
                        "--release",
                        "17",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-d",
                        compiled.toString(),
                        SOURCE.toString());
        assertThat(result).isZero();
        // Not closed, so that classes that are met later can still be loaded.
        URLClassLoader loader =
                new URLClassLoader(new URL[] {compiled.toUri().toURL()}, ChapterWriterTest.class.getClassLoader());
        write = loader.loadClass("ChapterWriter").getDeclaredMethod("write", Path.class, Path.class);
        write.setAccessible(true);
    }

    @BeforeEach
    void folders() throws IOException {
        from = Files.createDirectory(folder.resolve("from"));
        to = folder.resolve("to");
    }

    @Test
    void the_shipped_chapters_are_what_it_writes() throws Throwable {
        write(CHAPTERS, to);
        try (Stream<Path> written = Files.list(to)) {
            assertThat(written.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(Chapters.names());
        }
        for (String name : Chapters.names()) {
            assertThat(Files.readString(to.resolve(name))).isEqualTo(Chapters.text(name));
        }
    }

    @Test
    void every_row_of_the_table_is_a_shipped_rule_with_its_card() throws IOException {
        List<List<String>> rows = Files.readAllLines(CHAPTERS.resolve("94-remedies.tsv")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#") && !line.startsWith("id\t"))
                .map(line -> List.of(line.split("\t")))
                .toList();
        List<Card> cards = Rulebase.standard().cards();
        assertThat(rows)
                .hasSizeGreaterThan(80)
                .allSatisfy(row -> assertThat(cards)
                        .filteredOn(card -> card.id().equals(row.get(0)))
                        .singleElement()
                        .satisfies(card -> assertThat(List.of(
                                        card.topic().id(),
                                        card.title(),
                                        card.because(),
                                        card.source().id(),
                                        card.since()))
                                .containsExactly(row.get(3), row.get(5), row.get(6), row.get(7), row.get(8))));
    }

    @Test
    void a_row_becomes_a_rule_and_remarks_stay() throws Throwable {
        assertThat(chapter("# A heading.\n" + COLUMNS + "\n\n# Pads\n" + ROW + "\n"))
                .startsWith("// A heading.\npackage stoneprocess.rules.chapter.cause\n")
                .endsWith("""
                        // Pads

                        rule "A glazed pad is dressed"
                          @id("MEN-901")
                          @because("Free grains cut")
                          @source("practice") @since("0.1") @topic("mends")
                        when
                          Suspected( fault == Fault.GLAZED_PAD, known == Standing.LEADING )
                        then
                          insert( Topics.MENDS.need( Mend.DRESS_PAD ) );
                        end
                        """);
        assertThat(chapter(COLUMNS + "\n" + ROW.replace("leading", "leading|possible")))
                .contains("known in ( Standing.LEADING, Standing.POSSIBLE )");
    }

    @Test
    void a_chapter_that_is_gone_is_not_left_behind() throws Throwable {
        chapter(COLUMNS + "\n" + ROW);
        Files.delete(from.resolve("94-remedies.tsv"));
        write(from, to);
        try (Stream<Path> left = Files.list(to)) {
            assertThat(left).isEmpty();
        }
    }

    static Stream<Arguments> wrongRows() {
        return Stream.of(
                wrong("MEN-901", "MEN-9", "column 1 (id): 'MEN-9'", "three digits"),
                wrong("glazed-pad", "glazed", "column 2 (cause): 'glazed'", "glazed-pad"),
                wrong("leading", "likely", "column 3 (standing): 'likely'", "leading, possible"),
                wrong("\tmends", "\tmend", "column 4 (topic): 'mend'", "mends"),
                wrong("dress-pad", "undress", "column 5 (outcome): 'undress'", "dress-pad"),
                wrong("A glazed pad is dressed", " ", "column 6 (title): ''", "a text"),
                wrong("Free grains cut", "A \"free\" grain", "column 7 (because): 'A \"free\" grain'", "quotation"),
                wrong("practice", "hearsay", "column 8 (source): 'hearsay'", "sources.tsv"),
                wrong("\t0.1", "\t", "column 9 (since): ''", "a text"),
                wrong("\t0.1", "", ": '8 cells'", "9 cells"));
    }

    private static Arguments wrong(String right, String wrong, String names, String accepted) {
        return Arguments.of(ROW.replace(right, wrong), names, accepted);
    }

    @ParameterizedTest
    @MethodSource("wrongRows")
    void a_wrong_row_is_refused_by_file_line_and_column(String row, String names, String accepted) {
        assertThatThrownBy(() -> chapter("# A heading.\n" + COLUMNS + "\n" + row))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("94-remedies.tsv:3")
                .hasMessageContaining(names)
                .hasMessageContaining(accepted);
    }

    @Test
    void an_id_or_a_title_that_stands_twice_and_other_columns_are_refused() {
        assertThatThrownBy(() -> chapter(COLUMNS + "\n" + ROW + "\n" + ROW))
                .hasMessageStartingWith("94-remedies.tsv:3, column 1 (id): 'MEN-901'");
        assertThatThrownBy(() -> chapter(COLUMNS + "\n" + ROW + "\n" + ROW.replace("MEN-901", "MEN-902")))
                .hasMessageStartingWith("94-remedies.tsv:3, column 6 (title): 'A glazed pad is dressed'");
        assertThatThrownBy(() -> chapter(COLUMNS.replace("cause", "fault") + "\n" + ROW))
                .hasMessageStartingWith("94-remedies.tsv:1: ")
                .hasMessageContaining("cause");
    }

    private String chapter(String table) throws Throwable {
        Files.writeString(from.resolve("94-remedies.tsv"), table);
        write(from, to);
        return Files.readString(to.resolve("94-remedies.drl"));
    }

    private static void write(Path from, Path to) throws Throwable {
        try {
            write.invoke(null, from, to);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
