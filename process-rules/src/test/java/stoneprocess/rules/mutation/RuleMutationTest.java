package stoneprocess.rules.mutation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.PlanningRules;
import stoneprocess.rules.cases.ExpertCases;
import stoneprocess.rules.cases.RuleCase;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.RuleMutant;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.testkit.law.Law;
import stoneprocess.rules.testkit.law.Laws;

/**
 * Faults are put into the rules that plan a floor and into the policies of their topics, one at a time: do the expert
 * cases, the outcome table, the laws or the rule cases find them, in this order? A fault that decides nothing otherwise
 * over the whole space of its topic is none. Runs in the profile {@code mutation} only; {@code -Dmutation.every=60} takes
 * every sixtieth rule.
 */
@DisabledIfSystemProperty(named = "mutation.every", matches = "0")
class RuleMutationTest {
    private static final int EVERY = Integer.getInteger("mutation.every", 60);
    private static final int DRAWN = 400;
    private static final int CELLS_TRIED = 40;
    private static final int FLOORS_FOR_LAWS = 8;
    private static final int FLOORS_FOR_EVERY_LAW = 3;
    private static final List<LoadedRule> RULES = PlanningRules.all();
    private static final Map<String, RuleCase> RULE_CASES =
            RuleCase.all().stream().collect(Collectors.toMap(RuleCase::rule, Function.identity()));
    private static final FlatRespondent SHIPPED = new FlatRespondent(RULES, FlatRules.of(RULES));

    /** Laws that find a fault in a rule, whether a case finds it too or not. */
    private static final Set<String> FINDING_LAWS = new ConcurrentSkipListSet<>();

    /** A floor with the facts that come up when the shipped rules plan it. */
    private record Seen(
            FloorSurvey survey,
            Map<Class<?>, List<Object>> facts,
            List<Outcome> outcomes,
            Optional<ExpertCases.Judge> judge,
            boolean cell) {
        static Seen of(FloorSurvey survey, Optional<ExpertCases.Judge> judge, boolean cell) {
            return new Seen(
                    survey,
                    RuleMutant.byType(SHIPPED.run(survey).facts()),
                    SHIPPED.recommend(survey).outcomes(),
                    judge,
                    cell);
        }
    }

    private enum Fate {
        CASE,
        TABLE,
        LAW,
        RULE_CASE,
        SAME,
        SURVIVED
    }

    private record Result(String id, String operator, String what, Fate fate, String by) {}

    @Test
    void faults_in_rules_and_policies_are_found() throws IOException {
        List<Seen> floors = new ArrayList<>();
        ExpertCases.judges().forEach(judge -> floors.add(Seen.of(judge.survey(), Optional.of(judge), false)));
        ExpertCases.cells().forEach(judge -> floors.add(Seen.of(judge.survey(), Optional.of(judge), true)));
        for (int i = 0; i < DRAWN; i++) {
            floors.add(Seen.of(
                    SurveyGenerator.of(new Share(100 - i % 4 * 10)).draw(new SplittableRandom(2027 + i)),
                    Optional.empty(),
                    false));
        }
        List<RuleMutant> mutants = IntStream.range(0, RULES.size())
                .filter(i -> i % EVERY == 0)
                .mapToObj(RULES::get)
                .flatMap(rule -> RuleMutant.of(rule).stream())
                .toList();
        AtomicInteger done = new AtomicInteger();
        List<Result> results = new ArrayList<>(mutants.parallelStream()
                .map(mutant -> result(mutant, floors))
                .peek(result -> tell(result, done.incrementAndGet(), mutants.size()))
                .toList());
        List<PolicyFault> faults = PolicyFault.all();
        for (int i = 0; i < faults.size(); i += EVERY) {
            results.add(result(faults.get(i), floors));
            tell(results.get(results.size() - 1), i + 1, faults.size());
        }
        double score = report(results);
        assertThat(score).isGreaterThanOrEqualTo(95);
    }

    private static Result result(RuleMutant mutant, List<Seen> floors) {
        FlatRespondent faulty = new FlatRespondent(mutant.loaded(RULES), mutant.among(RULES));
        askEveryLaw(faulty, floors, floor -> mutant.shows(floor.facts()));
        Found found = found(faulty, floors, floor -> mutant.shows(floor.facts()));
        if (found.fate() == Fate.SURVIVED) {
            RuleCase expected = RULE_CASES.get(mutant.id());
            if (expected != null
                    && !expected.misses(mutant.conditions(), mutant::after).isEmpty()) {
                found = new Found(Fate.RULE_CASE, "");
            } else if (SameDecisions.proved(mutant, RULES)) {
                found = new Found(Fate.SAME, "");
            }
        }
        return new Result(mutant.id(), name(mutant.operator()), mutant.what(), found.fate(), found.by());
    }

    private static Result result(PolicyFault fault, List<Seen> floors) {
        String what = fault.what();
        Found found = fault.during(() -> found(SHIPPED, floors, floor -> true));
        if (found.fate() == Fate.SURVIVED && SameDecisions.proved(fault, RULES)) {
            found = new Found(Fate.SAME, "");
        }
        return new Result(fault.topic().id(), "change policy", what, found.fate(), found.by());
    }

    private record Found(Fate fate, String by) {}

    /** What finds a fault first. */
    private static Found found(FlatRespondent faulty, List<Seen> floors, Predicate<Seen> shows) {
        List<Seen> touched = floors.stream().filter(shows).toList();
        List<Seen> cells = touched.stream().filter(Seen::cell).toList();
        int apart = Math.max(1, cells.size() / CELLS_TRIED);
        List<Seen> tried =
                new ArrayList<>(touched.stream().filter(floor -> !floor.cell()).toList());
        IntStream.range(0, cells.size())
                .filter(i -> i % apart == 0)
                .mapToObj(cells::get)
                .forEach(tried::add);
        List<Seen> differing = new ArrayList<>();
        for (Seen floor : tried) {
            Recommendation answer;
            try {
                answer = faulty.recommend(floor.survey());
            } catch (RuntimeException e) {
                return new Found(Fate.CASE, "no answer: " + e.getMessage());
            }
            if (floor.judge().isPresent() && !floor.judge().get().misses(answer).isEmpty()) {
                return new Found(
                        floor.cell() ? Fate.TABLE : Fate.CASE,
                        floor.judge().get().name());
            }
            if (!answer.outcomes().equals(floor.outcomes())) {
                differing.add(floor);
            }
        }
        for (Seen floor : differing.subList(0, Math.min(FLOORS_FOR_LAWS, differing.size()))) {
            for (Law law : Laws.all()) {
                if (breaks(law, faulty, floor.survey())) {
                    return new Found(Fate.LAW, law.id());
                }
            }
        }
        return new Found(Fate.SURVIVED, differing.isEmpty() ? "no floor tells" : "");
    }

    /** On the first floors that the fault answers otherwise; a law that has found a fault is not asked again. */
    private static void askEveryLaw(FlatRespondent faulty, List<Seen> floors, Predicate<Seen> shows) {
        floors.stream()
                .filter(floor -> !floor.cell())
                .filter(shows)
                .filter(floor -> answersOtherwise(faulty, floor))
                .limit(FLOORS_FOR_EVERY_LAW)
                .forEach(floor -> Laws.all().stream()
                        .filter(law -> !FINDING_LAWS.contains(law.id()))
                        .filter(law -> finds(law, faulty, floor.survey()))
                        .forEach(law -> FINDING_LAWS.add(law.id())));
    }

    /** False for a fault that leaves no answer to judge. */
    private static boolean answersOtherwise(FlatRespondent faulty, Seen floor) {
        try {
            return !faulty.recommend(floor.survey()).outcomes().equals(floor.outcomes());
        } catch (RuntimeException e) {
            return false;
        }
    }

    /** True when the law judges the answer and finds it wrong. */
    private static boolean finds(Law law, FlatRespondent faulty, FloorSurvey survey) {
        try {
            return !law.violations(faulty, survey, 7).isEmpty();
        } catch (RuntimeException e) {
            return false;
        }
    }

    /** A law that cannot even judge an answer fails its test as well. */
    private static boolean breaks(Law law, FlatRespondent faulty, FloorSurvey survey) {
        try {
            return !law.violations(faulty, survey, 7).isEmpty();
        } catch (RuntimeException e) {
            return true;
        }
    }

    private static void tell(Result result, int done, int all) {
        System.err.printf("%d of %d: %s %s %s%n", done, all, result.id(), result.operator(), result.fate());
    }

    private static String name(Enum<?> operator) {
        return operator.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Prints the scores, and the table into the target folder; returns the percentage found. */
    private static double report(List<Result> results) throws IOException {
        StringBuilder lines =
                new StringBuilder("| fault | faults | found by an expert case | by the outcome table | by a law"
                        + " | by its rule case | decide the same | not found |\n|---|---|---|---|---|---|---|---|\n");
        results.stream()
                .collect(Collectors.groupingBy(Result::operator, LinkedHashMap::new, Collectors.toList()))
                .forEach((operator, some) -> lines.append(row(operator, some)));
        lines.append(row("all", results));
        long real = results.size() - count(results, Fate.SAME);
        long found = real - count(results, Fate.SURVIVED);
        double score = 100.0 * found / Math.max(1, real);
        System.out.printf(
                "%sFaults in rules found: %d of %d, %.1f %%; without rule cases %.1f %%%n",
                lines, found, real, score, 100.0 * (found - count(results, Fate.RULE_CASE)) / Math.max(1, real));
        Map<String, Long> laws = results.stream()
                .filter(result -> result.fate() == Fate.LAW)
                .collect(Collectors.groupingBy(Result::by, TreeMap::new, Collectors.counting()));
        System.out.println("Found by laws: " + laws);
        List<String> silent = Laws.all().stream()
                .map(Law::id)
                .filter(law -> !FINDING_LAWS.contains(law))
                .toList();
        System.out.printf(
                "Laws that find a fault in a rule: %d of %d, not %s%n",
                FINDING_LAWS.size(), Laws.all().size(), silent);
        Path target = Path.of("target", "mutation");
        Files.createDirectories(target);
        Files.writeString(target.resolve("table.md"), lines + "\n" + laws + "\n");
        Files.write(
                target.resolve("all.tsv"),
                results.stream()
                        .map(result -> String.join(
                                "\t", result.id(), result.operator(), result.what(), name(result.fate()), result.by()))
                        .toList());
        return score;
    }

    private static String row(String operator, List<Result> results) {
        return "| " + operator + " | " + results.size()
                + Arrays.stream(Fate.values())
                        .map(fate -> " | " + count(results, fate))
                        .collect(Collectors.joining())
                + " |\n";
    }

    private static long count(List<Result> results, Fate fate) {
        return results.stream().filter(result -> result.fate() == fate).count();
    }
}
