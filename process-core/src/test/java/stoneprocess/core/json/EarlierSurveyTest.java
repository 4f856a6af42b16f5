package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;

/** Files that were written in an earlier version of the survey form stay readable, alone and inside other forms. */
class EarlierSurveyTest {
    private static final String EARLIER = "floor-survey/1";

    @ParameterizedTest
    @ValueSource(strings = {"boat-shed-concrete", "guest-house-foyer", "lighthouse-unknown-stone"})
    void a_survey_is_read_and_printed_in_the_present_version(String name) {
        String kept = kept(name + ".json");
        assertThat(kept).contains(EARLIER);
        FloorSurvey survey = Json.SURVEY.read(kept);
        String printed = Json.SURVEY.print(survey);
        assertThat(printed).contains("\"" + FloorSurvey.FORMAT + "\"").doesNotContain(EARLIER);
        assertThat(Json.SURVEY.read(printed)).isEqualTo(survey);
    }

    @Test
    void a_recommendation_is_read_with_the_survey_in_it() {
        Recommendation planned = Examples.planned();
        String printed = Json.RECOMMENDATION.print(planned);
        String earlier = printed.replace(FloorSurvey.FORMAT, EARLIER);
        assertThat(earlier).isNotEqualTo(printed);
        assertThat(Json.RECOMMENDATION.read(earlier)).isEqualTo(planned);
    }

    @Test
    void no_field_and_no_word_was_taken_away() {
        Set<String> earlier = fieldsAndWords(kept("schema.json"));
        assertThat(earlier).contains("stone.name: marble", "zones.damages.scratches.look: felt-by-nail");
        assertThat(fieldsAndWords(Json.SURVEY.schema())).containsAll(earlier);
    }

    private static Set<String> fieldsAndWords(String schema) {
        Map<?, ?> root = (Map<?, ?>) Tree.parse(schema, "schema");
        Set<String> found = new TreeSet<>();
        collect(new Described(root, root), "", found);
        return found;
    }

    private static void collect(Described part, String path, Set<String> found) {
        part.optional("enum")
                .ifPresent(words -> words.texts().forEach(word -> found.add(path.substring(1) + ": " + word)));
        part.optional("items").ifPresent(items -> collect(items, path, found));
        part.optional("oneOf")
                .ifPresent(
                        ways -> IntStream.range(0, ways.size()).forEach(way -> collect(ways.member(way), path, found)));
        part.optional("properties")
                .ifPresent(fields -> fields.names().forEach(name -> {
                    found.add((path + "." + name).substring(1));
                    collect(fields.get(name), path + "." + name, found);
                }));
    }

    private static String kept(String name) {
        try (InputStream file = EarlierSurveyTest.class.getResourceAsStream("floor-survey-1/" + name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
