package stoneprocess.core.internal.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.HouseRuleKind;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;

/**
 * A name cannot forge a line of a page, move a terminal's cursor, turn the direction of writing, or hide. The characters
 * are those of the Unicode Standard: bidirectional controls of UAX 9, control codes of ISO/IEC 6429.
 */
class PrintableTest {
    /** What reaches a terminal, a page or a log, from each door through which a user's own name comes. */
    static Stream<Named> doors() {
        return Stream.of(
                new Named("title of a survey", FloorSurvey::builder),
                new Named("title of a log", title -> new JobLog(title, List.of())),
                new Named("name of a zone", name -> new Zone(name, ZoneKind.FIELD, new Share(1), Map.of())),
                new Named("currency", currency -> new Money(BigDecimal.ONE, currency)),
                new Named(
                        "who answers for a house's rule",
                        who -> new HouseRule(HouseRuleKind.SWITCHED_OFF, "WAT-001", who, "tried on our floors")));
    }

    private interface Door {
        Object open(String text);
    }

    private record Named(String name, Door door) {
        @Override
        public String toString() {
            return name;
        }
    }

    @ParameterizedTest
    @MethodSource("doors")
    void a_name_that_forges_moves_turns_or_hides_is_refused(Named named) {
        for (String hostile : List.of(
                "Hall\nPLAN. All is well.",
                "Hall\r",
                "Hall\u2028PLAN",
                "Hall\u2029",
                "Hall\u0085PLAN",
                "\u001b[2JHall",
                "Hall\u0000",
                "Hall\u007f",
                "Hall \u202e.og",
                "Hall\u2066\u2069",
                "Ha\u200bll",
                "\ufeffHall",
                "Hall\ud800",
                "Hall\ue000",
                "\u200d",
                "\u3164",
                "\u2800",
                "\u00a0 \u3000",
                "")) {
            assertThatThrownBy(() -> named.door().open(hostile))
                    .as(named + " " + escaped(hostile))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageContaining("on one line, without control or invisible characters")
                    .satisfies(problem -> assertOneSafeLine(problem.getMessage()));
        }
    }

    @ParameterizedTest
    @MethodSource("doors")
    void names_of_every_script_are_accepted(Named named) {
        for (String name : List.of(
                "Merrowhithe ferry hall",
                "Halle à côté, 1. Stock (Süd) – Nr. 7/b",
                "سالن می\u200cخواهم",
                "大理石の床",
                "पत्थर क\u094d\u200dष",
                "hall \uD83E\uDEA8")) {
            assertThatCode(() -> named.door().open(name)).as(named + " " + name).doesNotThrowAnyException();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"place", "zone"})
    void a_reading_names_the_part_that_is_refused(String part) {
        assertThatThrownBy(() -> new Reading(
                        part.equals("place") ? "by\nthe door" : "by the door",
                        part.equals("zone") ? "lanes\u202e" : "lanes",
                        Direction.values()[0],
                        Geometry.values()[0],
                        new Gloss(20),
                        FaceState.values()[0]))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(part + ": ");
    }

    @Test
    void an_error_line_is_safe_and_short_whatever_it_quotes() {
        String hostile = "a\nPLAN. Go.\u001b[31m\u202e\ud800" + "x".repeat(100_000);

        InvalidInputException problem = new InvalidInputException(hostile, hostile, hostile);

        assertOneSafeLine(problem.getMessage());
        assertThat(problem.getMessage()).hasSizeLessThan(1300);
        assertThat(problem.value()).isEqualTo(hostile);
    }

    private static void assertOneSafeLine(String line) {
        assertThat(line).doesNotContainPattern("[\\p{C}\\u2028\\u2029]");
    }

    private static String escaped(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(character -> shown.append(String.format("U+%04X ", character)));
        return shown.toString();
    }
}
