package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.json.Form;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;

/**
 * Pins the JSON of surveys, logs and all answers about the samples, apart from plans and next moves, which have pins of
 * their own. Each line is the hash of everything printed in one form for one sample.
 */
class FormsRegressionTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final List<Topic<?>> ASKED = List.of(Topics.VERDICT, Topics.FIRST_CUT, Topics.FINISH);

    private final Map<String, StringBuilder> printed = new TreeMap<>();

    private void print(String form, String sample, String json) {
        printed.computeIfAbsent(form + " " + sample, line -> new StringBuilder())
                .append(json);
    }

    private static List<String> names(String folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static FloorSurvey survey(String name) throws IOException {
        return Json.SURVEY.read(Files.readString(Path.of("surveys", name)));
    }

    private static <T> String printed(Form<T> form, Path file) throws IOException {
        return form.print(form.read(Files.readString(file)));
    }

    /** Pins our own output; run with {@code -Dsamples.write} to pin anew. */
    @Test
    void every_form_gives_the_bytes_that_are_pinned() throws Exception {
        List<FloorSurvey> surveys = new ArrayList<>();
        for (String name : names("surveys")) {
            FloorSurvey survey = survey(name);
            surveys.add(survey);
            Recommendation plan = ADVISOR.recommend(survey);
            print("survey", name, Json.SURVEY.print(survey));
            print("what-else", name, Json.WHAT_ELSE.print(ADVISOR.whatElse(survey)));
            print("how-to", name, Json.HOW_TO.print(ADVISOR.howTo(survey, Topics.VERDICT, Subject.FLOOR, "go")));
            print("how-to", name, Json.HOW_TO.print(ADVISOR.howTo(survey, Topics.FINISH, Subject.FLOOR, "satin")));
            if (PlannedJob.isThere(plan)) {
                print("planned-job", name, Json.PLANNED_JOB.print(PlannedJob.of(plan, JobOptions.defaults())));
            }
            Recommendation first = ADVISOR.recommend(surveys.get(0));
            print("difference", name, Json.DIFFERENCE.print(Difference.between(first, plan)));
            for (Outcome outcome : plan.outcomes()) {
                print("why", name, Json.WHY.print(ADVISOR.why(plan, outcome.topic(), outcome.subject())));
                if (ASKED.contains(outcome.topic())) {
                    for (Term value : outcome.topic().domain()) {
                        if (!plan.values(outcome.topic(), outcome.subject()).contains(value)) {
                            print(
                                    "why-not",
                                    name,
                                    Json.WHY_NOT.print(
                                            ADVISOR.whyNot(plan, outcome.topic(), outcome.subject(), value.key())));
                        }
                    }
                }
            }
        }
        for (String name : names("logs")) {
            JobLog log = Json.JOB_LOG.read(Files.readString(Path.of("logs", name)));
            print("job-log", name, Json.JOB_LOG.print(log));
            Recommendation plan = ADVISOR.recommend(survey(LogsRegressionTest.SURVEY_OF.get(name)));
            for (Sign sign : Sign.values()) {
                print("diagnosis", name, Json.DIAGNOSIS.print(ADVISOR.diagnose(plan, EnumSet.of(sign), log)));
            }
        }
        print("price-list", "harbour-crew.json", printed(Json.PRICE_LIST, Path.of("prices", "harbour-crew.json")));
        print(
                "crew-times",
                "harbour-crew-times.json",
                printed(Json.CREW_TIMES, Path.of("prices", "harbour-crew-times.json")));
        print("exposure", "cellar-stair.json", printed(Json.EXPOSURE, Path.of("exposure", "cellar-stair.json")));
        Advisor house = Advisor.of(
                Rulebase.with(Overlay.none().switchOff("FIN-001", "trainer", "shown side by side")),
                Options.defaults());
        print("comparison", "all", Json.COMPARISON.print(ADVISOR.compare(house, surveys)));
        print("audit", "all", Json.AUDIT.print(AuditedOnce.REPORT));
        assertPinned();
    }

    private void assertPinned() throws Exception {
        StringBuilder pinned = new StringBuilder();
        for (Map.Entry<String, StringBuilder> form : printed.entrySet()) {
            byte[] bytes = form.getValue().toString().getBytes(StandardCharsets.UTF_8);
            pinned.append(HexFormat.of()
                            .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)))
                    .append("  ")
                    .append(form.getKey())
                    .append('\n');
        }
        Path file = Path.of("command-line", "src", "test", "resources", "stoneprocess", "examples", "forms.sha256");
        if (System.getProperty("samples.write") != null) {
            Files.writeString(file, pinned.toString());
        }
        assertThat(pinned.toString())
                .as("the samples get other answers; pin them anew with -Dsamples.write and say so in the change log")
                .isEqualTo(Files.readString(file));
    }
}
