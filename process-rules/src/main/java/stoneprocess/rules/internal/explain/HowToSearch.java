package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.internal.meaning.Saying;
import stoneprocess.rules.internal.run.Run;

/**
 * Finds the smallest changes that give a wanted value. Tries every single change and every pair of {@link Candidates},
 * but for those that cannot help: as long as the value is not reached there are facts of which one has to change first,
 * such as those of a rule that excludes it, and a change that touches no field behind them leaves the value unreached.
 */
public final class HowToSearch {
    /** What one question may try; shipped samples and floors of three zones stay far below. */
    private static final int STEPS = 100_000;

    /** Answers that a survey refuses together; a change that clashes with one of these may hold with another change. */
    private static final Set<String> CLASHING = Set.of(
            SurveyField.SETTING.name(),
            SurveyField.FACE.name(),
            SurveyField.SCRIBER.name(),
            SurveyField.ACID_DROP.name());

    private final RuleMeanings meanings;
    private final RuleReach reach;
    private final Topic<?> topic;
    private final Subject subject;
    private final String wanted;
    private final SurveyedFloor floor;
    private final FlatRules rules;
    private final Candidates candidates;
    private final SearchBudget budget;

    /** The rules of the topic that may help the value to be the outcome for the subject. */
    private final List<RuleMeaning> helping;

    /** Whether the value is never the outcome unless one of these speaks. */
    private final boolean mustBeAsked;

    /** The rules that may help, and those that decide what they read. */
    private final FlatRules ruledBefore;

    private final Optional<Stage> decidedBefore;

    private final Map<List<Object>, Boolean> mayBeAsked = new HashMap<>();
    private final Map<List<Object>, Boolean> met = new HashMap<>();
    private final Map<Change, Integer> places = new IdentityHashMap<>();

    HowToSearch(
            RuleMeanings meanings,
            Topic<?> topic,
            Subject subject,
            String wanted,
            SurveyedFloor floor,
            SearchBudget budget) {
        this.meanings = meanings;
        this.reach = meanings.reach();
        this.topic = topic;
        this.subject = subject;
        this.wanted = wanted;
        this.floor = floor;
        this.rules = reach.upTo(topic);
        this.candidates = new Candidates(floor, reach);
        this.budget = budget;
        Optional<Choice<?>> choice = topic instanceof Choice<?> asked ? Optional.of(asked) : Optional.empty();
        this.helping = choice.stream()
                .flatMap(asked -> meanings.of(topic).stream()
                        .filter(rule -> Policy.of(asked).mayHelp(asked, rule.values(), asked.value(wanted)))
                        .filter(rule -> rule.conditions().stream().allMatch(this::mayConcern)))
                .toList();
        this.ruledBefore = reach.before(helping);
        this.decidedBefore = reach.lastBefore(helping);
        this.mustBeAsked = choice.stream().anyMatch(asked -> Policy.of(asked).mustBeAsked(asked, asked.value(wanted)));
    }

    /** True for a value that no rule asks for, where the first of the domain stands instead and no rule excludes that. */
    private boolean isNeverSaid() {
        if (!(topic instanceof Choice<?> choice) || choice.policy() != PolicyKind.ONE) {
            return false;
        }
        Term first = choice.domain().get(0);
        Term value = choice.value(wanted);
        return !value.equals(first)
                && meanings.of(topic).stream()
                        .flatMap(rule -> rule.sayings().stream())
                        .map(Saying::says)
                        .noneMatch(
                                said -> said.values().contains(said.kind() == ContributionKind.VETO ? first : value));
    }

    /** False for what no survey makes of the step that was asked about. */
    private boolean mayConcern(FactPattern condition) {
        return condition.type() != Step.class
                || !(subject instanceof Subject.OfStep asked)
                || stepsOf(asked).anyMatch(condition::matches);
    }

    /** All that a survey can make of a step: its track and grit stay what they are, and only metal is worked dry. */
    private Stream<Object> stepsOf(Subject.OfStep asked) {
        AbrasiveGrade grade = floor.sequence().get(asked.grade(), topic.id() + ".subject");
        Step like = Facts.steps(asked.track(), List.of(grade), WorkMethod.WET, floor.parameters())
                .get(0);
        return Facts.space(Step.class).stream()
                .filter(each -> each instanceof Step step
                        && step.track() == like.track()
                        && step.bond() == like.bond()
                        && step.grit() == like.grit()
                        && (like.bond() == Bond.METAL || step.method() == like.method()));
    }

    /**
     * The smallest changes.
     *
     * @param meanings the rules
     * @param topic a topic that a recommendation decides by words or grits
     * @param subject what fits its scope
     * @param wanted key of a value of its domain, or of a grit of the sequence
     * @throws InvalidInputException for another topic, subject or value
     */
    public static HowTo find(
            RuleMeanings meanings,
            Topic<?> topic,
            Subject subject,
            String wanted,
            FloorSurvey survey,
            Parameters parameters,
            GritSequence sequence,
            RulebaseStamp stamp) {
        requireQuestion(topic, subject, wanted, sequence);
        SurveyedFloor floor = new SurveyedFloor(survey, parameters, sequence);
        return new HowToSearch(meanings, topic, subject, wanted, floor, new SearchBudget(STEPS)).answer(stamp);
    }

    /** What the search comes to. */
    HowTo answer(RulebaseStamp stamp) {
        List<Way> ways = ways();
        return new HowTo(topic, subject, wanted, kind(ways), ways, stamp);
    }

    private WayKind kind(List<Way> ways) {
        if (ways.isEmpty()) {
            return budget.isCutShort() ? WayKind.NONE_SO_FAR : WayKind.NONE_WITHIN_TWO;
        }
        if (ways.get(0).changes().isEmpty()) {
            return WayKind.ALREADY;
        }
        return budget.isCutShort() ? WayKind.FOUND_SO_FAR : WayKind.FOUND;
    }

    private static void requireQuestion(Topic<?> topic, Subject subject, String wanted, GritSequence sequence) {
        List<String> asked = RuleReach.decided().stream()
                .filter(decided -> decided != Topics.PASSES && decided != Topics.LITRES)
                .map(Topic::id)
                .toList();
        if (!asked.contains(topic.id())) {
            throw new InvalidInputException("topic", topic.id(), "one of " + String.join(", ", asked));
        }
        if (!topic.scope().fits(subject)) {
            throw new InvalidInputException(
                    topic.id() + ".subject", subject.key(), topic.scope().subjects());
        }
        if (subject instanceof Subject.OfStep step) {
            sequence.get(step.grade(), topic.id() + ".subject");
        }
        topic.parse(List.of(wanted), topic.id());
        if (topic.domain().isEmpty()) {
            sequence.get(wanted, topic.id());
        }
    }

    private List<Way> ways() {
        Run now = floor.run(rules, topic.stage());
        if (met(now)) {
            return List.of(new Way(List.of()));
        }
        if (mustBeAsked && helping.isEmpty() || isNeverSaid()) {
            return List.of();
        }
        List<Change> singles = candidates.of(needed(now)).stream()
                .filter(change -> !candidates.isTwin(change))
                .toList();
        List<Set<String>> neededNext = new ArrayList<>();
        List<List<Change>> found = new ArrayList<>();
        for (Change change : singles) {
            Optional<Run> run = budget.step() ? run(List.of(change)) : Optional.empty();
            if (run.filter(this::met).isPresent()) {
                found.add(List.of(change));
            }
            if (found.isEmpty()) {
                neededNext.add(run.map(this::needed).orElse(CLASHING));
            }
        }
        return smallest(found.isEmpty() ? pairs(singles, neededNext) : found);
    }

    /**
     * Of the pairs of each single change with every other that is needed after it, those that meet the wish; the fewest class
     * steps first, and none with more steps once one was found.
     */
    private List<List<Change>> pairs(List<Change> singles, List<Set<String>> neededNext) {
        List<List<Change>> found = new ArrayList<>();
        for (List<List<Change>> alike : bySteps(singles, neededNext).values()) {
            for (List<Change> pair : alike) {
                if (!budget.step()) {
                    return found;
                }
                if (meets(pair)) {
                    found.add(pair);
                }
            }
            if (!found.isEmpty()) {
                return found;
            }
        }
        return found;
    }

    private SortedMap<Integer, List<List<Change>>> bySteps(List<Change> singles, List<Set<String>> neededNext) {
        SortedMap<Integer, List<List<Change>>> pairs = new TreeMap<>();
        Map<Change, Integer> indexes = new IdentityHashMap<>();
        singles.forEach(change -> indexes.put(change, indexes.size()));
        for (int i = 0; i < singles.size(); i++) {
            Change first = singles.get(i);
            for (Change second : candidates.of(neededNext.get(i))) {
                int index = indexes.getOrDefault(second, singles.size());
                boolean tried = index < i && neededNext.get(index).contains(first.name());
                if (!tried && together(first, second) && candidates.inOrder(first, second)) {
                    pairs.computeIfAbsent(first.classSteps() + second.classSteps(), steps -> new ArrayList<>())
                            .add(ordered(first, second));
                }
            }
        }
        return pairs;
    }

    /** The ways with the fewest class steps, in the order of the survey form. */
    private List<Way> smallest(List<List<Change>> found) {
        List<Way> ways = found.stream().map(Way::new).toList();
        int least = ways.stream().mapToInt(Way::classSteps).min().orElse(0);
        return ways.stream()
                .filter(way -> way.classSteps() == least)
                .sorted(Comparator.comparing((Way way) -> place(way.changes().get(0)))
                        .thenComparing(
                                way -> place(way.changes().get(way.changes().size() - 1))))
                .toList();
    }

    private List<Change> ordered(Change first, Change second) {
        return place(first) <= place(second) ? List.of(first, second) : List.of(second, first);
    }

    private int place(Change change) {
        return places.computeIfAbsent(change, this::findPlace);
    }

    private int findPlace(Change change) {
        return Candidates.names().indexOf(change.name()) * 10_000
                + candidates.of(change.name()).indexOf(change);
    }

    /** Two changes of one place exclude each other, and so do a list as a whole and one of its members. */
    static boolean together(Change first, Change second) {
        boolean whole = first instanceof Change.OfAnswer || second instanceof Change.OfAnswer;
        return whole ? !first.name().equals(second.name()) : !first.place().equals(second.place());
    }

    /** The run with changes; empty where they cannot hold together with the other answers. */
    private Optional<Run> run(List<Change> changes) {
        return changed(changes).map(survey -> run(floor.changed(rules, topic.stage(), survey, names(changes))));
    }

    private Run run(SurveyedFloor.Changed changed) {
        budget.replanned();
        return changed.run(rules, topic.stage());
    }

    /** What was the same to the rules before is not run again, nor what keeps every rule that may help from speaking. */
    private boolean meets(List<Change> changes) {
        return changed(changes)
                .filter(survey -> !mustBeAsked || mayBeAsked(survey, changes))
                .map(survey -> floor.changed(rules, topic.stage(), survey, names(changes)))
                .filter(changed -> met.computeIfAbsent(changed.seen(), seen -> met(run(changed))))
                .isPresent();
    }

    /** Looks at the survey first, and then at no more than what the rules that may help rest on. */
    private boolean mayBeAsked(FloorSurvey survey, List<Change> changes) {
        Stage last = decidedBefore.orElse(topic.stage());
        SurveyedFloor.Changed changed = floor.changed(ruledBefore, last, survey, names(changes));
        return maySpeak(changed.facts())
                && (decidedBefore.isEmpty()
                        || mayBeAsked.computeIfAbsent(changed.seen(), seen -> {
                            budget.replanned();
                            return maySpeak(changed.run(ruledBefore, last).facts());
                        }));
    }

    /** True when a rule that may help finds all that it reads of the types that there are; what is not there may hold or not. */
    private boolean maySpeak(List<Object> facts) {
        Map<Class<?>, List<Object>> byType = facts.stream().collect(Collectors.groupingBy(Object::getClass));
        return helping.stream()
                .anyMatch(rule -> rule.conditions().stream()
                        .filter(condition -> byType.containsKey(condition.type()))
                        .allMatch(condition ->
                                byType.get(condition.type()).stream().anyMatch(condition::matches)));
    }

    private Optional<FloorSurvey> changed(List<Change> changes) {
        try {
            return Optional.of(Change.all(floor.survey(), changes));
        } catch (InvalidInputException impossible) {
            return Optional.empty();
        }
    }

    private static Set<String> names(List<Change> changes) {
        return changes.stream().map(Change::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private boolean met(Run run) {
        return run.situation()
                .decision(topic, subject)
                .filter(decision -> decision.keys().contains(wanted))
                .isPresent();
    }

    /** Fields of which at least one has to change before the value can be reached. */
    private Set<String> needed(Run run) {
        Optional<Outcome> outcome = run.situation().outcome(topic, subject);
        if (outcome.isEmpty()) {
            return neededToAsk(run);
        }
        if (!(topic instanceof Choice<?> choice)) {
            return reach.fields(topic);
        }
        List<Reason> reasons = outcome.get().reasons();
        Policy policy = Policy.of(choice);
        return leastOf(reasons.stream().filter(reason -> policy.excludes(choice, reason, choice.value(wanted))))
                .orElseGet(() -> policy.isLocal() ? neededToSpeak(choice, run, reasons) : reach.fields(topic));
    }

    /** All the reasons have to give way; the one with the fewest fields behind it narrows the search enough. */
    private Optional<Set<String>> leastOf(Stream<Reason> reasons) {
        return reasons.map(this::fields).min(Comparator.comparing(Set::size));
    }

    private Set<String> fields(Reason reason) {
        return reason.facts().stream()
                .filter(fact -> Facts.type(fact) != Step.class || !alwaysHolds(reason.rule()))
                .flatMap(fact -> reach.fields(fact).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** True where a rule reads nothing of the step that was asked about but what no survey can change. */
    private boolean alwaysHolds(String rule) {
        return subject instanceof Subject.OfStep asked
                && meanings.of(topic).stream()
                        .filter(meaning -> meaning.id().equals(rule))
                        .flatMap(meaning -> meaning.conditions().stream())
                        .filter(condition -> condition.type() == Step.class)
                        .allMatch(condition -> stepsOf(asked).allMatch(condition::matches));
    }

    /** Nothing keeps the value out: a rule has to start to speak, or one that speaks has to say something else. */
    private Set<String> neededToSpeak(Choice<?> choice, Run run, List<Reason> reasons) {
        Set<String> all = new LinkedHashSet<>();
        for (RuleMeaning rule : meanings.of(topic)) {
            List<Reason> spoken = reasons.stream()
                    .filter(reason -> reason.rule().equals(rule.id()))
                    .toList();
            boolean mayHelp = helping.contains(rule);
            if (!spoken.isEmpty() && (Policy.of(choice).isSingle() || mayHelp)) {
                spoken.forEach(reason -> all.addAll(fields(reason)));
            } else if (spoken.isEmpty() && mayHelp) {
                all.addAll(neededToFire(rule, run));
            }
        }
        return all;
    }

    /** Of the conditions that do not hold, the one with the fewest fields behind it narrows the search enough. */
    private Set<String> neededToFire(RuleMeaning rule, Run run) {
        Set<String> all = new LinkedHashSet<>();
        rule.conditions().forEach(condition -> all.addAll(reach.fields(condition.type())));
        return rule.conditions().stream()
                .filter(condition -> run.facts().stream().filter(this::concerns).noneMatch(condition::matches))
                .map(condition -> reach.fields(condition.type()))
                .min(Comparator.comparing(Set::size))
                .orElse(all);
    }

    private boolean concerns(Object fact) {
        return !(fact instanceof Step step) || step.subject().equals(subject) || !(subject instanceof Subject.OfStep);
    }

    /** The topic was not asked for this subject. */
    private Set<String> neededToAsk(Run run) {
        Optional<Decision<Verdict>> verdict = run.situation().decision(Topics.VERDICT, Subject.FLOOR);
        Set<Verdict> permission = run.situation().permission();
        if (verdict.isPresent() && !permission.contains(Verdict.GO) && !permission.contains(Verdict.HOLD)) {
            Stream<Reason> stopping = verdict.get().reasons().stream()
                    .filter(Reason::certain)
                    .filter(reason ->
                            reason.values().get(0) == permission.iterator().next());
            return leastOf(stopping).orElseGet(() -> reach.fieldsOfAsking(topic));
        }
        return reach.fieldsOfAsking(topic);
    }
}
