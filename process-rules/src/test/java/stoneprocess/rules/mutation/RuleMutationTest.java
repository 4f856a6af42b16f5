package stoneprocess.rules.mutation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.cases.ExpertCases;
import stoneprocess.rules.decide.Topics;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.RuleMutant;
import stoneprocess.rules.internal.engine.RuleMutant.Operator;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.verify.Law;
import stoneprocess.rules.verify.Laws;

/**
 * Faults are put into the rules that plan a floor, one at a time: do the expert cases or the laws find them? A mutant
 * that decides nothing otherwise over the whole space of its topic is none. Runs in the profile
 * {@code mutation} only; {@code -Dmutation.every=60} takes every sixtieth rule.
 */
@DisabledIfSystemProperty(named = "mutation.every", matches = "0")
class RuleMutationTest {
    private static final int EVERY = Integer.getInteger("mutation.every", 60);
    private static final int DRAWN = 400;
    private static final int FLOORS_FOR_LAWS = 8;
    private static final List<LoadedRule> RULES = ShippedRules.load().stream()
            .filter(rule -> Program.RECOMMEND
                    .stages()
                    .contains(Topics.named(rule.card().topic()).stage()))
            .toList();
    private static final FlatRespondent SHIPPED = new FlatRespondent(RULES, FlatRules.of(RULES));

    /** A floor with the facts that come up when the shipped rules plan it. */
    private record Seen(FloorSurvey survey, List<Object> facts, Optional<ExpertCases.Judge> judge) {
        static Seen of(FloorSurvey survey, Optional<ExpertCases.Judge> judge) {
            return new Seen(survey, SHIPPED.run(survey).facts(), judge);
        }
    }

    private enum Fate {
        CASE,
        LAW,
        SAME,
        SURVIVED,
        UNTOUCHED
    }

    private record Result(RuleMutant mutant, Fate fate, String by) {}

    @Test
    void faults_in_rules_are_found() throws IOException {
        List<Seen> floors = new ArrayList<>();
        for (ExpertCases.Judge judge : ExpertCases.judges()) {
            floors.add(Seen.of(judge.survey(), Optional.of(judge)));
        }
        for (int i = 0; i < DRAWN; i++) {
            floors.add(Seen.of(
                    SurveyGenerator.of(new Share(100 - i % 4 * 10)).draw(new SplittableRandom(2027 + i)),
                    Optional.empty()));
        }
        List<RuleMutant> mutants = IntStream.range(0, RULES.size())
                .filter(i -> i % EVERY == 0)
                .mapToObj(RULES::get)
                .flatMap(rule -> RuleMutant.of(rule).stream())
                .toList();
        List<Result> results =
                mutants.parallelStream().map(mutant -> result(mutant, floors)).toList();
        double score = report(results);
        assertThat(score).isGreaterThanOrEqualTo(EVERY == 1 ? 60 : 40);
    }

    private static Result result(RuleMutant mutant, List<Seen> floors) {
        List<Seen> touched = floors.stream()
                .filter(floor -> !mutant.before(floor.facts()).equals(mutant.after(floor.facts())))
                .toList();
        FlatRespondent faulty = new FlatRespondent(mutant.loaded(RULES), mutant.among(RULES));
        List<Seen> differing = new ArrayList<>();
        for (Seen floor : touched) {
            Recommendation answer;
            try {
                answer = faulty.recommend(floor.survey());
            } catch (RuntimeException e) {
                return new Result(mutant, Fate.CASE, "no answer: " + e.getMessage());
            }
            if (floor.judge().isPresent()
                    && !floor.judge().orElseThrow().misses(answer).isEmpty()) {
                return new Result(mutant, Fate.CASE, floor.judge().orElseThrow().name());
            }
            if (!answer.outcomes().equals(SHIPPED.recommend(floor.survey()).outcomes())) {
                differing.add(floor);
            }
        }
        for (Seen floor : differing.subList(0, Math.min(FLOORS_FOR_LAWS, differing.size()))) {
            for (Law law : Laws.all()) {
                if (!law.violations(faulty, floor.survey(), 7).isEmpty()) {
                    return new Result(mutant, Fate.LAW, law.id());
                }
            }
        }
        if (SameDecisions.proved(mutant, RULES)) {
            return new Result(mutant, Fate.SAME, "");
        }
        return new Result(mutant, differing.isEmpty() ? Fate.UNTOUCHED : Fate.SURVIVED, "");
    }

    /** Prints the scores, and the table into the target folder; returns the percentage found. */
    private static double report(List<Result> results) throws IOException {
        Map<Operator, Map<Fate, Long>> table = new EnumMap<>(Operator.class);
        for (Operator operator : Operator.values()) {
            table.put(
                    operator,
                    results.stream()
                            .filter(result -> result.mutant().operator() == operator)
                            .collect(Collectors.groupingBy(
                                    Result::fate, () -> new EnumMap<>(Fate.class), Collectors.counting())));
        }
        StringBuilder lines = new StringBuilder("| fault | mutants | found by a case | by a law | decide the same |"
                + " not found | no floor tells |\n|---|---|---|---|---|---|---|\n");
        table.forEach((operator, fates) -> lines.append("| ")
                .append(operator.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .append(" | ")
                .append(fates.values().stream().mapToLong(Long::longValue).sum())
                .append(Stream.of(Fate.values())
                        .map(fate -> " | " + fates.getOrDefault(fate, 0L))
                        .collect(Collectors.joining()))
                .append(" |\n"));
        long same = count(results, Fate.SAME);
        long found = count(results, Fate.CASE) + count(results, Fate.LAW);
        double score = 100.0 * found / Math.max(1, results.size() - same);
        System.out.printf("%sFaults in rules found: %d of %d, %.1f %%%n", lines, found, results.size() - same, score);
        Map<String, Long> laws = results.stream()
                .filter(result -> result.fate() == Fate.LAW)
                .collect(Collectors.groupingBy(Result::by, TreeMap::new, Collectors.counting()));
        System.out.println("Found by laws: " + laws);
        List<String> survivors = results.stream()
                .filter(result -> result.fate() == Fate.SURVIVED || result.fate() == Fate.UNTOUCHED)
                .map(result -> result.mutant().id() + "\t" + result.mutant().operator() + "\t"
                        + result.mutant().what() + "\t" + result.fate())
                .toList();
        Path target = Path.of("target", "mutation");
        Files.createDirectories(target);
        Files.writeString(target.resolve("table.md"), lines + "\n" + laws + "\n");
        Files.write(target.resolve("not-found.tsv"), survivors);
        return score;
    }

    private static long count(List<Result> results, Fate fate) {
        return results.stream().filter(result -> result.fate() == fate).count();
    }
}
