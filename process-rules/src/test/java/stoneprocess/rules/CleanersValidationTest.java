package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.Cleaner;
import stoneprocess.core.survey.DividerStrips;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;

/**
 * Which cleaner of every day is stopped on which stone, held against a table that was written from the chemistry of the
 * trade and not from the rules. Acid on carbonate and cement: DIFFICULT-MARBLE and GSA 0445502P; fluoride on silicates: GRANITE-POLISHING;
 * alkali on resin, bleach in pores: common practice, no source. Ammonia dulls a calcite polish when it is used day by
 * day: trade press on stone care, second-hand; dolomite, silicates and cement bear it. Where a kind of stone may fizz,
 * it counts as one that does. Acid is stopped on every floor whose joints nobody has found whole: CTIOA field report 4 has it
 * dissolve cement grout.
 */
class CleanersValidationTest {
    private static final Advisor ADVISOR = Advisor.standard();

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "calcite-marble, acid ammonia bleach fluoride",
        "dolomite-marble, acid bleach fluoride",
        "limestone, acid ammonia bleach fluoride",
        "travertine, acid ammonia bleach fluoride",
        "onyx, ammonia acid bleach fluoride",
        "grey-granite, acid fluoride",
        "basalt, acid bleach fluoride",
        "quartzite, acid ammonia bleach fluoride",
        "sandstone, acid ammonia bleach fluoride",
        "slate, acid ammonia bleach fluoride",
        "serpentine, acid ammonia bleach fluoride",
        "soapstone, acid bleach fluoride",
        "gypsum, acid bleach fluoride",
        "tuff, acid ammonia bleach fluoride",
        "magnesite, acid bleach fluoride",
        "encaustic-cement-tile, acid bleach fluoride",
        "breccia, acid alkaline bleach fluoride",
        "cement-terrazzo, acid bleach fluoride",
        "resin-terrazzo, acid alkaline bleach fluoride",
        "engineered-quartz, acid alkaline bleach fluoride",
        "engineered-marble, acid alkaline bleach fluoride",
        "concrete, acid fluoride",
        "porcelain, acid fluoride",
        "brick, acid fluoride",
    })
    void a_cleaner_that_attacks_the_stone_is_stopped_and_no_other(String stone, String harmful) {
        Set<String> stopped = new TreeSet<>();
        for (Cleaner cleaner : Cleaner.values()) {
            if (isStopped(FloorSurvey.builder("cleaned")
                    .set(SurveyField.STONE_NAME, stone)
                    .set(SurveyField.CLEANER, cleaner)
                    .build())) {
                stopped.add(cleaner.key());
            }
        }
        assertThat(stopped).containsExactlyInAnyOrder(harmful.split(" "));
    }

    @ParameterizedTest
    @EnumSource(Cleaner.class)
    void brass_strips_bear_a_neutral_cleaner_alone(Cleaner cleaner) {
        boolean stopped = isStopped(FloorSurvey.builder("strips")
                .set(SurveyField.STONE_NAME, "cement-terrazzo")
                .set(SurveyField.STRIPS, DividerStrips.BRASS)
                .set(SurveyField.CLEANER, cleaner)
                .build());
        assertThat(stopped).isEqualTo(cleaner != Cleaner.NEUTRAL);
    }

    @Test
    void the_table_knows_every_family() throws NoSuchMethodException {
        CsvSource table = CleanersValidationTest.class
                .getDeclaredMethod(
                        "a_cleaner_that_attacks_the_stone_is_stopped_and_no_other", String.class, String.class)
                .getAnnotation(CsvSource.class);
        Set<Family> known = Arrays.stream(table.value())
                .map(row -> row.split(",")[0])
                .flatMap(name -> StoneCatalogue.standard().get(name, "name").families().stream())
                .collect(Collectors.toSet());
        assertThat(known).containsExactlyInAnyOrder(Family.values());
    }

    private static boolean isStopped(FloorSurvey survey) {
        Recommendation answer = ADVISOR.recommend(survey);
        return answer.values(Topics.PREPARATION, Subject.FLOOR).contains(Task.STOP_CLEANER);
    }
}
