package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Options;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;

/**
 * Recommendations that were stored and damaged: refused on reading where their parts contradict one another, refused by
 * the advisor where its rulebase would not make them of their survey, and never a failure of another kind afterwards.
 */
class StoredRecommendationTest {
    private static final Advisor ADVISOR = Advisor.standard();
    private static final PlanText PLAN_TEXT = new PlanText(ADVISOR.rulebase().cards());
    private static final Texts TEXTS = Texts.english();
    private static final int DAMAGED = Boolean.getBoolean("audit.whole") ? 5_000 : 100;
    private static final Pattern NUMBER = Pattern.compile(": (-?[0-9.]+)");
    private static final Pattern TEXT = Pattern.compile("(\"[^\"]*\"),?$");

    private enum Ending {
        REFUSED_ON_READING,
        REFUSED_BY_THE_ADVISOR,

        /** The damage made another survey with the same answer, or nothing that counts. */
        STILL_WHAT_THE_RULES_SAY
    }

    @Test
    void what_was_damaged_is_refused_or_is_still_what_the_rules_make_of_it() throws IOException {
        Random random = new Random(20_261_130);
        List<String> stored = new ArrayList<>();
        for (String sample : SamplesRegressionTest.samples().toList()) {
            stored.add(recommendation(sample));
        }
        Map<Ending, Integer> endings = new EnumMap<>(Ending.class);
        for (int i = 0; i < DAMAGED; i++) {
            Optional<String> damaged = Optional.empty();
            while (damaged.isEmpty()) {
                damaged = damaged(stored.get(i % stored.size()), random);
            }
            endings.merge(ending(damaged.get()), 1, Integer::sum);
        }
        System.out.println("damaged recommendations: " + endings);
        assertThat(endings.keySet()).contains(Ending.REFUSED_ON_READING, Ending.REFUSED_BY_THE_ADVISOR);
        assertThat(endings.getOrDefault(Ending.REFUSED_BY_THE_ADVISOR, 0)).isGreaterThan(4);
    }

    private static Ending ending(String text) {
        Recommendation read;
        try {
            read = Json.RECOMMENDATION.read(text);
        } catch (InvalidInputException refused) {
            assertThat(refused.field()).as(refused.getMessage()).isNotNull();
            return Ending.REFUSED_ON_READING;
        }
        printed(read);
        try {
            ADVISOR.explain(read);
        } catch (InvalidInputException refused) {
            assertThat(refused.field()).startsWith("recommendation.");
            return Ending.REFUSED_BY_THE_ADVISOR;
        }
        assertThat(Advisor.of(ADVISOR.rulebase(), new Options(read.sequence())).recommend(read.survey()))
                .isEqualTo(read);
        return Ending.STILL_WHAT_THE_RULES_SAY;
    }

    /** A page is made of what was read, or the one thing that it cannot word is named. */
    private static void printed(Recommendation read) {
        try {
            assertThat(TEXTS.page(PLAN_TEXT.document(read, Detail.FULL))).isNotEmpty();
        } catch (InvalidInputException unknown) {
            assertThat(unknown.accepted()).isNotEmpty();
        }
    }

    @Test
    void the_part_that_was_changed_is_named() throws IOException {
        String stored = recommendation("ferry-hall-granite.json");
        String sealer = stored.replaceFirst("(\"sealer\" : )\"[a-z-]+\"(,\\s+\"finish-tasks\")", "$1\"topical\"$2");
        assertThat(sealer).isNotEqualTo(stored);
        assertThatThrownBy(() -> Json.RECOMMENDATION.read(sealer))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("plan.sealer: ");

        String rule = stored.replaceFirst(
                "(\"verdict\",\\s+\"subject\" : \"floor\",[^§]*?\"rule\" : )\"[A-Z]{3}-[0-9]{3}\"", "$1\"ZZZ-001\"");
        assertThat(rule).isNotEqualTo(stored);
        Recommendation read = Json.RECOMMENDATION.read(rule);
        for (var call : List.<Runnable>of(
                () -> ADVISOR.explain(read), () -> ADVISOR.followUp(read, new JobLog("log", List.of())))) {
            assertThatThrownBy(call::run)
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("recommendation.outcomes[")
                    .hasMessageContaining("ZZZ-001");
        }
    }

    @Test
    void a_number_that_was_changed_is_named() throws IOException {
        String stored = recommendation("ferry-hall-granite.json");
        String retuned = stored.replaceFirst("(\"mats\\.low\" : \\{\\s*\"value\" : )[0-9.]+", "$15");
        assertThat(retuned).isNotEqualTo(stored);
        Recommendation read = Json.RECOMMENDATION.read(retuned);
        assertThatThrownBy(() -> ADVISOR.explain(read))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(
                        "recommendation.parameters.mats.low: '5 mm' is not accepted; accepted: what this rulebase reckons with: 4500 mm");
    }

    @Test
    void one_that_was_stored_whole_is_gone_on_with() throws IOException {
        Recommendation read = Json.RECOMMENDATION.read(recommendation("ferry-hall-granite.json"));
        assertThat(ADVISOR.followUp(read, new JobLog("log", List.of())))
                .isEqualTo(ADVISOR.followUp(ADVISOR.recommend(read.survey()), new JobLog("log", List.of())));
    }

    private static String recommendation(String sample) throws IOException {
        return Json.RECOMMENDATION.print(
                ADVISOR.recommend(Json.SURVEY.read(Files.readString(Path.of("surveys", sample)))));
    }

    /** One text in place of another, one number in place of another, or one part gone; empty where nothing changed. */
    private static Optional<String> damaged(String whole, Random random) {
        List<String> lines = new ArrayList<>(Arrays.asList(whole.split("\n")));
        int at = 1 + random.nextInt(lines.size() - 2);
        String line = lines.get(at);
        switch (random.nextInt(3)) {
            case 0 -> {
                Matcher text = TEXT.matcher(line);
                Matcher other = TEXT.matcher(lines.get(1 + random.nextInt(lines.size() - 2)));
                if (!text.find() || !other.find()) {
                    return Optional.empty();
                }
                lines.set(at, line.substring(0, text.start(1)) + other.group(1) + line.substring(text.end(1)));
            }
            case 1 -> {
                Matcher number = NUMBER.matcher(line);
                if (!number.find()) {
                    return Optional.empty();
                }
                lines.set(at, line.substring(0, number.start(1)) + random.nextInt(200) + line.substring(number.end(1)));
            }
            default -> without(lines, at);
        }
        String changed = String.join("\n", lines);
        return changed.equals(whole.stripTrailing()) ? Optional.empty() : Optional.of(changed);
    }

    /** Takes out a line, or the object or list that it begins. */
    private static void without(List<String> lines, int at) {
        int last = at;
        if (lines.get(at).endsWith("{") || lines.get(at).endsWith("[")) {
            int depth = indent(lines.get(at));
            do {
                last++;
            } while (indent(lines.get(last)) != depth);
        }
        boolean followed = lines.get(last).endsWith(",");
        lines.subList(at, last + 1).clear();
        String before = lines.get(at - 1);
        if (!followed && before.endsWith(",")) {
            lines.set(at - 1, before.substring(0, before.length() - 1));
        }
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }
}
