package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;

/** Areas, the rest of a floor and numbers of pieces are read as shares. Expected shares are worked out by hand. */
class ZoneSharesTest {
    private static final String FIELD = "{\"name\": \"field\", \"kind\": \"field\"}";

    private static FloorSurvey read(String area, String zones) {
        return Json.SURVEY.read(
                "{\"format\": \"floor-survey/2\", \"title\": \"hall\"" + area + ", \"zones\": [" + zones + "]}");
    }

    private static String site(int squareMetres) {
        return ", \"site\": {\"area\": {\"value\": " + squareMetres + ", \"unit\": \"m2\"}}";
    }

    @Test
    void the_area_of_a_zone_is_read_as_its_share_and_a_zone_without_either_takes_the_rest() {
        FloorSurvey survey = read(
                site(18),
                "{\"name\": \"island\", \"kind\": \"entrance\", \"area\": {\"value\": 4.5, \"unit\": \"m2\"}}, "
                        + FIELD);
        assertThat(survey.zones()).extracting(zone -> zone.share().percent()).containsExactly(25.0, 75.0);
        assertThat(Json.SURVEY.read(Json.SURVEY.print(survey))).isEqualTo(survey);
    }

    @Test
    void eleven_joints_of_six_hundred_square_metres_are_a_fifth_of_a_percent() {
        FloorSurvey survey = read(
                site(600),
                "{\"name\": \"lobby\", \"kind\": \"field\", \"damages\": {\"lippage\": {\"depth\": {\"value\": 3, \"unit\": \"mm\"},"
                        + " \"count\": {\"value\": 11, \"unit\": \"count\"}}}}");
        double share = survey.zones()
                .get(0)
                .damage(DamageKind.LIPPAGE)
                .value()
                .orElseThrow()
                .share()
                .orElseThrow()
                .percent();
        assertThat(share).isBetween(0.18, 0.19);
    }

    @Test
    void a_count_without_the_area_of_the_floor_says_what_is_missing() {
        assertThatThrownBy(() -> read(
                        "",
                        "{\"name\": \"lobby\", \"kind\": \"field\", \"damages\": {\"etches\": {\"look\": \"rough\","
                                + " \"count\": {\"value\": 5, \"unit\": \"count\"}}}}"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("zones[0].damages.etches.count")
                .hasMessageContaining("site.area");
    }

    @Test
    void two_zones_without_share_or_area_are_refused_by_name() {
        assertThatThrownBy(() -> read(site(18), FIELD + ", {\"name\": \"door\", \"kind\": \"entrance\"}"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("zones[0].share: the size of the zone is missing; accepted: a share, such as ")
                .hasMessageContaining("in all zones but one")
                .hasMessageEndingWith("describe the floor as one zone");
    }

    @Test
    void a_count_beside_a_share_is_refused_with_its_number() {
        assertThatThrownBy(() -> read(
                        site(18),
                        "{\"name\": \"lobby\", \"kind\": \"field\", \"damages\": {\"etches\": {\"look\": \"rough\","
                                + " \"share\": {\"value\": 5, \"unit\": \"%\"},"
                                + " \"count\": {\"value\": 5, \"unit\": \"count\"}}}}"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "zones[0].damages.etches.count: '5' is not accepted; accepted: a count or a share, not both,"
                                + " and a count only in a zone whose share is known");
    }

    @Test
    void a_zone_larger_than_the_floor_is_refused() {
        assertThatThrownBy(() -> read(
                        site(18),
                        "{\"name\": \"hall\", \"kind\": \"field\", \"area\": {\"value\": 20, \"unit\": \"m2\"}}"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("zones[0].area");
    }
}
