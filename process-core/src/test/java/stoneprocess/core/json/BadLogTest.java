package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.util.Collections;
import java.util.EnumSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.tool.GritSequence;

/** A bad log or answer gets one line that names the field with its path, the value and what would be accepted. */
class BadLogTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Json.JOB_LOG.schema(), InputFormat.JSON);
    private static final String WORK =
            "'work':{'track':'open-field','grade':'resin-800','passes':8,'machine':'single-disc',"
                    + "'added':{'value':15,'unit':'kg'}}";
    private static final String LOOK = "'look':{'zone':'lane','face':'clean-dry','scratches':'none','film':'none',"
            + "'pad':'open','edges':'as-field','signs':['haze']}";
    private static final String READING = "'reading':{'place':'middle','zone':'lane','direction':'along',"
            + "'geometry':'60','gloss':{'value':18.4,'unit':'GU'},'state':'clean-dry'}";
    private static final String EVENT = "'event':{'kind':'crack','zone':'lane','state':'open'}";
    private static final String TRIAL = "'test-area':{'grade':'resin-800','result':'cleared','signed':true}";

    private static String log(String entries) {
        return ("{'format':'job-log/1','title':'Lamp room','entries':[" + entries + "]}").replace('\'', '"');
    }

    private static String entry(String noted) {
        return log("{'at':'day 1, 09:00'," + noted + "}");
    }

    private static Arguments bad(String noted, String good, String wrong, String... parts) {
        String changed = noted.replace(good, wrong);
        assertThat(changed).as(good).isNotEqualTo(noted);
        return Arguments.of(entry(changed), parts);
    }

    /** What the schema refuses as well. */
    static Stream<Arguments> refusedByBoth() {
        return Stream.of(
                Arguments.of("[]", new String[] {"job log: '[]'", "a JSON object"}),
                Arguments.of("{}", new String[] {"format: the field is missing"}),
                Arguments.of(
                        log("").replace("job-log/1", "job-log/2"), new String[] {"format: 'job-log/2'", "job-log/1"}),
                Arguments.of(log("").replace("Lamp room", ""), new String[] {"title: ''", "1 to 200"}),
                Arguments.of(
                        log("").replace("title", "name"),
                        new String[] {"name: there is no such field", "format, title"}),
                Arguments.of(log("").replace("[]", "{}"), new String[] {"entries: 'an object'", "an array"}),
                Arguments.of(log("7"), new String[] {"entries[0]: '7'", "an object"}),
                Arguments.of(log("{" + WORK + "}"), new String[] {"entries[0].at: the field is missing"}),
                Arguments.of(log("{'at':'day 1, 09:00'}"), new String[] {
                    "entries[0]: 'nothing but a moment'", "exactly one of work, look, reading, event, test-area"
                }),
                Arguments.of(entry(WORK + "," + LOOK), new String[] {"entries[0]: 'work and look'", "exactly one of"}),
                Arguments.of(
                        entry(EVENT + ",'by':'me'"),
                        new String[] {"entries[0].by: there is no such field", "at, work, look"}),
                Arguments.of(
                        entry(EVENT).replace("day 1, 09:00", "day 0, 09:00"),
                        new String[] {"entries[0].at: 'day 0, 09:00'", "day 2, 14:30"}),
                Arguments.of(entry(EVENT).replace("day 1, 09:00", "day 1, 24:00"), new String[] {"entries[0].at:"}),
                Arguments.of(entry(EVENT).replace("day 1, 09:00", "Monday"), new String[] {"entries[0].at: 'Monday'"}),
                bad(WORK, "open-field", "field", "entries[0].work.track: 'field'", "open-field, edge"),
                bad(WORK, "resin-800", "800", "entries[0].work.grade: '800'", "resin-800"),
                bad(WORK, ":8,", ":0,", "entries[0].work.passes: '0'", "1 to 1000"),
                bad(WORK, ":8,", ":1001,", "entries[0].work.passes: '1001'", "1 to 1000"),
                bad(WORK, ":8,", ":2.5,", "entries[0].work.passes: '2.5'", "a whole number"),
                bad(WORK, "'passes':8,", "", "entries[0].work.passes: the field is missing"),
                bad(WORK, "single-disc", "mop", "entries[0].work.machine: 'mop'", "single-disc"),
                bad(WORK, "'kg'", "'GU'", "entries[0].work.added.unit: 'GU'", "kg"),
                bad(WORK, ":15,", ":-1,", "entries[0].work.added.value: '-1", "zero or more"),
                bad(
                        WORK,
                        "'track'",
                        "'bay':1,'track'",
                        "entries[0].work.bay: there is no such field",
                        "track, grade, passes"),
                bad(LOOK, "'lane'", "''", "entries[0].look.zone: ''", "1 to 60"),
                bad(LOOK, "'lane'", "'" + "x".repeat(61) + "'", "entries[0].look.zone: 'xxx", "1 to 60"),
                bad(LOOK, "clean-dry", "unknown", "entries[0].look.face: 'unknown'", "clean-dry, wet, soiled"),
                bad(LOOK, "'scratches':'none'", "'scratches':'few'", "entries[0].look.scratches: 'few'", "older"),
                bad(LOOK, "'film':'none'", "'film':'wax'", "entries[0].look.film: 'wax'", "none, present"),
                bad(LOOK, "'open'", "'new'", "entries[0].look.pad: 'new'", "open, closed"),
                bad(LOOK, "as-field", "fine", "entries[0].look.edges: 'fine'", "as-field, behind"),
                bad(LOOK, "['haze']", "['fog']", "entries[0].look.signs[0]: 'fog'", "haze"),
                bad(LOOK, "['haze']", "['haze','haze']", "entries[0].look.signs[1]: 'haze'", "each value once"),
                bad(LOOK, "['haze']", "'none'", "entries[0].look.signs: 'none'", "an array"),
                bad(LOOK, "'zone'", "'by':1,'zone'", "entries[0].look.by: there is no such field", "zone, face"),
                bad(READING, "'middle'", "''", "entries[0].reading.place: ''", "1 to 60"),
                bad(READING, "along", "up", "entries[0].reading.direction: 'up'", "along, across"),
                bad(READING, "'60'", "'45'", "entries[0].reading.geometry: '45'", "20, 60, 85"),
                bad(READING, "'60'", "60", "entries[0].reading.geometry: '60'", "a text"),
                bad(READING, "'GU'", "'%'", "entries[0].reading.gloss.unit: '%'", "GU"),
                bad(READING, "'state':'clean-dry'", "'state':'damp'", "entries[0].reading.state: 'damp'", "wet"),
                bad(
                        READING,
                        "'place'",
                        "'meter':1,'place'",
                        "entries[0].reading.meter: there is no such field",
                        "place, zone"),
                bad(EVENT, "crack", "fire", "entries[0].event.kind: 'fire'", "fill-out"),
                bad(EVENT, "'lane'", "''", "entries[0].event.zone: ''", "1 to 60"),
                bad(EVENT, "'open'", "'unknown'", "entries[0].event.state: 'unknown'", "open, settled"),
                bad(
                        EVENT,
                        "'kind'",
                        "'cost':1,'kind'",
                        "entries[0].event.cost: there is no such field",
                        "kind, zone, state"),
                bad(TRIAL, "resin-800", "fine", "entries[0].test-area.grade: 'fine'", "resin-800"),
                bad(TRIAL, "'cleared'", "'good'", "entries[0].test-area.result: 'good'", "cleared, not-cleared"),
                bad(TRIAL, "true", "'yes'", "entries[0].test-area.signed: 'yes'", "true or false"),
                bad(TRIAL, ",'signed':true", "", "entries[0].test-area.signed: the field is missing"),
                bad(
                        TRIAL,
                        "'grade'",
                        "'by':1,'grade'",
                        "entries[0].test-area.by: there is no such field",
                        "grade, result"));
    }

    /** What only the reader knows. */
    static Stream<Arguments> refusedByReader() {
        return Stream.of(
                Arguments.of("", new String[] {"job log: ''", "empty"}),
                Arguments.of("page one", new String[] {"job log: 'the text'", "valid JSON"}),
                Arguments.of(log("") + "{}", new String[] {"job log: ", "nothing after the JSON object"}),
                bad(WORK, "resin-800", "resin-700", "entries[0].work.grade: 'resin-700'", "resin-800"),
                bad(LOOK, "'lane'", "' '", "entries[0].look.zone: ''", "1 to 60"),
                bad(READING, "18.4", "1200", "entries[0].reading.gloss: '1200 GU'", "a mirror at 60 degrees"),
                bad(TRIAL, "'cleared'", "'not-cleared'", "entries[0].test-area.signed: 'true'", "false, until"));
    }

    @ParameterizedTest
    @MethodSource({"refusedByBoth", "refusedByReader"})
    void the_message_names_path_value_and_what_would_be_accepted(String json, String... parts) {
        Throwable problem = catchThrowable(() -> Json.JOB_LOG.read(json));
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage()).startsWith(parts[0]).contains(parts).contains("accepted: ");
        assertThat(problem.getMessage()).doesNotContain("\n", "\r");
    }

    @ParameterizedTest
    @MethodSource("refusedByBoth")
    void the_schema_refuses_it_too(String json, String... parts) {
        assertThat(SCHEMA.validate(json, InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void entries_are_counted_from_0() {
        String json = log("{'at':'day 1, 09:00'," + EVENT + "},{'at':'day 1, 10:00'," + TRIAL + "},{}");
        assertThat(catchThrowable(() -> Json.JOB_LOG.read(json)))
                .hasMessageStartingWith("entries[2].at: the field is missing");
    }

    @Test
    void unknown_and_left_out_mean_the_same_and_an_empty_list_means_looked() {
        String look = "'look':{'zone':'lane','face':'wet'";
        String work = "'work':{'track':'edge','grade':'resin-50','passes':2";
        Entry leftOut = first(look + "}");
        assertThat(first(look + ",'scratches':'unknown','film':'unknown','pad':'unknown','edges':'unknown',"
                        + "'signs':'unknown'}"))
                .isEqualTo(leftOut);
        assertThat(first(look + ",'signs':[]}")).isNotEqualTo(leftOut);
        assertThat(first(work + ",'machine':'unknown','added':'unknown'}")).isEqualTo(first(work + "}"));
        assertThat(first(READING.replace("'along'", "'unknown'")))
                .isEqualTo(first(READING.replace("'direction':'along',", "")))
                .satisfies(entry ->
                        assertThat(((Entry.Read) entry).reading().direction()).isEqualTo(Direction.NOT_NOTED));
    }

    @Test
    void weights_are_read_in_any_unit_and_printed_in_the_kept_one() {
        JobLog log = Json.JOB_LOG.read(entry(WORK.replace("'value':15,'unit':'kg'", "'value':10,'unit':'lb'")));
        assertThat(Json.JOB_LOG.print(log)).contains("\"value\" : 4.5359,").contains("\"unit\" : \"kg\"");
    }

    @Test
    void grades_are_of_the_sequence_given() {
        String json = entry(WORK.replace("resin-800", "resin-320"));
        assertThat(Json.JOB_LOG.with(Examples.sequence()).read(json).entries()).hasSize(1);
        String ofNoLadder = entry(WORK.replace("resin-800", "resin-350"));
        assertThat(catchThrowable(() -> Json.JOB_LOG.read(ofNoLadder)))
                .hasMessageStartingWith("entries[0].work.grade:");
    }

    private static Entry first(String noted) {
        return Json.JOB_LOG.read(entry(noted)).entries().get(0);
    }

    static Stream<Arguments> changesOfANextMove() {
        return Stream.of(
                Arguments.of("next-move/1", "next-move/9", "format: 'next-move/9'"),
                Arguments.of("\"more-passes\",", "\"rest\",", "move: 'rest'"),
                Arguments.of("\"resin-120\"", "\"resin-121\"", "at.grade: 'resin-121'"),
                Arguments.of("\"passes\" : 8", "\"passes\" : 0", "at.passes: '0'"),
                Arguments.of("\"gain-is-real\"", "\"gain\"", "findings[0]: 'gain'"),
                Arguments.of("\"residue\"", "\"dirt\"", "causes[0].fault: 'dirt'"),
                Arguments.of("\"excluded\"", "\"out\"", "causes[0].standing: 'out'"),
                Arguments.of("\"speaks-for\"", "\"for\"", "causes[0].for: there is no such field"),
                Arguments.of("\"wipe-and-dry\"", "\"wipe\"", "checks[0]: 'wipe'"),
                Arguments.of("\"dress-pad\"", "\"dress\"", "mends[0]: 'dress'"),
                Arguments.of("\"owner\"", "\"me\"", "asks[0]: 'me'"),
                Arguments.of("\"low\" : 2,", "\"low\" : 5,", "more-passes: '5 to 4'"),
                Arguments.of("\"count\" : 3", "\"count\" : 0", "progress[0].now.count: '0'"),
                Arguments.of("\"value\" : 18.4", "\"value\" : -18.4", "progress[0].now.mean.value: '-18.4"),
                Arguments.of("\"low\" : 17.4", "\"low\" : 20.4", "progress[0].now.mean-interval: '20.4 GU to 19.4 GU'"),
                Arguments.of("\"verdict\" : \"real\"", "\"verdict\" : \"good\"", "progress[0].gain.verdict: 'good'"),
                Arguments.of("\"value\" : 3,", "\"value\" : 1e399,", "progress[0].gain.change.value: 'Infinity'"),
                Arguments.of("\"low\" : -0.5", "\"low\" : 5", "progress[0].gain.interval: "),
                Arguments.of("\"missing-after\" : 0", "\"missing-after\" : -1", "progress[0].gain.missing-after: '-1'"),
                Arguments.of("\"angle\" : \"85\"", "\"angle\" : \"80\"", "progress[0].angle: '80'"),
                Arguments.of("\"verdict\" : \"open\"", "\"verdict\" : \"far\"", "progress[0].outlook.verdict: 'far'"),
                Arguments.of("\"grit\" : 3000", "\"grit\" : 0", "progress[0].outlook.reached-by.grit: '0'"),
                Arguments.of(
                        "\"started-too-fine\" : false",
                        "\"started-too-fine\" : 0",
                        "progress[0].outlook.started-too-fine: '0'"),
                Arguments.of("\"practice\"", "\"hearsay\"", "progress[0].outlook.basis.sources[0]: 'hearsay'"),
                Arguments.of("\"median\"", "\"middle\"", "progress[0].more-passes.middle: there is no such field"),
                Arguments.of("\"entry\" : 4", "\"entry\" : -4", "notes[0].entry: '-4'"),
                Arguments.of("\"wet-reading\"", "\"wet\"", "notes[0].kind: 'wet'"),
                Arguments.of("\"set-aside\"", "\"lost\"", "notes[0].effect: 'lost'"),
                Arguments.of("floor-recommendation/1", "floor-recommendation/9", "ahead.format: "),
                Arguments.of(
                        "\"lippage.high\"",
                        "\"lippage.higher\"",
                        "ahead.parameters.lippage.higher: there is no such field"));
    }

    @ParameterizedTest
    @MethodSource("changesOfANextMove")
    void what_is_wrong_with_a_next_move_is_said_with_the_whole_path(String good, String wrong, String start) {
        String json = Json.NEXT_MOVE.print(NextMoves.whole());
        assertRefused(() -> Json.NEXT_MOVE.read(changed(json, good, wrong)), start);
        String diagnosis = Json.DIAGNOSIS.print(new Diagnosis(EnumSet.of(Sign.HAZE), NextMoves.whole()));
        assertRefused(() -> Json.DIAGNOSIS.read(changed(diagnosis, good, wrong)), "remedy." + start);
    }

    @Test
    void what_is_wrong_with_a_diagnosis_is_said_with_the_whole_path() {
        String json = Json.DIAGNOSIS.print(new Diagnosis(EnumSet.of(Sign.HAZE), NextMoves.whole()));
        assertRefused(() -> Json.DIAGNOSIS.read(changed(json, "diagnosis/1", "diagnosis/9")), "format: 'diagnosis/9'");
        assertRefused(() -> Json.DIAGNOSIS.read(changed(json, "\"haze\"", "\"fog\"")), "signs[0]: 'fog'");
        assertRefused(
                () -> Json.DIAGNOSIS.read(changed(json, "\"signs\"", "\"seen\"")), "seen: there is no such field");
    }

    private static String changed(String json, String good, String wrong) {
        int at = json.indexOf(good);
        assertThat(at).as(good).isNotNegative();
        return json.substring(0, at) + wrong + json.substring(at + good.length());
    }

    @Test
    void the_longest_log_that_there_may_be_is_read_back_and_a_longer_one_is_refused() {
        Entry look = Json.JOB_LOG.read(entry(LOOK)).entries().get(0);
        JobLog longest = new JobLog("Lamp room", Collections.nCopies(JobLog.MOST_ENTRIES, look));
        assertThat(Json.JOB_LOG.read(Json.JOB_LOG.print(longest))).isEqualTo(longest);
        assertRefused(
                () -> new JobLog("Lamp room", Collections.nCopies(JobLog.MOST_ENTRIES + 1, look)),
                "entries: '20001 entries'");
    }

    @Test
    void more_passes_with_one_grit_than_anybody_makes_are_refused_with_their_sum() {
        Entry work = Json.JOB_LOG.read(entry(WORK)).entries().get(0);
        assertThat(new JobLog("Lamp room", Collections.nCopies(125, work)).entries())
                .hasSize(125);
        assertRefused(
                () -> new JobLog("Lamp room", Collections.nCopies(126, work)),
                "entries: '1008 passes at open-field/resin-800'");
    }

    @Test
    void nothing_to_read_and_a_field_without_a_name_are_told_by_name() {
        assertThatNullPointerException()
                .isThrownBy(() -> Json.JOB_LOG.read((String) null))
                .withMessage("json");
        assertThatNullPointerException()
                .isThrownBy(() -> Json.JOB_LOG.read((InputStream) null))
                .withMessage("json");
        assertRefused(
                () -> Json.JOB_LOG.read("{\"format\":\"job-log/1\",\"\":1}"), "(no name): there is no such field");
    }

    private static void assertRefused(org.assertj.core.api.ThrowableAssert.ThrowingCallable read, String start) {
        Throwable problem = catchThrowable(read);
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage())
                .startsWith(start)
                .contains("accepted: ")
                .doesNotContain("\n", "\r");
    }

    @Test
    void an_answer_whose_sequence_lacks_the_grade_worked_last_is_not_printed() {
        NextMove whole = NextMoves.whole();
        Recommendation other = Examples.impasse();
        assertThat(other.sequence()).isEqualTo(GritSequence.standard());
        NextMove next = new NextMove(
                whole.move(),
                whole.at(),
                whole.findings(),
                whole.causes(),
                whole.checks(),
                whole.mends(),
                whole.asks(),
                whole.morePasses(),
                whole.progress(),
                whole.notes(),
                whole.unknown(),
                whole.outcomes(),
                other);
        assertRefused(() -> Json.NEXT_MOVE.print(next), "ahead.sequence: 'without resin-120");
    }
}
