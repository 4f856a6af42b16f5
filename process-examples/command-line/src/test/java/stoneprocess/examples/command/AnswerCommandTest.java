package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Status;
import stoneprocess.core.topic.Cut;
import stoneprocess.examples.command.CommandLineTest.Ran;

/** What the questions about a plan print. */
class AnswerCommandTest {
    private static final String FERRY = survey("ferry-hall-granite");
    private static final String ARCADE = survey("market-arcade-limestone");
    private static final String LIBRARY = survey("reading-room-marble");
    private static final String LIGHTHOUSE = survey("lighthouse-unknown-stone");

    private static String survey(String name) {
        return Path.of("surveys", name + ".json").toString();
    }

    private static String printed(String... arguments) {
        Ran ran = Ran.command("", arguments);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        return ran.out();
    }

    static Stream<Arguments> questions() {
        return Stream.of(
                Arguments.of((Object) new String[] {"why", LIBRARY, "first-cut"}),
                Arguments.of((Object) new String[] {"why", LIBRARY, "machine", "open-field/resin-800"}),
                Arguments.of((Object) new String[] {"why-not", LIBRARY, "first-cut", "fine-hone"}),
                Arguments.of((Object) new String[] {"why-not", LIBRARY, "first-cut", "grind", "edge"}),
                Arguments.of((Object) new String[] {"what-if", FERRY, "owner.goal=hone"}),
                Arguments.of((Object) new String[] {"how-to", ARCADE, "verdict", "go"}),
                Arguments.of((Object) new String[] {"what-else", LIGHTHOUSE}),
                Arguments.of((Object) new String[] {"compare", FERRY, LIBRARY}));
    }

    private static String[] with(String[] arguments, String option) {
        return Stream.concat(Stream.of(arguments), Stream.of(option)).toArray(String[]::new);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void every_question_is_answered_long_and_short(String[] question) {
        assertThat(printed(question)).contains("\n===").endsWith("\n").hasSizeGreaterThan(140);
        String line = printed(with(question, "--short"));
        assertThat(line.lines()).hasSize(1);
        assertThat(line.strip()).hasSizeLessThan(140).matches(".*[.?]");
    }

    @Test
    void answers_are_json_on_request_and_can_be_read_back() {
        Why why = Json.WHY.read(printed("why", LIBRARY, "first-cut", "--json"));
        assertThat(((Decision<?>) why.outcome()).value()).isEqualTo(Cut.HONE);
        WhyNot whyNot = Json.WHY_NOT.read(printed("why-not", LIBRARY, "first-cut", "fine-hone", "--json"));
        assertThat(whyNot.by()).isNotEmpty();
        HowTo howTo = Json.HOW_TO.read(printed("how-to", ARCADE, "verdict", "go", "--json"));
        assertThat(howTo.kind()).isEqualTo(WayKind.FOUND);
        WhatElse whatElse = Json.WHAT_ELSE.read(printed("what-else", LIGHTHOUSE, "--json"));
        assertThat(whatElse.open()).isNotEmpty();
        Difference difference = Json.DIFFERENCE.read(printed("what-if", ARCADE, "build-up.sounding=sound", "--json"));
        assertThat(difference.one()).isEqualTo(Status.REFUSED);
        assertThat(difference.other()).isNotEqualTo(Status.REFUSED);
    }

    @Test
    void what_if_is_the_difference_of_the_two_surveys() throws IOException {
        String changed = Files.readString(Path.of(FERRY)).replace("\"goal\": \"polish\"", "\"goal\": \"hone\"");
        Ran compared = Ran.command(changed, "compare", FERRY, "-", "--json");
        assertThat(compared.exit()).isZero();
        assertThat(printed("what-if", FERRY, "owner.goal=hone", "--json")).isEqualTo(compared.out());
        assertThat(printed("what-if", FERRY, "owner.goal=hone"))
                .contains("What does the owner want? Tried: hone; as surveyed: polish.");
    }

    @Test
    void two_changes_and_changes_of_damage_count() {
        String text = printed(
                "what-if",
                LIBRARY,
                "lane to the desks/damages.scratches=seen, 40 %",
                "lane to the desks/damages.etches=gloss-lost, 15 %",
                "equipment.machines=planetary,single-disc,edge-tool",
                "build-up.thickness=30 mm");
        assertThat(text).contains("lane to the desks: seen but not felt, 40 %", "with that", "as surveyed");
    }

    @Test
    void what_if_answers_what_an_owner_asks() {
        String text = printed("what-if", FERRY, "owner.goal=hone");
        assertThat(text)
                .contains("PLAN. Finish: hone.", "person-hours", "Time to reopening", "What falls away")
                .doesNotContain("not reached");
        assertThat(text.split("\\s+")).hasSizeLessThan(260);
        assertThat(printed("what-if", LIBRARY, "site.historic=yes"))
                .contains(
                        "NO PLAN YET. It depends on facts",
                        "without written consent",
                        "Has the conservator or the responsible officer agreed in writing?");
    }

    @Test
    void fibres_are_warned_of_only_where_the_plan_has_that_hazard() {
        assertThat(printed("what-else", FERRY))
                .contains("no laboratory test is")
                .doesNotContain("Has a laboratory tested the stone", "Until a laboratory");
        assertThat(printed("what-else", LIGHTHOUSE))
                .contains("Has a laboratory tested the stone", "Until a laboratory")
                .doesNotContain("no laboratory test is");
    }

    @Test
    void the_same_floor_does_not_differ() {
        assertThat(printed("compare", FERRY, FERRY)).contains("The advice and the reasons are the same.");
    }

    @Test
    void what_cannot_be_got_within_two_changes_exits_with_3() {
        Ran ran = Ran.command("", "how-to", survey("pilot-house-bath"), "first-cut", "heavy-grind", "local-repair");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.out()).contains("No other answer, and no two together, lead to it.");
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("topic: 'colour'", new String[] {"why", FERRY, "colour"}),
                Arguments.of("SUBJECT: 'missing'", new String[] {"why", FERRY, "machine"}),
                Arguments.of("SUBJECT: 'cellar'", new String[] {"why", FERRY, "first-cut", "cellar"}),
                Arguments.of("first-cut.subject: 'floor'", new String[] {"why", FERRY, "first-cut", "floor"}),
                Arguments.of("first-cut.value: '400'", new String[] {"why-not", FERRY, "first-cut", "400"}),
                Arguments.of("FIELD=VALUE: 'owner.goal'", new String[] {"what-if", FERRY, "owner.goal"}),
                Arguments.of("FIELD: 'owner.wish'", new String[] {"what-if", FERRY, "owner.wish=hone"}),
                Arguments.of("FIELD: 'damages.wear'", new String[] {"what-if", FERRY, "damages.wear=dull"}),
                Arguments.of("ZONE: 'cellar'", new String[] {"what-if", FERRY, "cellar/damages.wear=dull"}),
                Arguments.of("owner.goal: 'mirror'", new String[] {"what-if", FERRY, "owner.goal=mirror"}),
                Arguments.of("owner.goal: 'polish'", new String[] {"what-if", FERRY, "owner.goal=polish"}),
                Arguments.of("build-up.thickness: '30'", new String[] {"what-if", FERRY, "build-up.thickness=30"}),
                Arguments.of("OTHER: '-'", new String[] {"compare", "-", "-"}),
                Arguments.of("rulebook: 'CUT-999'", new String[] {"rulebook", "CUT-999"}));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void bad_input_exits_with_2_and_one_line(String start, String[] arguments) {
        Ran ran = Ran.command("", arguments);
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith(start).contains("accepted: ");
        assertThat(ran.err().lines()).hasSize(1);
    }

    @Test
    void us_units_are_printed_on_request() {
        assertThat(printed("why", LIBRARY, "litres", "open-field/resin-800", "--units", "us"))
                .doesNotContain(" m2");
    }

    @Test
    void the_rulebook_is_printed_whole_and_in_parts() throws IOException {
        assertThat(printed("rulebook")).isEqualTo(Files.readString(Path.of("..", "docs", "rulebook.md")));
        assertThat(printed("rulebook", "first-cut"))
                .startsWith("## 3. First cut\n")
                .contains("CUT-003");
        assertThat(printed("rulebook", "CUT-003")).startsWith("- **CUT-003** ").contains("*When* ", "Source: ");
    }

    @Test
    void the_schemas_of_answers_are_printed() {
        assertThat(printed("schema", "why")).isEqualTo(Json.WHY.schema());
        assertThat(printed("schema", "why-not")).isEqualTo(Json.WHY_NOT.schema());
        assertThat(printed("schema", "difference")).isEqualTo(Json.DIFFERENCE.schema());
        assertThat(printed("schema", "how-to")).isEqualTo(Json.HOW_TO.schema());
        assertThat(printed("schema", "what-else")).isEqualTo(Json.WHAT_ELSE.schema());
        assertThat(printed("schema", "comparison")).isEqualTo(Json.COMPARISON.schema());
    }
}
