package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.problem.InvalidInputException;

/** Bad input gets one line that names the field, the value and what would be accepted. */
class BadInputTest {
    private static Arguments bad(String json, String... parts) {
        return Arguments.of(json, parts);
    }

    private static String survey(String more) {
        return "{\"format\":\"floor-survey/1\",\"title\":\"t\"" + more + "}";
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
                bad("{\"title\":\"t\"}", "format: 'nothing'", "missing"),
                bad("{\"format\":\"floor-survey/9\",\"title\":\"t\"}", "format: 'floor-survey/9'", "floor-survey/1"),
                bad("{\"format\":\"floor-survey/1\"}", "title: 'nothing'"),
                bad("{\"format\":\"floor-survey/1\",\"title\":\"\"}", "title: ''", "1 to 200"),
                bad("{\"format\":\"floor-survey/1\",\"title\":7}", "title: '7'", "a text"),
                bad(survey("") + "x", "valid JSON"),
                bad(survey("") + " {}", "nothing after the JSON object"),
                bad(survey(",\"title\":\"again\""), "valid JSON", "title"),
                bad(survey(",\"colour\":\"red\""), "colour: 'the field'", "format, title, stone"),
                bad(survey(",\"stone\":{\"color\":\"red\"}"), "stone.color: 'the field'", "colour"),
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
                bad(survey(",\"site\":{\"area\":{\"value\":1e999999999,\"unit\":\"m2\"}}"), "site.area.value"),
                bad(survey(",\"site\":{\"area\":{\"value\":NaN,\"unit\":\"m2\"}}"), "valid JSON"),
                bad(survey(",\"site\":{\"area\":{\"unit\":\"m2\"}}"), "site.area.value: 'nothing'"),
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
                bad(zone(",\"damages\":{\"scratch\":\"none\"}"), "zones[0].damages.scratch: 'the field'", "scratches"),
                bad(
                        zone(",\"damages\":{\"scratches\":{\"look\":\"huge\"}}"),
                        "zones[0].damages.scratches.look: 'huge'",
                        "felt-by-nail"),
                bad(zone(",\"damages\":{\"scratches\":{}}"), "zones[0].damages.scratches: 'neither'"),
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
                        "zones[0].damages.wear.depth: '1 mm'"),
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
                        "0 to 162 GU"),
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
        Throwable problem = catchThrowable(() -> SurveyJson.read(json));
        assertThat(problem).isInstanceOf(InvalidInputException.class);
        assertThat(problem.getMessage()).contains(parts).contains("accepted: ").doesNotContain("\n", "\r");
    }

    @Test
    void ten_megabytes_of_nesting_are_refused_in_one_line() {
        Throwable problem = catchThrowable(() -> SurveyJson.read("[".repeat(10_000_000)));
        assertThat(problem).isInstanceOf(InvalidInputException.class).hasMessageContaining("nesting");
        assertThat(problem.getMessage()).hasSizeLessThan(400).doesNotContain("\n");
    }

    @Test
    void a_text_beyond_all_sense_is_refused_before_it_is_read() {
        Throwable problem = catchThrowable(() -> SurveyJson.read(" ".repeat(20_000_001)));
        assertThat(problem).isInstanceOf(InvalidInputException.class).hasMessageContaining("20000000");
    }
}
