package stoneprocess.rules.testkit.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Floors;
import stoneprocess.rules.testkit.law.LawFloors.Drawn;

class LawsPropertyTest {
    private static final Path TABLE = Path.of("target", "law-meetings.tsv");

    /** How often a law was asked, met a floor of which it speaks, and was broken. */
    private static final class Tally {
        private int asked;
        private int met;
        private final List<Drawn> broken = new ArrayList<>();

        /** Asks again as long as it has to; a law of one answer costs next to nothing and is asked of every floor. */
        void ask(Law law, Drawn drawn) {
            if (met >= LawFloors.LEAST_MET && !Laws.ofOneAnswer().contains(law)) {
                return;
            }
            Respondent respondent = LawFloors.respondent(law);
            asked++;
            if (law.meets(respondent, drawn.floor(), drawn.seed())) {
                met++;
            }
            if (!law.violations(respondent, drawn.floor(), drawn.seed()).isEmpty()) {
                broken.add(drawn);
            }
        }

        String row(Law law) {
            return law.id() + "\t" + asked + "\t" + met + "\t" + broken.size();
        }
    }

    /** The table is printed, and kept as {@code target/law-meetings.tsv}. */
    @Test
    void every_law_meets_a_hundred_floors_and_holds() throws IOException {
        List<Law> laws = Laws.all();
        Map<Law, Tally> tallies = new HashMap<>();
        for (Law law : laws) {
            Tally tally = new Tally();
            tallies.put(law, tally);
            LawFloors.built(law).forEach(drawn -> {
                if (tally.met < LawFloors.LEAST_MET) {
                    tally.ask(law, drawn);
                }
            });
        }
        LawFloors.all().forEach(drawn -> laws.forEach(law -> tallies.get(law).ask(law, drawn)));

        List<String> table = new ArrayList<>(List.of("law\tasked\tmet\tbroken"));
        laws.forEach(law -> table.add(tallies.get(law).row(law)));
        Files.write(TABLE, table);
        table.forEach(System.out::println);
        for (Law law : laws) {
            Tally tally = tallies.get(law);
            assertThat(tally.broken)
                    .as(() -> law.prose() + "; smallest survey that breaks it: "
                            + law.smallestViolation(
                                    LawFloors.respondent(law),
                                    tally.broken.get(0).floor(),
                                    tally.broken.get(0).seed()))
                    .isEmpty();
            assertThat(tally.met).as("floors that " + law + " met").isGreaterThanOrEqualTo(LawFloors.LEAST_MET);
        }
    }

    /** Floors as a crew meets them, with each answer forgotten in turn. */
    @Test
    void all_laws_hold_on_the_fixture_floors() {
        List<FloorSurvey> floors = List.of(
                Floors.unremarkable().build(),
                Floors.calciteMarble().build(),
                Floors.wornGranite(),
                Floors.unknownStone());
        for (FloorSurvey floor : floors) {
            Laws.all().forEach(law -> holds(law, floor));
            holds(Laws.unknownIsNeverBolder(Integer.MAX_VALUE), floor);
        }
    }

    private static void holds(Law law, FloorSurvey survey) {
        assertThat(law.violations(Spoilt.SHIPPED, survey, 1))
                .as(() -> law.prose() + "; smallest survey that breaks it: "
                        + law.smallestViolation(Spoilt.SHIPPED, survey, 1))
                .isEmpty();
    }
}
