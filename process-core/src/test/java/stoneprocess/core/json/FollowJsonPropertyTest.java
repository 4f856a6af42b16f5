package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;

class FollowJsonPropertyTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema LOG = REGISTRY.getSchema(Json.JOB_LOG.schema(), InputFormat.JSON);
    private static final Schema NEXT = REGISTRY.getSchema(Json.NEXT_MOVE.schema(), InputFormat.JSON);
    private static final Schema DIAGNOSIS = REGISTRY.getSchema(Json.DIAGNOSIS.schema(), InputFormat.JSON);

    @Provide
    Arbitrary<JobLog> logs() {
        return JobLogs.any();
    }

    @Provide
    Arbitrary<NextMove> nextMoves() {
        return NextMoves.any();
    }

    @Provide
    Arbitrary<Diagnosis> diagnoses() {
        return NextMoves.diagnoses();
    }

    @Property(tries = 300, seed = "1955")
    void any_log_survives_printing_and_reading(@ForAll("logs") JobLog log) {
        String json = Json.JOB_LOG.print(log);
        JobLog read = Json.JOB_LOG.read(json);
        assertThat(read).isEqualTo(log);
        assertThat(Json.JOB_LOG.print(read)).isEqualTo(json);
        for (Class<?> kind : Entry.class.getPermittedSubclasses()) {
            Statistics.label(kind.getSimpleName())
                    .collect(log.entries().stream().anyMatch(kind::isInstance))
                    .coverage(coverage -> coverage.check(true).percentage(share -> share > 20));
        }
        Statistics.label("looked for signs and found none")
                .collect(log.entries().stream().anyMatch(FollowJsonPropertyTest::foundNone))
                .coverage(coverage -> coverage.check(true).percentage(share -> share > 1));
    }

    private static boolean foundNone(Entry entry) {
        return entry instanceof Entry.Looked looked
                && looked.signs().filter(signs -> signs.isEmpty()).isPresent();
    }

    @Property(tries = 100, seed = "1955")
    void the_schema_accepts_any_log_that_is_printed(@ForAll("logs") JobLog log) {
        assertThat(LOG.validate(Json.JOB_LOG.print(log), InputFormat.JSON)).isEmpty();
    }

    @Property(tries = 100, seed = "1955")
    void any_next_move_survives_printing_and_reading(@ForAll("nextMoves") NextMove next) {
        String json = Json.NEXT_MOVE.print(next);
        NextMove read = Json.NEXT_MOVE.read(json);
        assertThat(read).isEqualTo(next);
        assertThat(Json.NEXT_MOVE.print(read)).isEqualTo(json);
        assertThat(NEXT.validate(json, InputFormat.JSON)).isEmpty();
        Statistics.label("progress with gain and outlook")
                .collect(next.progress().stream()
                        .anyMatch(zone ->
                                zone.gain().isPresent() && zone.outlook().isPresent()))
                .coverage(coverage -> coverage.check(true).percentage(share -> share > 20));
    }

    @Property(tries = 50, seed = "1955")
    void any_diagnosis_survives_printing_and_reading(@ForAll("diagnoses") Diagnosis diagnosis) {
        String json = Json.DIAGNOSIS.print(diagnosis);
        assertThat(Json.DIAGNOSIS.read(json)).isEqualTo(diagnosis);
        assertThat(DIAGNOSIS.validate(json, InputFormat.JSON)).isEmpty();
    }
}
