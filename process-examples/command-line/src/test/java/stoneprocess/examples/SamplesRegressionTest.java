package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.json.Json;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.testkit.law.Respondent;

/** The same bytes for every sample: in any order of rules and facts, on any thread, on any JDK. */
class SamplesRegressionTest {
    private static final Path SURVEYS = Path.of("surveys");

    /** 30 in the normal run, 2,500 in the audit. */
    private static final int ORDERS = Integer.getInteger("audit.shuffles", 120) / 4;

    private static final Advisor ADVISOR = Advisor.standard();

    static Stream<String> samples() throws IOException {
        try (Stream<Path> files = Files.list(SURVEYS)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList().stream();
        }
    }

    private static FloorSurvey survey(String name) throws IOException {
        return Json.SURVEY.read(Files.readString(SURVEYS.resolve(name)));
    }

    private static String plan(FloorSurvey survey) {
        return Json.RECOMMENDATION.print(ADVISOR.recommend(survey));
    }

    @Test
    void there_are_nine_samples() throws IOException {
        assertThat(samples()).hasSize(9);
    }

    @Test
    void many_orders_of_rules_and_facts_give_the_same_bytes() throws IOException {
        Map<String, String> expected = new TreeMap<>();
        for (String name : samples().toList()) {
            expected.put(name, plan(survey(name)));
        }
        Respondent shuffled = Respondent.of(ADVISOR);
        for (long seed = 0; seed < ORDERS; seed++) {
            for (Map.Entry<String, String> sample : expected.entrySet()) {
                assertThat(Json.RECOMMENDATION.print(shuffled.recommendInOrder(survey(sample.getKey()), seed)))
                        .as("%s in order %d", sample.getKey(), seed)
                        .isEqualTo(sample.getValue());
            }
        }
    }

    @Test
    void eight_threads_give_the_same_bytes() throws Exception {
        Map<String, String> expected = new TreeMap<>();
        List<Callable<Void>> work = new ArrayList<>();
        for (String name : samples().toList()) {
            expected.put(name, plan(survey(name)));
        }
        for (int thread = 0; thread < 8; thread++) {
            work.add(() -> {
                for (int round = 0; round < 5; round++) {
                    for (Map.Entry<String, String> sample : expected.entrySet()) {
                        assertThat(plan(survey(sample.getKey()))).isEqualTo(sample.getValue());
                    }
                }
                return null;
            });
        }
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            for (Future<Void> done : threads.invokeAll(work)) {
                done.get();
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** Pins our own output. CI runs it on every JDK of its machine; run with {@code -Dsamples.write} to pin anew. */
    @Test
    void every_jdk_gives_the_bytes_that_are_pinned() throws Exception {
        StringBuilder pinned = new StringBuilder();
        for (String name : samples().toList()) {
            byte[] bytes = plan(survey(name)).getBytes(StandardCharsets.UTF_8);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            pinned.append(HexFormat.of().formatHex(digest))
                    .append("  ")
                    .append(name)
                    .append('\n');
        }
        Path file = Path.of(
                "command-line", "src", "test", "resources", "stoneprocess", "examples", "recommendations.sha256");
        if (System.getProperty("samples.write") != null) {
            Files.writeString(file, pinned.toString());
        }
        assertThat(pinned.toString())
                .as("the samples get other advice; pin it anew with -Dsamples.write and say so in the change log")
                .isEqualTo(Files.readString(file));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_printed_recommendation_is_read_back_equal(String name) throws IOException {
        String json = plan(survey(name));
        assertThat(Json.RECOMMENDATION.print(Json.RECOMMENDATION.read(json))).isEqualTo(json);
        assertThat(Json.RECOMMENDATION.read(json)).isEqualTo(ADVISOR.recommend(survey(name)));
    }
}
