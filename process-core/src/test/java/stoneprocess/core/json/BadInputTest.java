package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.tool.GritSequence;

/** Bad input gets one line that names the field, the value and what would be accepted. */
class BadInputTest {
    private static Arguments bad(String json, String... parts) {
        return Arguments.of(json, parts);
    }

    private static String survey(String more) {
        return "{\"format\":\"floor-survey/1\",\"title\":\"t\"" + more + "}";
    }

    private static String area(String number) {
        return survey(",\"site\":{\"area\":{\"value\":" + number + ",\"unit\":\"m2\"}}");
    }

    private static String zone(String more) {
        return survey(
                ",\"zones\":[{\"name\":\"z\",\"kind\":\"lane\",\"share\":{\"value\":50,\"unit\":\"%\"}" + more + "}]");
    }

    static Stream<Arguments> inputs() {
        return Stream.of(
                bad("", "survey: ''", "empty"),
                bad("   \n ", "survey: ''", "empty"),
                bad("floor", "survey", "valid JSON", "line 1, column"),
                bad("{\"format\":", "valid JSON"),
                bad("[]", "survey: '[]'", "a JSON object"),
                bad("12", "a JSON object"),
                bad("{} {}", "nothing after the JSON object"),
                bad("{\"title\":\"t\"}", "format: the field is missing"),
                bad("{\"format\":\"floor-survey/9\",\"title\":\"t\"}", "format: 'floor-survey/9'", "floor-survey/1"),
                bad("{\"format\":\"floor-survey/1\"}", "title: the field is missing"),
                bad("{\"format\":\"floor-survey/1\",\"title\":\"\"}", "title: ''", "1 to 200"),
                bad("{\"format\":\"floor-survey/1\",\"title\":7}", "title: '7'", "a text"),
                bad(survey("") + "x", "valid JSON"),
                bad(survey("") + " {}", "nothing after the JSON object"),
                bad(survey(",\"title\":\"again\""), "title: 'the field'", "each field once"),
                bad(
                        survey(",\"site\":{\"fan\":\"none\",\"fan\":\"none\"}"),
                        "site.fan: 'the field'",
                        "each field once"),
                bad(survey(",\"a\\nb\\u2028c\":1"), "a?b?c: there is no such field", "format, title, stone"),
                bad(
                        survey(",\"history\":{\"laid-ago\":{\"value\":1988,\"unit\":\"year\"}}"),
                        "history.laid-ago: '1988 year'",
                        "year"),
                bad(
                        survey(",\"site\":{\"deadline\":3}"),
                        "site.deadline: '3'",
                        "an object such as {\"value\": 600, \"unit\": \"min\"}"),
                bad(survey(",\"owner\":{\"goal\":[\"hone\",\"polish\"]}"), "owner.goal: 'an array'", "a text, one of"),
                bad(survey(",\"colour\":\"red\""), "colour: there is no such field", "format, title, stone"),
                bad(survey(",\"stone\":{\"color\":\"red\"}"), "stone.color: there is no such field", "colour"),
                bad(survey(",\"stone\":{\"colour\":\"red\"}"), "stone.colour: 'red'", "pale, mixed, dark, green"),
                bad(survey(",\"stone\":{\"colour\":null}"), "stone.colour: 'null'", "a text"),
                bad(survey(",\"stone\":{\"name\":\"kryptonite\"}"), "stone.name: 'kryptonite'", "granite"),
                bad(survey(",\"stone\":\"granite\""), "stone: 'granite'", "an object"),
                bad(survey(",\"site\":{\"area\":12}"), "site.area: '12'", "an object"),
                bad(
                        survey(",\"site\":{\"area\":{\"value\":-3,\"unit\":\"m2\"}}"),
                        "site.area.value: '-3",
                        "zero or more"),
                bad(
                        survey(",\"site\":{\"area\":{\"value\":0,\"unit\":\"m2\"}}"),
                        "site.area: '0 m2'",
                        "from 0.1 to 1000000 m2"),
                bad(survey(",\"site\":{\"area\":{\"value\":3,\"unit\":\"kg\"}}"), "site.area.unit: 'kg'", "m2, ft2"),
                bad(survey(",\"site\":{\"area\":{\"value\":\"3\",\"unit\":\"m2\"}}"), "site.area.value: '3'"),
                bad(area("1e999999999"), "site.area.value: '1e999999999'", "an exponent from -400 to 400"),
                bad(area("1e-999999999"), "site.area.value: '1e-999999999'", "an exponent from -400 to 400"),
                bad(area("-1e99999999999"), "site.area.value: '-1e99999999999'", "an exponent from -400 to 400"),
                bad(area("1e399"), "site.area.value: 'Infinity'", "a finite number"),
                bad(area("1" + "0".repeat(1000)), "survey: 'the text'", "numbers of 1000 characters", "line 1, column"),
                bad(area("NaN"), "survey: 'the text'", "valid JSON; it stops being so at line 1, column"),
                bad("1e99999999999", "survey: '1e99999999999'", "an exponent from -400 to 400"),
                bad(survey(",\"site\":{\"area\":{\"unit\":\"m2\"}}"), "site.area.value: the field is missing"),
                bad(
                        survey(",\"equipment\":{\"grades\":[\"resin-800\",\"resin-700\"]}"),
                        "equipment.grades[1]: 'resin-700'",
                        "resin-800"),
                bad(
                        survey(",\"equipment\":{\"machines\":[\"single-disc\",\"single-disc\"]}"),
                        "equipment.machines[1]",
                        "each value once"),
                bad(
                        survey(",\"owner\":{\"gloss\":{\"value\":900,\"unit\":\"GU\"}}"),
                        "owner.gloss: '900 GU'",
                        "0 to 140 GU"),
                bad(
                        zone(",\"damages\":{\"scratch\":\"none\"}"),
                        "zones[0].damages.scratch: there is no such field",
                        "scratches"),
                bad(
                        zone(",\"damages\":{\"scratches\":{\"look\":\"huge\"}}"),
                        "zones[0].damages.scratches.look: 'huge'",
                        "felt-by-nail"),
                bad(
                        zone(",\"damages\":{\"scratches\":{}}"),
                        "zones[0].damages.scratches: neither a look nor a depth is told"),
                bad(
                        zone(
                                ",\"damages\":{\"scratches\":{\"look\":\"none\",\"depth\":{\"value\":0.3,\"unit\":\"mm\"}}}"),
                        "zones[0].damages.scratches.depth: '0.3 mm'",
                        "no depth where the look is none"),
                bad(
                        zone(
                                ",\"damages\":{\"scratches\":{\"look\":\"seen\",\"depth\":{\"value\":0.3,\"unit\":\"mm\"}}}"),
                        "zones[0].damages.scratches.depth",
                        "seen but not felt"),
                bad(
                        zone(",\"damages\":{\"wear\":{\"look\":\"dull\",\"depth\":{\"value\":1,\"unit\":\"mm\"}}}"),
                        "zones[0].damages.wear.depth: there is no such field"),
                bad(
                        zone(",\"damages\":{\"wear\":{\"look\":\"dull\",\"share\":{\"value\":101,\"unit\":\"%\"}}}"),
                        "zones[0].damages.wear.share: '101 %'",
                        "0 to 100 %"),
                bad(
                        survey(
                                ",\"readings\":[{\"zone\":\"z\",\"geometry\":\"60\",\"gloss\":{\"value\":5,\"unit\":\"GU\"},\"state\":\"wet\"}]"),
                        "readings.zone: 'z'"),
                bad(
                        zone("").replace(
                                        "]}",
                                        "],\"readings\":[{\"zone\":\"z\",\"geometry\":\"85\",\"gloss\":{\"value\":170,\"unit\":\"GU\"},\"state\":\"clean-dry\"}]}"),
                        "readings[0].gloss: '170 GU'",
                        "0 to 161 GU"),
                bad(
                        zone("").replace(
                                        "]}",
                                        "],\"readings\":[{\"zone\":\"z\",\"geometry\":\"45\",\"gloss\":{\"value\":5,\"unit\":\"GU\"},\"state\":\"clean-dry\"}]}"),
                        "readings[0].geometry: '45'",
                        "20, 60, 85"),
                bad(
                        survey(",\"site\":{\"setting\":\"outdoors\",\"room-volume\":{\"value\":90,\"unit\":\"m3\"}}"),
                        "site.room-volume",
                        "outdoors"));
    }

    @ParameterizedTest
    @MethodSource("inputs")
    void the_message_names_field_value_and_what_would_be_accepted(String json, String... parts) {
        Throwable problem = catchThrowable(() -> Json.SURVEY.read(json));
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage()).contains(parts).contains("accepted: ").doesNotContain("\n", "\r");
    }

    @Test
    void ten_megabytes_of_nesting_are_refused_in_one_line() {
        Throwable problem = catchThrowable(() -> Json.SURVEY.read("[".repeat(10_000_000)));
        assertThat(problem).isInstanceOf(InvalidInputException.class).hasMessageContaining("nesting");
        assertThat(problem.getMessage()).hasSizeLessThan(400).doesNotContain("\n");
    }

    @Test
    void a_list_that_would_fill_the_memory_is_refused_in_one_line() {
        Throwable problem = catchThrowable(() -> Json.SURVEY.read("[" + "[],".repeat(6_600_000) + "1]"));
        assertThat(problem)
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("1000000 names and values in all");
        assertThat(problem.getMessage()).hasSizeLessThan(400);
    }

    @Test
    void the_name_of_a_field_does_not_lengthen_the_message() {
        Throwable problem = catchThrowable(() -> Json.SURVEY.read(survey(",\"" + "x".repeat(900) + "\":1")));
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage()).startsWith("x".repeat(60) + "...: ").hasSizeLessThan(400);
    }

    static Stream<Arguments> changesOfARecommendation() {
        return Stream.of(
                Arguments.of("\"provisional\"", "\"planed\"", "status: 'planed'"),
                Arguments.of("\"resin\"", "\"ressin\"", "sequence[0].bond: 'ressin'"),
                Arguments.of("\"number\" : 120", "\"number\" : 0", "sequence[0].number: '0'"),
                Arguments.of("\"number\" : 120", "\"number\" : 1.5", "sequence[0].number: '1.5'"),
                Arguments.of("\"number\" : 120", "\"number\" : 320", "sequence: 'resin-320'"),
                Arguments.of("\"resin-120\"", "\"resin-121\"", "plan.tracks[0].steps[0].grade: 'resin-121'"),
                Arguments.of("\"low\" : 6", "\"low\" : \"six\"", "plan.tracks[0].steps[0].passes.low: 'six'"),
                Arguments.of("\"low\" : 6", "\"low\" : 60", "plan.tracks[0].steps[0].passes: '60 to 10'"),
                Arguments.of("\"low\" : 11.25", "\"low\" : \"x\"", "plan.tracks[0].steps[0].added-mass.low: 'x'"),
                Arguments.of("\"low\" : 11.25", "\"low\" : -1", "plan.tracks[0].steps[0].added-mass.low: '-1"),
                Arguments.of(
                        "\"low\" : 11.25", "\"low\" : 30", "plan.tracks[0].steps[0].added-mass: '30 kg to 22.5 kg'"),
                Arguments.of("\"kg\"", "\"m\"", "plan.tracks[0].steps[0].added-mass.unit: 'm'"),
                Arguments.of("\"never-dry\"", "\"cross-hatch\"", "plan.tracks[0].steps[0].handling[1]: 'cross-hatch'"),
                Arguments.of("\"kind\" : \"decision\"", "\"kind\" : \"choice\"", "outcomes[0].kind: 'choice'"),
                Arguments.of("\"kind\" : \"need\"", "\"kind\" : \"must\"", "outcomes[0].won[0].kind: 'must'"),
                Arguments.of("\"subject\" : \"floor\"", "\"subject\" : \"flor\"", "outcomes[0].subject: 'flor'"),
                Arguments.of("floor-survey/2", "floor-survey/9", "survey.format: 'floor-survey/9'"),
                Arguments.of("Lamp room, ", "x".repeat(200), "survey.title: "),
                Arguments.of("\"fizz-on-solid\"", "\"boils\"", "survey.stone.acid-drop: 'boils'"),
                Arguments.of("\"white-marble\"", "\"chalk\"", "survey.stone.name: 'chalk'"),
                Arguments.of("\"value\" : 42.125", "\"value\" : 0", "survey.site.area: '0 m2'"),
                Arguments.of("\"value\" : 60,", "\"value\" : 90,", "survey.zones.share: '130"),
                Arguments.of(
                        "\"zone\" : \"lane\",\n        \"geometry\"",
                        "\"zone\" : \"lame\",\n        \"geometry\"",
                        "survey.readings.zone: 'lame'"),
                Arguments.of(
                        "\"lippage.high\"", "\"lippage.higher\"", "parameters.lippage.higher: there is no such field"),
                Arguments.of("\"switched-off\"", "\"switched\"", "rulebase.switched: there is no such field"));
    }

    @ParameterizedTest
    @MethodSource("changesOfARecommendation")
    void what_is_wrong_with_a_recommendation_is_said_with_the_whole_path(String good, String wrong, String start) {
        String json = Json.RECOMMENDATION.print(Examples.planned());
        int at = json.indexOf(good);
        assertThat(at).isNotNegative();
        String changed = json.substring(0, at) + wrong + json.substring(at + good.length());
        Throwable problem = catchThrowable(() -> Json.RECOMMENDATION.read(changed));
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage())
                .startsWith(start)
                .contains("accepted: ")
                .doesNotContain("\n", "\r");
    }

    @Test
    void a_number_that_is_missing_is_never_taken_from_the_shipped_set() {
        String json = Json.RECOMMENDATION.print(Examples.planned());
        String less = json.replaceFirst("\"mats\\.low\" : \\{[^}]*},\\s*", "");
        assertThat(less).isNotEqualTo(json);
        Throwable problem = catchThrowable(() -> Json.RECOMMENDATION.read(less));
        assertThat(problem)
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("parameters.mats.low: the field is missing; accepted: a value");
        String none = json.replaceFirst("(?s)\"parameters\" : \\{.*?},\\s*\"rulebase\"", "\"rulebase\"");
        assertThat(none).isNotEqualTo(json);
        assertThat(catchThrowable(() -> Json.RECOMMENDATION.read(none)).getMessage())
                .startsWith("parameters: the field is missing");
    }

    @Test
    void a_recommendation_whose_sequence_lacks_its_grades_is_not_printed() {
        Recommendation planned = Examples.planned();
        Recommendation other = new Recommendation(
                planned.status(),
                planned.plan(),
                planned.refusals(),
                planned.warnings(),
                planned.questions(),
                planned.counterOffers(),
                planned.outcomes(),
                planned.survey(),
                GritSequence.standard(),
                planned.parameters(),
                planned.rulebase());
        Throwable problem = catchThrowable(() -> Json.RECOMMENDATION.print(other));
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage()).startsWith("sequence: 'without resin-320");
    }

    @Test
    void a_text_beyond_all_sense_is_refused_before_it_is_read() {
        Throwable problem = catchThrowable(() -> Json.SURVEY.read(" ".repeat(20_000_001)));
        assertThat(problem).isInstanceOf(InvalidInputException.class).hasMessageContaining("20000000");
    }
}
