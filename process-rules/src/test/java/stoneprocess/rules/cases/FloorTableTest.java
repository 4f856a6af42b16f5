package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.DataSheet;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.IdentifiedBy;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WaterDrop;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;

/** What a restorer expects of every family, damage and finish; the table and its notation stand beside the cases. */
class FloorTableTest {
    private static final Path TABLE = Path.of("src/test/resources/expert-cases/floor-table.tsv");
    private static final Path FAMILIES = Path.of("src/test/resources/expert-cases/floor-table-families.tsv");
    private static final Advisor ADVISOR = Advisor.standard();
    private static final Map<String, Optional<Damage>> DAMAGES = damages();

    private record Cell(String family, String damage, Finish finish, String expected) {
        String place() {
            return family + " / " + damage + " / " + finish.key();
        }
    }

    @Test
    void every_cell_of_the_table_comes_out_as_expected() throws IOException {
        List<String> misses = new ArrayList<>();
        for (ExpertCases.Judge cell : judges()) {
            Recommendation answer = ADVISOR.recommend(cell.survey());
            cell.misses(answer).forEach(miss -> misses.add(cell.name() + ": " + miss));
            EveryStepTest.steps(answer).forEach(step -> EveryStepTest.requireComplete(step, cell.name()));
        }
        Map<String, Integer> shares = new TreeMap<>();
        cells().forEach(cell -> shares.merge(cell.expected().split("[:>]")[0], 1, Integer::sum));
        System.out.printf("Outcome table: %s%n", shares);
        assertThat(misses).isEmpty();
    }

    @Test
    void the_table_is_complete() throws IOException {
        List<String> places = cells().stream().map(Cell::place).toList();
        List<String> all = Arrays.stream(Family.values())
                .flatMap(family -> DAMAGES.keySet().stream()
                        .flatMap(damage -> Arrays.stream(Finish.values())
                                .map(finish -> family.key() + " / " + damage + " / " + finish.key())))
                .toList();
        assertThat(places).containsExactlyInAnyOrderElementsOf(all);
    }

    /** The floor of every cell. */
    static List<FloorSurvey> surveys() throws IOException {
        Map<String, List<String>> tests = tests();
        return cells().stream()
                .map(cell -> survey(cell, tests.get(cell.family())))
                .toList();
    }

    /** Every cell as a case. */
    static List<ExpertCases.Judge> judges() {
        try {
            Map<String, List<String>> tests = tests();
            return cells().stream()
                    .map(cell -> new ExpertCases.Judge(
                            "floor-table " + cell.place(), survey(cell, tests.get(cell.family())), answer -> {
                                String outcome = outcome(cell.expected(), answer);
                                return outcome.equals(cell.expected())
                                        ? List.of()
                                        : List.of("wanted " + cell.expected() + ", is " + outcome);
                            }))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, List<String>> tests() throws IOException {
        return rows(FAMILIES).stream().collect(Collectors.toMap(row -> row.get(0), Function.identity()));
    }

    private static String outcome(String expected, Recommendation answer) {
        boolean contradicted = answer.impasses().stream().map(Impasse::topic).anyMatch(topic -> topic == Topics.STONE);
        if (contradicted && answer.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.HOLD)) {
            return "contradiction";
        }
        if (answer.status() == Status.REFUSED || answer.status() == Status.PROVISIONAL) {
            // The cause that the table names must be among those that the verdict rests on.
            String kind = answer.status() == Status.REFUSED ? "refuse:" : "hold:";
            List<String> causes = answer.decision(Topics.VERDICT, Subject.FLOOR).orElseThrow().won().stream()
                    .map(Reason::facts)
                    .flatMap(List::stream)
                    .flatMap(FloorTableTest::fields)
                    .distinct()
                    .toList();
            return causes.stream()
                    .map(kind::concat)
                    .filter(expected::equals)
                    .findFirst()
                    .orElse(kind + causes);
        }
        if (answer.status() == Status.IMPASSE) {
            List<String> ways = answer.counterOffers().stream()
                    .map(offer ->
                            "impasse:" + offer.topic().id() + ":" + offer.kind().key())
                    .toList();
            return ways.contains(expected) ? expected : ways.toString();
        }
        if (answer.plan().isEmpty()) {
            return answer.status().key();
        }
        List<String> field = grades(answer, Subject.OPEN_FIELD);
        List<String> repair = grades(answer, Subject.LOCAL_REPAIR);
        if (field.isEmpty() && repair.isEmpty()) {
            return answer.plan().get().tracks().isEmpty() ? "clean" : "edges";
        }
        if (field.isEmpty()) {
            return "repair>" + last(repair);
        }
        String outcome = "go:"
                + answer.values(Topics.FIRST_CUT, Subject.OPEN_FIELD).get(0).key() + ">" + last(field);
        // A path of one grade is the same whatever its first cut is called.
        boolean sameGrade = field.size() == 1 && expected.startsWith("go:") && expected.endsWith(">" + last(field));
        return sameGrade ? expected : outcome;
    }

    /** The fields of a fact; a trait of the stone comes from its name. */
    private static Stream<String> fields(MatchedFact fact) {
        return fact.topics().contains(Topics.STONE)
                ? Stream.concat(fact.fields().stream(), Stream.of(SurveyField.STONE_NAME.name()))
                : fact.fields().stream();
    }

    private static List<String> grades(Recommendation answer, Subject track) {
        return answer.plan().stream()
                .flatMap(plan -> plan.tracks().stream())
                .filter(planned -> new Subject.OfTrack(planned.kind()).equals(track))
                .flatMap(planned -> planned.steps().stream())
                .map(step -> step.grade().key())
                .toList();
    }

    private static String last(List<String> grades) {
        return grades.get(grades.size() - 1).replace("resin-", "");
    }

    private static FloorSurvey survey(Cell cell, List<String> tests) {
        boolean otherFinish = cell.damage().equals("other-finish");
        Finish other = cell.finish() == Finish.HONE ? Finish.POLISH : Finish.HONE;
        boolean etched = cell.damage().contains("etches");
        Damage[] found = DAMAGES.get(cell.damage()).stream().toArray(Damage[]::new);
        FloorSurvey.Builder floor = Floors.damaged(found);
        // Without its data sheet an agglomerate is held, whatever else is known.
        switch (tests.get(0)) {
            case "engineered-quartz" -> floor.set(SurveyField.DATA_SHEET, DataSheet.HIGH_SILICA);
            case "engineered-marble" -> floor.set(SurveyField.DATA_SHEET, DataSheet.LOW_SILICA);
            default -> {}
        }
        return floor.set(SurveyField.STONE_NAME, tests.get(1))
                .set(SurveyField.IDENTIFIED_BY, IdentifiedBy.PETROGRAPHER)
                .set(SurveyField.ACID_DROP, Term.parse(AcidDrop.class, tests.get(etched ? 3 : 2), "acid-drop"))
                .set(SurveyField.SCRIBER, Term.parse(ScriberTest.class, tests.get(4), "scriber"))
                .set(SurveyField.WATER_DROP, Term.parse(WaterDrop.class, tests.get(5), "water-drop"))
                .set(SurveyField.FINISH_NOW, otherFinish ? other : cell.finish())
                .set(SurveyField.GOAL, Goal.valueOf(cell.finish().name()))
                .build();
    }

    private static Map<String, Optional<Damage>> damages() {
        Map<String, Optional<Damage>> damages = new TreeMap<>();
        damages.put("none", Optional.empty());
        damages.put("other-finish", Optional.empty());
        damages.put("dull", Optional.of(Damage.seen(DamageKind.WEAR, WearClass.DULL, percent(80))));
        for (ScratchClass look : ScratchClass.values()) {
            if (look != ScratchClass.NONE) {
                damages.put("scratches-" + look.key(), Optional.of(Floors.scratched(look, 20)));
            }
        }
        damages.put("few-scratches-felt-by-coin", Optional.of(Floors.scratched(ScratchClass.FELT_BY_COIN, 1)));
        for (EtchClass look : EtchClass.values()) {
            if (look != EtchClass.NONE) {
                damages.put("etches-" + look.key(), Optional.of(Floors.etched(look, 20)));
            }
        }
        damages.put("few-etches-gloss-lost", Optional.of(Floors.etched(EtchClass.GLOSS_LOST, 1)));
        damages.put("lippage-slight", Optional.of(Floors.lipped(1.2, 30)));
        damages.put("lippage-moderate", Optional.of(Floors.lipped(2, 30)));
        damages.put("lippage-high", Optional.of(Floors.lipped(4, 30)));
        damages.put("few-lippage-high", Optional.of(Floors.lipped(4, 2)));
        damages.put(
                "wavy", Optional.of(Damage.measured(DamageKind.WAVINESS, Length.of(4, Unit.MILLIMETRE), percent(100))));
        damages.put("cracks", Optional.of(Damage.seen(DamageKind.CRACKS, Presence.PRESENT, percent(1))));
        damages.put("salts", Optional.of(Damage.seen(DamageKind.SALTS, Presence.PRESENT, percent(5))));
        return damages;
    }

    private static Share percent(double value) {
        return Share.of(value, Unit.PERCENT);
    }

    private static List<Cell> cells() throws IOException {
        List<Cell> cells = new ArrayList<>();
        for (List<String> row : rows(TABLE)) {
            for (Finish finish : Finish.values()) {
                cells.add(new Cell(row.get(0), row.get(1), finish, row.get(2 + finish.ordinal())));
            }
        }
        return cells;
    }

    /** The rows without the heading and the comments. */
    private static List<List<String>> rows(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .skip(1)
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> List.of(line.split("\t")))
                .toList();
    }
}
