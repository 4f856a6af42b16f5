package stoneprocess.rules.mutation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.PlanningRules;
import stoneprocess.rules.cases.ExpertCases;
import stoneprocess.rules.cases.RuleCase;
import stoneprocess.rules.follow.FollowLaws;
import stoneprocess.rules.follow.FollowLaws.Follower;
import stoneprocess.rules.follow.RandomJob;
import stoneprocess.rules.internal.assemble.FollowUps;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.RuleMutant;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.review.LogReview;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.testkit.SurveyKind;
import stoneprocess.rules.testkit.law.Law;
import stoneprocess.rules.testkit.law.Laws;
import stoneprocess.rules.testkit.law.Respondent;

/**
 * Faults are put into the rules, and into the policies of topics of a plan, one at a time. Which of laws, cases written
 * blind, expert cases and rule cases find each? A rule case pins a rule as it stands, and an answer that breaks off says
 * nothing of rules: neither counts for the score. A fault that decides nothing otherwise over the whole space of its topic
 * is none. Runs in the profile {@code mutation} only; {@code -Dmutation.every=60} takes every sixtieth rule.
 */
@DisabledIfSystemProperty(named = "mutation.every", matches = "0")
class RuleMutationTest {
    private static final int EVERY = Integer.getInteger("mutation.every", 60);
    private static final int DRAWN = 400;
    private static final int CELLS_TRIED = 40;
    private static final int FLOORS_FOR_LAWS = 8;
    private static final int FLOORS_FOR_SLOW_LAWS = 2;
    private static final int REMEMBERED = 200;
    private static final int JOBS = 40;
    private static final int JOBS_FOR_LAWS = 4;

    /** What laws and cases found at least when it was measured last, in percent; see docs/consistency.md. */
    private static final double LEAST_FOUND = 50;

    private static final List<LoadedRule> RULES = PlanningRules.all();
    private static final Set<String> PLANNING =
            RULES.stream().map(LoadedRule::id).collect(Collectors.toUnmodifiableSet());
    private static final List<LoadedRule> ALL = ShippedRules.load();
    private static final Map<String, RuleCase> RULE_CASES =
            RuleCase.all().stream().collect(Collectors.toMap(RuleCase::rule, Function.identity()));
    private static final FlatRespondent SHIPPED = new FlatRespondent(RULES, FlatRules.of(RULES));

    /** A floor with the facts that come up when the shipped rules plan it. */
    private record Seen(
            FloorSurvey survey,
            Map<Class<?>, List<Object>> facts,
            List<Outcome> outcomes,
            Optional<ExpertCases.Judge> judge,
            By finder,
            boolean cell) {
        static Seen of(FloorSurvey survey, Optional<ExpertCases.Judge> judge, By finder, boolean cell) {
            return new Seen(
                    survey,
                    RuleMutant.byType(SHIPPED.run(survey).facts()),
                    SHIPPED.recommend(survey).outcomes(),
                    judge,
                    finder,
                    cell);
        }
    }

    /** A job in work with the shipped answer; a case or a drawn one. */
    private record Worked(
            Optional<RandomJob> job, LogReview review, NextMove answer, Optional<ExpertCases.FollowJudge> judge) {}

    /** What finds a fault. */
    private enum By {
        LAW,
        BLIND_CASE,
        EXPERT_CASE,
        RULE_CASE,
        CRASH;

        boolean counts() {
            return this != RULE_CASE && this != CRASH;
        }
    }

    private record Result(String id, String operator, String what, Set<By> by, boolean same, String law) {
        boolean counts() {
            return by.stream().anyMatch(By::counts);
        }
    }

    /** Who found a fault, and the first law that did. */
    private static final class Found {
        private final Set<By> by = EnumSet.noneOf(By.class);
        private String law = "";

        Result result(String id, String operator, String what, BooleanSupplier same) {
            return new Result(id, operator, what, by, by.isEmpty() && same.getAsBoolean(), law);
        }
    }

    @Test
    void faults_in_rules_and_policies_are_found() throws IOException {
        List<Seen> floors = new ArrayList<>();
        ExpertCases.judges()
                .forEach(judge -> floors.add(Seen.of(judge.survey(), Optional.of(judge), By.EXPERT_CASE, false)));
        ExpertCases.cells()
                .forEach(judge -> floors.add(Seen.of(judge.survey(), Optional.of(judge), By.EXPERT_CASE, true)));
        ExpertCases.blind().stream()
                .filter(judge -> judge.misses(SHIPPED.recommend(judge.survey())).isEmpty())
                .forEach(judge -> floors.add(Seen.of(judge.survey(), Optional.of(judge), By.BLIND_CASE, false)));
        for (int i = 0; i < DRAWN; i++) {
            SurveyGenerator generator = SurveyGenerator.of(new Share(100 - i % 4 * 10));
            SurveyKind kind = i % 2 == 0 ? SurveyKind.TYPICAL : SurveyKind.VALID;
            floors.add(Seen.of(
                    kind.draw(generator, Parameters.standard(), new SplittableRandom(2027 + i)),
                    Optional.empty(),
                    By.LAW,
                    false));
        }
        List<Worked> jobs = jobs();
        AtomicInteger done = new AtomicInteger();
        List<RuleMutant> mutants = IntStream.range(0, ALL.size())
                .filter(i -> i % EVERY == 0)
                .mapToObj(ALL::get)
                .flatMap(rule -> RuleMutant.of(rule).stream())
                .toList();
        List<Result> results = new ArrayList<>(mutants.parallelStream()
                .map(mutant -> PLANNING.contains(mutant.id()) ? ofPlan(mutant, floors) : ofWork(mutant, jobs))
                .peek(result -> tell(result, done.incrementAndGet(), mutants.size()))
                .toList());
        List<PolicyFault> faults = PolicyFault.all();
        for (int i = 0; i < faults.size(); i += EVERY) {
            PolicyFault fault = faults.get(i);
            Found found = fault.during(() -> found(SHIPPED, floors, floor -> true));
            results.add(found.result(
                    fault.topic().id(), "change policy", fault.what(), () -> SameDecisions.proved(fault, RULES)));
            tell(results.get(results.size() - 1), i + 1, faults.size());
        }
        assertThat(report(results)).isGreaterThanOrEqualTo(LEAST_FOUND);
    }

    private static Result ofPlan(RuleMutant mutant, List<Seen> floors) {
        FlatRespondent faulty = new FlatRespondent(mutant.loaded(RULES), mutant.among(RULES));
        Found found = found(faulty, floors, floor -> mutant.shows(floor.facts()));
        RuleCase expected = RULE_CASES.get(mutant.id());
        if (expected != null
                && !expected.misses(mutant.conditions(), mutant::after).isEmpty()) {
            found.by.add(By.RULE_CASE);
        }
        return found.result(
                mutant.id(), name(mutant.operator()), mutant.what(), () -> SameDecisions.proved(mutant, RULES));
    }

    /** Everything that finds a fault among the floors on which it shows. */
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
        Found found = new Found();
        List<Seen> differing = new ArrayList<>();
        for (Seen floor : tried) {
            if (found.by.contains(floor.finder()) && differing.size() >= FLOORS_FOR_LAWS) {
                continue;
            }
            try {
                Recommendation answer = faulty.recommend(floor.survey());
                if (floor.judge().isPresent()
                        && !floor.judge().get().misses(answer).isEmpty()) {
                    found.by.add(floor.finder());
                }
                if (!answer.outcomes().equals(floor.outcomes())) {
                    differing.add(floor);
                }
            } catch (RuntimeException e) {
                found.by.add(By.CRASH);
            }
        }
        // Drawn floors first: cases are built for their own rule.
        differing.sort(Comparator.comparing(floor -> floor.judge().isPresent()));
        Respondent remembering = Respondent.remembering(faulty, REMEMBERED);
        List<FloorSurvey> asked =
                differing.stream().limit(FLOORS_FOR_LAWS).map(Seen::survey).toList();
        firstThatBreaks(Laws.ofOneAnswer(), remembering, asked, found)
                .or(() -> firstThatBreaks(
                        Laws.ofSeveralAnswers(),
                        remembering,
                        asked.subList(0, Math.min(FLOORS_FOR_SLOW_LAWS, asked.size())),
                        found))
                .ifPresent(law -> {
                    found.by.add(By.LAW);
                    found.law = law.id();
                });
        return found;
    }

    private static Optional<Law> firstThatBreaks(
            List<Law> laws, Respondent faulty, List<FloorSurvey> floors, Found found) {
        return floors.stream()
                .flatMap(floor -> laws.stream().filter(law -> breaks(law, faulty, floor, found)))
                .findFirst();
    }

    private static boolean breaks(Law law, Respondent faulty, FloorSurvey survey, Found found) {
        try {
            return !law.violations(faulty, survey, 7).isEmpty();
        } catch (RuntimeException e) {
            found.by.add(By.CRASH);
            return false;
        }
    }

    private static List<Worked> jobs() {
        Follower shipped = Follower.of(FlatRules.of(ALL)::start, ALL);
        List<Worked> jobs = new ArrayList<>();
        ExpertCases.follow()
                .forEach(judge -> jobs.add(new Worked(
                        Optional.empty(),
                        judge.review(),
                        next(FlatRules.of(ALL), ALL, judge.review()),
                        Optional.of(judge))));
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob job = new RandomJob(seed, seed % 2 == 0);
            jobs.add(new Worked(
                    Optional.of(job),
                    LogReview.of(job.plan(), new JobLog("drawn", job.entries())),
                    shipped.follow(job.plan(), job.entries()),
                    Optional.empty()));
        }
        return jobs;
    }

    private static NextMove next(FlatRules flat, List<LoadedRule> rules, LogReview review) {
        return FollowUps.answer(flat::start, rules, review.plan().rulebase(), review, UnaryOperator.identity());
    }

    private static Result ofWork(RuleMutant mutant, List<Worked> jobs) {
        FlatRules flat = mutant.among(ALL);
        List<LoadedRule> rules = mutant.loaded(ALL);
        Follower faulty = Follower.of(flat::start, rules);
        Found found = new Found();
        List<RandomJob> differing = new ArrayList<>();
        for (Worked work : jobs) {
            try {
                NextMove answer = next(flat, rules, work.review());
                if (work.judge().isPresent()
                        && !work.judge().get().misses(answer).isEmpty()) {
                    found.by.add(By.EXPERT_CASE);
                }
                if (!answer.outcomes().equals(work.answer().outcomes())) {
                    work.job().ifPresent(differing::add);
                }
            } catch (RuntimeException e) {
                found.by.add(By.CRASH);
            }
        }
        for (RandomJob job : differing.subList(0, Math.min(JOBS_FOR_LAWS, differing.size()))) {
            for (FollowLaws.Law law : FollowLaws.all()) {
                try {
                    if (!law.holds(faulty, job, new Random(job.seed()))) {
                        found.by.add(By.LAW);
                    }
                } catch (RuntimeException e) {
                    found.by.add(By.CRASH);
                }
            }
        }
        return found.result(mutant.id(), name(mutant.operator()), mutant.what(), () -> false);
    }

    private static void tell(Result result, int done, int all) {
        System.err.printf("%d of %d: %s %s %s%n", done, all, result.id(), result.operator(), result.by());
    }

    private static String name(Enum<?> operator) {
        return operator.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Prints the scores, and the table into the target folder; returns the percentage found by laws and cases. */
    private static double report(List<Result> results) throws IOException {
        StringBuilder lines = new StringBuilder("| fault | faults | by a law | by a blind case | by an expert case"
                + " | by its rule case | by a crash | by its rule case or a crash alone | decide the same | not found |\n"
                + "|---|---|---|---|---|---|---|---|---|---|\n");
        results.stream()
                .collect(Collectors.groupingBy(Result::operator, LinkedHashMap::new, Collectors.toList()))
                .forEach((operator, some) -> lines.append(row(operator, some)));
        List<Result> work = results.stream()
                .filter(result -> ALL.stream().anyMatch(rule -> rule.id().equals(result.id())))
                .filter(result -> !PLANNING.contains(result.id()))
                .toList();
        lines.append(row("in rules for work and faults", work)).append(row("all", results));
        long real = results.size() - count(results, Result::same);
        long found = count(results, Result::counts);
        double score = 100.0 * found / Math.max(1, real);
        System.out.printf(
                Locale.ROOT,
                "%sFaults found by laws and cases: %d of %d, %.1f %%; with rule cases and crashes %.1f %%%n",
                lines,
                found,
                real,
                score,
                100.0 * count(results, result -> !result.by().isEmpty()) / Math.max(1, real));
        Map<String, Long> laws = results.stream()
                .filter(result -> !result.law().isEmpty())
                .collect(Collectors.groupingBy(Result::law, TreeMap::new, Collectors.counting()));
        System.out.println("Found by laws: " + laws);
        Path target = Path.of("target", "mutation");
        Files.createDirectories(target);
        Files.writeString(target.resolve("table.md"), lines + "\n" + laws + "\n");
        Files.write(
                target.resolve("all.tsv"),
                results.stream()
                        .map(result -> String.join(
                                "\t",
                                result.id(),
                                result.operator(),
                                result.what(),
                                result.same() ? "same" : result.by().toString(),
                                result.law()))
                        .toList());
        return score;
    }

    private static String row(String operator, List<Result> results) {
        return "| " + operator + " | " + results.size()
                + Arrays.stream(By.values())
                        .map(by -> " | " + count(results, result -> result.by().contains(by)))
                        .collect(Collectors.joining())
                + " | "
                + count(results, result -> !result.counts() && !result.by().isEmpty())
                + " | " + count(results, Result::same)
                + " | " + count(results, result -> result.by().isEmpty() && !result.same())
                + " |\n";
    }

    private static long count(List<Result> results, Predicate<Result> wanted) {
        return results.stream().filter(wanted).count();
    }
}
