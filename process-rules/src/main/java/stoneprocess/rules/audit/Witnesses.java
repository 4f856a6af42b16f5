package stoneprocess.rules.audit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.Smallest;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.space.Unremarkable;

/**
 * Searches a survey whose answer shows a finding: from an unremarkable floor and drawn ones, an answer or two are drawn anew as long as no
 * fewer of the conditions are met, those that the unmet ones are read from first. What is found is made as small as it
 * can be and is always borne out by the answers themselves.
 */
final class Witnesses {
    private static final int STARTS = 12;
    private static final int STEPS = 120;
    private static final SurveyGenerator DRAWN = SurveyGenerator.of(new Share(100));

    private final Function<FloorSurvey, Recommendation> answers;
    private final RuleMeanings rules;
    private final Parameters parameters;
    private final long seed;

    Witnesses(Function<FloorSurvey, Recommendation> answers, RuleMeanings rules, Parameters parameters, long seed) {
        this.answers = answers;
        this.rules = rules;
        this.parameters = parameters;
        this.seed = seed;
    }

    /** The finding with a survey that shows it, if one was found. */
    AuditFinding show(AuditFinding finding) {
        boolean surveyed = finding.topic()
                .filter(topic -> Program.RECOMMEND.stages().contains(topic.stage()))
                .isPresent();
        if (!surveyed || !showsInAnswers(finding)) {
            return finding;
        }
        SplittableRandom random = new SplittableRandom(seed);
        for (int start = 0; start < STARTS; start++) {
            Optional<FloorSurvey> found =
                    climb(finding, start == 0 ? Unremarkable.floor().build() : DRAWN.draw(random), random);
            if (found.isPresent()) {
                return finding.shownBy(small(finding, found.get()));
            }
        }
        return finding;
    }

    private static boolean showsInAnswers(AuditFinding finding) {
        return switch (finding.kind()) {
            case DUPLICATE, SUBSUMED, ALWAYS_OUTWEIGHED, GAP, UNDECLARED_CONFLICT, IMPASSE_WITHOUT_OFFER -> true;
            default -> false;
        };
    }

    private Optional<FloorSurvey> climb(AuditFinding finding, FloorSurvey from, SplittableRandom random) {
        List<RuleMeaning> wanted = wanted(finding);
        FloorSurvey best = from;
        Run run = run(finding, best);
        for (int step = 0; step < STEPS; step++) {
            if (shows(finding, run.outcomes()) && shows(finding, answers.apply(best))) {
                return Optional.of(best);
            }
            FloorSurvey next = DRAWN.redraw(best, names(wanted, run, random), random);
            Run tried = run(finding, next);
            if (unmet(wanted, tried) <= unmet(wanted, run)) {
                best = next;
                run = tried;
            }
        }
        return Optional.empty();
    }

    private List<RuleMeaning> wanted(AuditFinding finding) {
        return rules.all().stream()
                .filter(rule -> finding.rules().contains(rule.id()))
                .toList();
    }

    private boolean mayFire(List<RuleMeaning> wanted, FloorSurvey survey) {
        Situation situation = situation(survey);
        return wanted.stream().allMatch(rule -> rule.rule().mayFireOn(situation));
    }

    private Situation situation(FloorSurvey survey) {
        return new Situation(survey, parameters, GritSequence.standard());
    }

    /** As far as the topic of the finding, by the rules on which it rests and without an engine. */
    private Run run(AuditFinding finding, FloorSurvey survey) {
        Situation situation = situation(survey);
        Topic<?> topic = finding.topic().orElseThrow();
        FlatRules flat = rules.reach().upTo(topic);
        return Runner.runTo(topic.stage(), flat, situation, Facts.after(Optional.empty(), situation, flat::reads));
    }

    private static long unmet(List<RuleMeaning> wanted, Run run) {
        return unmetTypes(wanted, run).count();
    }

    private static Stream<Class<?>> unmetTypes(List<RuleMeaning> wanted, Run run) {
        return wanted.stream()
                .flatMap(rule -> rule.conditions().stream())
                .filter(condition -> run.facts().stream().noneMatch(condition::matches))
                .map(condition -> condition.type());
    }

    private static Set<String> names(List<RuleMeaning> wanted, Run run, SplittableRandom random) {
        List<String> near = unmetTypes(wanted, run)
                .flatMap(type -> Facts.reads(type).stream())
                .filter(Forgetting.names()::contains)
                .distinct()
                .toList();
        List<String> all = Forgetting.names();
        Set<String> names = new LinkedHashSet<>();
        if (!near.isEmpty() && random.nextInt(3) > 0) {
            names.add(near.get(random.nextInt(near.size())));
        } else {
            names.add(all.get(random.nextInt(all.size())));
        }
        if (random.nextBoolean()) {
            names.add(all.get(random.nextInt(all.size())));
        }
        return names;
    }

    private static boolean shows(AuditFinding finding, List<Outcome> outcomes) {
        return outcomes.stream()
                .filter(outcome -> Optional.of(outcome.topic()).equals(finding.topic()))
                .anyMatch(outcome -> shows(finding, outcome));
    }

    private static boolean shows(AuditFinding finding, Outcome outcome) {
        boolean impasse = outcome instanceof Impasse<?>;
        Set<String> speaking = outcome.reasons().stream().map(Reason::rule).collect(Collectors.toSet());
        return switch (finding.kind()) {
            case GAP, UNDECLARED_CONFLICT -> impasse && speaking.containsAll(finding.rules());
            case IMPASSE_WITHOUT_OFFER -> impasse;
            default -> speaking.containsAll(finding.rules());
        };
    }

    private static boolean shows(AuditFinding finding, Recommendation answer) {
        return switch (finding.kind()) {
            case IMPASSE_WITHOUT_OFFER ->
                shows(finding, answer.outcomes())
                        && answer.counterOffers().stream()
                                .filter(offer -> Optional.of(offer.topic()).equals(finding.topic()))
                                .allMatch(offer -> offer.kind() == OfferKind.LEAVE_IT);
            default -> shows(finding, answer.outcomes());
        };
    }

    /** Made small by the rules read without an engine; what the engine does not bear out is left as it was. */
    private FloorSurvey small(AuditFinding finding, FloorSurvey survey) {
        boolean byOffers = finding.kind() == FindingKind.IMPASSE_WITHOUT_OFFER;
        List<RuleMeaning> wanted = wanted(finding);
        FloorSurvey small = Smallest.of(
                survey,
                less -> byOffers
                        ? shows(finding, answers.apply(less))
                        : mayFire(wanted, less)
                                && shows(finding, run(finding, less).outcomes()));
        return shows(finding, answers.apply(small)) ? small : survey;
    }
}
