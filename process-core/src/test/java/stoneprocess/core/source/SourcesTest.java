package stoneprocess.core.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.exposure.Lifting;
import stoneprocess.core.gloss.MineralShares;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.tool.GritSequence;

class SourcesTest {
    static Stream<Arguments> tables() {
        return Stream.of(
                Arguments.of(Parameters.class, "parameters.tsv", List.of("name")),
                Arguments.of(StoneCatalogue.class, "families.tsv", List.of("family")),
                Arguments.of(StoneCatalogue.class, "minerals.tsv", List.of("mineral")),
                Arguments.of(StoneCatalogue.class, "purchase-limits.tsv", List.of("stone", "kind")),
                Arguments.of(StoneCatalogue.class, "stones.tsv", List.of("name")),
                Arguments.of(MineralShares.class, "compositions.tsv", List.of("family", "mineral")),
                Arguments.of(GritSequence.class, "grades.tsv", List.of("bond", "number")),
                Arguments.of(GritSequence.class, "machines.tsv", List.of("machine")),
                Arguments.of(Lifting.class, "lifting-frequency.tsv", List.of("frequency")));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void every_line_of_a_table_cites_a_listed_source(Class<?> owner, String table, List<String> key) {
        List<Tsv.Row> rows = Tsv.read(owner, table);
        Set<String> listed = Sources.standard().all().stream().map(Citation::id).collect(Collectors.toSet());
        assertThat(rows).isNotEmpty().allSatisfy(row -> assertThat(listed).contains(row.get("source")));
        long published = rows.stream()
                .filter(row -> Sources.standard().get(row.get("source")).published())
                .count();
        System.out.printf("%s: %d of %d lines rest on a publication%n", table, published, rows.size());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void no_table_lists_a_thing_twice(Class<?> owner, String table, List<String> key) {
        assertThat(Tsv.read(owner, table))
                .extracting(row -> key.stream().map(row::get).toList())
                .doesNotHaveDuplicates();
    }

    @Test
    void ids_and_titles_are_listed_once() {
        List<Tsv.Row> rows = Tsv.read(Sources.class, "sources.tsv");
        assertThat(rows).extracting(row -> row.get("id")).doesNotHaveDuplicates();
        assertThat(Sources.standard().all())
                .hasSameSizeAs(rows)
                .extracting(Citation::title)
                .doesNotHaveDuplicates();
    }

    @Test
    void ids_are_one_word_without_blanks_and_years_have_four_digits() {
        assertThat(Sources.standard().all()).allSatisfy(citation -> {
            assertThat(citation.id()).matches("[A-Za-z0-9.-]+");
            assertThat(citation.year()).matches("|undated|(19|20)\\d\\d");
        });
    }

    @Test
    void only_common_practice_removal_from_memory_and_house_numbers_are_no_publications() {
        assertThat(Sources.standard().all())
                .filteredOn(Citation::practice)
                .extracting(Citation::id)
                .containsExactly("practice", "removal-memory", "house");
    }

    @Test
    void a_published_source_can_be_found_and_nothing_from_memory_or_at_second_hand_counts_as_published() {
        assertThat(Sources.standard().all()).allSatisfy(citation -> {
            assertThat(citation.published()).isEqualTo(citation.grade() == EvidenceGrade.PUBLISHED);
            if (citation.published()) {
                assertThat(List.of(citation.publisher(), citation.title(), citation.year(), citation.clause()))
                        .as(citation.id())
                        .allSatisfy(part -> assertThat(part).isNotBlank());
                assertThat(citation.publisher())
                        .as(citation.id() + " names an author or a body")
                        .doesNotContainPattern(
                                "(?i)trade (press|newspaper|magazine)|inspector's|contractor|third party");
            }
        });
        assertThat(Sources.standard().get("OSHA-NOISE-CEILING").published()).isFalse();
        assertThat(Sources.standard().get("CONCRETE-DECOR").published()).isFalse();
    }

    @Test
    void a_source_is_found_by_its_id_and_an_unknown_id_is_refused() {
        assertThat(Sources.standard().get("ASTM-D523").kind()).isEqualTo(SourceKind.STANDARD);
        assertThatThrownBy(() -> Sources.standard().get("ASTM-D524"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("source: 'ASTM-D524' is not accepted");
    }

    @Test
    void a_source_prints_as_one_line() {
        assertThat(Sources.standard().get("NTMA-2012").print())
                .isEqualTo("National Terrazzo and Mosaic Association, technical seminar, Traditional care of terrazzo"
                        + " flooring, slides on hone, scrubbing and sealing (2012)");
        assertThat(Sources.standard().get("ASTM-C503").print()).isEqualTo("ASTM C503, Marble dimension stone");
        assertThat(Sources.standard().get("practice").print()).isEqualTo("Common practice of the trade, no source");
    }

    @ParameterizedTest
    @CsvSource({
        "'', STANDARD, PUBLISHED, t, p, 2012, 3.1, source.id",
        "X, STANDARD, PUBLISHED, ' ', p, 2012, 3.1, source.title",
        "X, STANDARD, PUBLISHED, t, '', 2012, 3.1, source.publisher",
        "X, STANDARD, PUBLISHED, t, p, '', 3.1, source.year",
        "X, STANDARD, PUBLISHED, t, p, 2012, '', source.clause",
        "X, PRACTICE, PUBLISHED, t, '', 2012, 3.1, source.grade",
        "X, STANDARD, COMMON_PRACTICE, t, p, '', '', source.grade",
    })
    void a_citation_that_says_too_little_is_refused(
            String id,
            SourceKind kind,
            EvidenceGrade grade,
            String title,
            String publisher,
            String year,
            String clause,
            String field) {
        assertThatThrownBy(() -> new Citation(id, kind, grade, title, publisher, year, clause))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(field + ": ");
    }

    @Test
    void grades_of_every_firmness_are_in_use() {
        Set<EvidenceGrade> used = new HashSet<>();
        Sources.standard().all().forEach(citation -> used.add(citation.grade()));
        assertThat(used).containsExactlyInAnyOrder(EvidenceGrade.values());
    }
}
