package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;

/** What every form does, apart from what it holds. */
class FormTest {
    private static final String SURVEY = """
            {"format":"floor-survey/1","title":"Merrowhithe, salle d’été","x-job":{"number":4711,"open":null},
             "site":{"x-door":"north","fan":"none"},
             "zones":[{"name":"lane","kind":"lane","share":{"value":60,"unit":"%","x-guessed":true},
                       "damages":{"scratches":{"look":"seen","x-photo":["a.jpg","b.jpg"]}},"x-colour":"grey"}]}
            """;
    private static final String LOG = """
            {"format":"job-log/1","title":"Lamp room","x-crew":"B","entries":[
              {"at":"day 1, 09:00","x-photo":"c.jpg","event":{"kind":"crack","zone":"lane","state":"open","x-by":"me"}}]}
            """;

    @Test
    void compact_text_says_the_same_without_spaces() {
        Recommendation planned = Examples.planned();
        String compact = Json.RECOMMENDATION.compact().print(planned);
        assertThat(Json.RECOMMENDATION.read(compact)).isEqualTo(planned);
        assertThat(compact).doesNotContain("\n", "\" :", ": ");
        assertThat(compact).startsWith("{\"format\":\"floor-recommendation/1\",\"status\":");
    }

    /** Fields of a user's own are carried along whatever they hold, but what is printed turns and controls nothing. */
    @Test
    void what_controls_or_turns_the_writing_is_escaped_and_read_back() {
        String hostile = "\u202eno\u2066te\u007f\u009b31m\u2028\ufeff é 大";
        FloorSurvey survey =
                Json.SURVEY.read("{\"format\":\"floor-survey/2\",\"title\":\"Hall\",\"x-note\":\"" + hostile + "\"}");
        String printed = Json.SURVEY.print(survey);
        assertThat(printed.replace("\n", ""))
                .doesNotContainPattern("[\\p{C}\\u2028\\u2029]")
                .contains("é 大");
        assertThat(Json.SURVEY.read(printed)).isEqualTo(survey);
    }

    @Test
    void streams_are_utf_8_and_stay_open() {
        boolean[] closed = {false, false};
        FloorSurvey survey = Json.SURVEY.read(SURVEY);
        ByteArrayOutputStream out = new ByteArrayOutputStream() {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        Json.SURVEY.print(survey, out);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .isEqualTo(Json.SURVEY.print(survey))
                .contains("salle d’été");
        InputStream in = new ByteArrayInputStream(out.toByteArray()) {
            @Override
            public void close() {
                closed[1] = true;
            }
        };
        assertThat(Json.SURVEY.read(in)).isEqualTo(survey);
        assertThat(closed).containsExactly(false, false);
    }

    @Test
    void a_stream_that_is_no_utf_8_is_refused_in_one_line() {
        byte[] latin = "{\"format\":\"floor-survey/1\",\"title\":\"été\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> Json.SURVEY.read(new ByteArrayInputStream(latin)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("survey: 'the text' is not accepted; accepted: text in UTF-8");
    }

    @Test
    void a_stream_without_end_is_refused_before_it_fills_the_memory() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return ' ';
            }
        };
        assertThatThrownBy(() -> Json.SURVEY.read(endless))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("at most 20000000 characters");
    }

    @Test
    void a_stream_that_fails_is_told_with_its_cause() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("full");
            }
        };
        assertThatThrownBy(() -> Json.SURVEY.print(Examples.survey(), full))
                .isInstanceOf(UncheckedIOException.class)
                .hasRootCauseMessage("full");
    }

    @Test
    void a_survey_keeps_fields_of_the_user_s_own() {
        FloorSurvey survey = Json.SURVEY.read(SURVEY);
        assertThat(survey.extras())
                .isEqualTo(Map.of(
                        "x-job", "{\"number\":4711,\"open\":null}",
                        "site.x-door", "\"north\"",
                        "zones[0].share.x-guessed", "true",
                        "zones[0].damages.scratches.x-photo", "[\"a.jpg\",\"b.jpg\"]",
                        "zones[0].x-colour", "\"grey\""));
        String printed = Json.SURVEY.print(survey);
        assertThat(printed).contains("x-job", "x-door", "x-guessed", "x-photo", "x-colour");
        assertThat(Json.SURVEY.read(printed)).isEqualTo(survey);
        assertThat(Json.SURVEY.print(Json.SURVEY.read(printed))).isEqualTo(printed);
        assertThat(survey.toBuilder().build()).isEqualTo(survey);
        FloorSurvey withoutZones = survey.toBuilder().zones(java.util.List.of()).build();
        assertThat(Json.SURVEY.print(withoutZones)).contains("x-job", "x-door").doesNotContain("x-colour");
    }

    @Test
    void a_job_log_keeps_fields_of_the_user_s_own() {
        JobLog log = Json.JOB_LOG.read(LOG);
        assertThat(log.extras()).containsOnlyKeys("x-crew", "entries[0].x-photo", "entries[0].event.x-by");
        String printed = Json.JOB_LOG.compact().print(log);
        assertThat(printed).contains("\"x-crew\":\"B\"", "\"x-photo\":\"c.jpg\"", "\"x-by\":\"me\"");
        assertThat(Json.JOB_LOG.read(printed)).isEqualTo(log);
    }

    @Test
    void other_forms_read_over_them_but_not_over_those_of_their_survey() {
        Recommendation planned = Examples.planned();
        String json = Json.RECOMMENDATION.print(planned);
        String more = json.replaceFirst("\"status\"", "\"x-mine\" : 1, \"status\"")
                .replaceFirst("\"steps\"", "\"x-mine\" : [], \"steps\"")
                .replaceFirst("\"title\"", "\"x-job\" : 4711, \"title\"");
        Recommendation read = Json.RECOMMENDATION.read(more);
        assertThat(read.plan()).isEqualTo(planned.plan());
        assertThat(read.survey().extras()).isEqualTo(Map.of("x-job", "4711"));
        assertThat(Json.RECOMMENDATION.print(read)).doesNotContain("x-mine").contains("\"x-job\" : 4711");
    }

    @Test
    void every_form_keeps_them_beside_the_value_on_request() {
        String json = """
                {"format":"price-list/1","currency":"crowns","prices":{"labour-hour":38,"x-old":35},"x-for":["Anne"]}""";
        WithExtras<PriceList> read = Json.PRICE_LIST.readWithExtras(json);
        assertThat(read.value())
                .isEqualTo(PriceList.empty("crowns").with(PriceItem.LABOUR_HOUR, "38"))
                .isEqualTo(Json.PRICE_LIST.read(json));
        assertThat(read.extras()).isEqualTo(Map.of("prices.x-old", "35", "x-for", "[\"Anne\"]"));
        String printed = Json.PRICE_LIST.compact().print(read);
        assertThat(printed).contains("\"x-old\":35", "\"x-for\":[\"Anne\"]");
        assertThat(Json.PRICE_LIST.readWithExtras(printed)).isEqualTo(read);
        assertThat(Json.PRICE_LIST.print(read.value())).doesNotContain("x-");
        String planned = Json.RECOMMENDATION
                .compact()
                .print(Examples.planned())
                .replaceFirst("\\{", "{\"x-mine\":1,")
                .replaceFirst("\"title\"", "\"x-job\":2,\"title\"");
        WithExtras<Recommendation> withBoth = Json.RECOMMENDATION.readWithExtras(planned);
        assertThat(withBoth.extras()).isEqualTo(Map.of("x-mine", "1"));
        assertThat(withBoth.value().survey().extras()).isEqualTo(Map.of("x-job", "2"));
    }

    @Test
    void a_field_that_could_not_be_read_back_is_not_printed() {
        FloorSurvey mine = FloorSurvey.builder("t").extras(Map.of("mine", "1")).build();
        assertThatThrownBy(() -> Json.SURVEY.print(mine))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("mine: 'the field' is not accepted; accepted: x- and 1 to 58");
        FloorSurvey noJson =
                FloorSurvey.builder("t").extras(Map.of("x-mine", "one")).build();
        assertThatThrownBy(() -> Json.SURVEY.print(noJson))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("x-mine: 'the text' is not accepted; accepted: valid JSON");
    }

    @Test
    void a_name_of_the_user_s_own_that_would_not_survive_is_refused() {
        assertThatThrownBy(() -> Json.SURVEY.read(SURVEY.replace("x-door", "x-door no")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("site.x-door?no: 'the field' is not accepted; accepted: x- and 1 to 58");
    }

    @Test
    void a_reader_that_meets_another_version_says_which_it_reads() {
        for (Form<?> form : Json.all()) {
            String accepted = form == Json.SURVEY ? "floor-survey/2, floor-survey/1" : form.version();
            assertThatThrownBy(() -> form.read("{\"format\":\"floor-survey/7\"}"))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessage("format: 'floor-survey/7' is not accepted; accepted: " + accepted);
            assertThatThrownBy(() -> form.read("{}"))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessage("format: the field is missing; accepted: " + accepted);
        }
    }
}
