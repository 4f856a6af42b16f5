package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.Advisor;

/** The sample logs: valid by an independent validator, and answered with the bytes that are pinned. */
class LogsRegressionTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema LOG = REGISTRY.getSchema(Json.JOB_LOG.schema(), InputFormat.JSON);
    private static final Schema NEXT = REGISTRY.getSchema(Json.NEXT_MOVE.schema(), InputFormat.JSON);
    private static final Schema DIAGNOSIS = REGISTRY.getSchema(Json.DIAGNOSIS.schema(), InputFormat.JSON);
    private static final Schema RECOMMENDATION = REGISTRY.getSchema(Json.RECOMMENDATION.schema(), InputFormat.JSON);
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Path LOGS = Path.of("logs");

    /** Each sample log and the survey that it belongs to. */
    static final Map<String, String> SURVEY_OF = new TreeMap<>(Map.of(
            "counting-house-started-too-fine.json", "counting-house-granite.json",
            "ferry-hall-goes-well.json", "ferry-hall-granite.json",
            "reading-room-fill-came-out.json", "reading-room-marble.json"));

    static Stream<String> logs() {
        return SURVEY_OF.keySet().stream();
    }

    private static JobLog log(String name) throws IOException {
        return Json.JOB_LOG.read(Files.readString(LOGS.resolve(name)));
    }

    private static Recommendation plan(String name) throws IOException {
        return ADVISOR.recommend(Json.SURVEY.read(Files.readString(Path.of("surveys", SURVEY_OF.get(name)))));
    }

    private static NextMove answer(String name) throws IOException {
        return ADVISOR.followUp(plan(name), log(name));
    }

    @Test
    void every_sample_log_is_checked() throws IOException {
        try (Stream<Path> files = Files.list(LOGS)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(SURVEY_OF.keySet());
        }
    }

    @ParameterizedTest
    @MethodSource("logs")
    void logs_and_their_answers_are_valid_and_read_back_equal(String name) throws IOException {
        String text = Files.readString(LOGS.resolve(name));
        assertThat(LOG.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(Json.JOB_LOG.read(Json.JOB_LOG.print(log(name)))).isEqualTo(log(name));

        NextMove next = answer(name);
        String answer = Json.NEXT_MOVE.print(next);
        assertThat(NEXT.validate(answer, InputFormat.JSON)).isEmpty();
        assertThat(RECOMMENDATION.validate(Json.RECOMMENDATION.print(next.ahead()), InputFormat.JSON))
                .isEmpty();
        assertThat(Json.NEXT_MOVE.read(answer)).isEqualTo(next);

        String diagnosis = Json.DIAGNOSIS.print(ADVISOR.diagnose(plan(name), EnumSet.of(Sign.HAZE), log(name)));
        assertThat(DIAGNOSIS.validate(diagnosis, InputFormat.JSON)).isEmpty();
        assertThat(Json.DIAGNOSIS.print(Json.DIAGNOSIS.read(diagnosis))).isEqualTo(diagnosis);
    }

    /** An entry without a note counts as it stands; nothing hangs on the order of the pages but the note that says so. */
    @ParameterizedTest
    @MethodSource("logs")
    void turning_the_pages_round_changes_no_move(String name) throws IOException {
        JobLog log = log(name);
        List<Entry> entries = new ArrayList<>(log.entries());
        Collections.reverse(entries);
        NextMove next = answer(name);
        NextMove turned = ADVISOR.followUp(plan(name), new JobLog(log.title(), entries));
        assertThat(turned.move()).isEqualTo(next.move());
        assertThat(turned.at()).isEqualTo(next.at());
        assertThat(turned.findings()).isEqualTo(next.findings());
        assertThat(turned.ahead()).isEqualTo(next.ahead());
    }

    /** Pins our own output; run with {@code -Dsamples.write} to pin anew. */
    @Test
    void the_answers_are_the_bytes_that_are_pinned() throws Exception {
        StringBuilder pinned = new StringBuilder();
        for (String name : logs().toList()) {
            byte[] bytes = Json.NEXT_MOVE.print(answer(name)).getBytes(StandardCharsets.UTF_8);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            pinned.append(HexFormat.of().formatHex(digest))
                    .append("  ")
                    .append(name)
                    .append('\n');
        }
        Path file =
                Path.of("command-line", "src", "test", "resources", "stoneprocess", "examples", "next-moves.sha256");
        if (System.getProperty("samples.write") != null) {
            Files.writeString(file, pinned.toString());
        }
        assertThat(pinned.toString())
                .as("the logs get other answers; pin them anew with -Dsamples.write and say so in the change log")
                .isEqualTo(Files.readString(file));
    }
}
