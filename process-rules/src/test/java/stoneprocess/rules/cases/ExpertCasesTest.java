package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.rules.Advisor;

/** The decisions that an expert would make, written from the trade's procedures; each file names its source. */
class ExpertCasesTest {
    private static final Advisor ADVISOR = Advisor.standard();

    static Stream<ExpertCase> cases() {
        return ExpertCase.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void decides_as_the_expert(ExpertCase expert) {
        assertThat(expert.misses(ADVISOR.recommend(expert.survey())))
                .as(expert.name())
                .isEmpty();
    }

    @Test
    void there_are_cases_enough_and_many_rest_on_something_published() {
        Map<String, List<ExpertCase>> folders = ExpertCase.all().stream()
                .collect(Collectors.groupingBy(
                        expert -> expert.name().split("/")[0], TreeMap::new, Collectors.toList()));
        folders.forEach((folder, cases) -> System.out.printf(
                "Expert cases in %s: %d, of which %d rest on a published or second-hand source%n",
                folder,
                cases.size(),
                cases.stream().filter(ExpertCasesTest::published).count()));
        assertThat(folders.get("floor")).hasSizeGreaterThanOrEqualTo(40);
        assertThat(folders.get("job")).hasSizeGreaterThanOrEqualTo(40);
        assertThat(List.of(folders.get("floor"), folders.get("job")))
                .allSatisfy(cases ->
                        assertThat(cases).filteredOn(ExpertCasesTest::published).hasSizeGreaterThanOrEqualTo(12));
        assertThat(folders.get("told")).hasSize(10);
    }

    private static boolean published(ExpertCase expert) {
        return !expert.source().startsWith("common practice")
                && !expert.source().startsWith("from memory");
    }
}
