package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.internal.engine.LoadedRule;

/** Collects where the answers to one survey break one law. */
final class Breaches {
    private final String law;
    private final FloorSurvey survey;
    private final List<Violation> found = new ArrayList<>();

    Breaches(String law, FloorSurvey survey) {
        this.law = law;
        this.survey = survey;
    }

    /** Judges one answer. */
    @FunctionalInterface
    interface Judge {
        void judge(Recommendation answer, Breaches breaches);
    }

    /** Judges one answer by the rules that made it. */
    @FunctionalInterface
    interface RuleJudge {
        void judge(List<LoadedRule> rules, Recommendation answer, Breaches breaches);
    }

    /** Makes of a survey another one whose answer the law compares; empty when there is none. */
    @FunctionalInterface
    interface Change {
        Optional<FloorSurvey> of(FloorSurvey survey, SplittableRandom random);
    }

    /** Judges the answer to a survey and the answer to the changed survey. */
    @FunctionalInterface
    interface Comparison {
        void judge(Recommendation before, Recommendation after, Breaches breaches);
    }

    /** A law that every answer of a kind keeps by itself. */
    static Law law(String id, String prose, String reason, Predicate<Recommendation> where, Judge judge) {
        return lawByRules(id, prose, reason, where, (rules, answer, breaches) -> judge.judge(answer, breaches));
    }

    /** A law that every answer of a kind keeps with the rules that made it. */
    static Law lawByRules(String id, String prose, String reason, Predicate<Recommendation> where, RuleJudge judge) {
        return new Law(id, prose, reason, Law.Meeting.where(where), (respondent, survey, seed) -> {
            Breaches breaches = new Breaches(id, survey);
            judge.judge(respondent.rules(), respondent.recommend(survey), breaches);
            return breaches.found;
        });
    }

    /**
     * A law about what a change of the survey does to the answer; the seed chooses the change.
     *
     * @param where what the answers before and after the change have to be; nothing else is compared
     */
    static Law law(
            String id,
            String prose,
            String reason,
            Change change,
            BiPredicate<Recommendation, Recommendation> where,
            Comparison comparison) {
        return new Law(
                id,
                prose,
                reason,
                (respondent, survey, seed) -> changed(change, survey, seed)
                        .filter(changed -> where.test(respondent.recommend(survey), respondent.recommend(changed)))
                        .isPresent(),
                (respondent, survey, seed) -> {
                    Breaches breaches = new Breaches(id, survey);
                    changed(change, survey, seed).ifPresent(changed -> {
                        Recommendation before = respondent.recommend(survey);
                        Recommendation after = respondent.recommend(changed);
                        if (where.test(before, after)) {
                            comparison.judge(before, after, breaches);
                        }
                    });
                    return breaches.found;
                });
    }

    private static Optional<FloorSurvey> changed(Change change, FloorSurvey survey, long seed) {
        return change.of(survey, new SplittableRandom(seed)).filter(changed -> !changed.equals(survey));
    }

    /** As {@link #law(String, String, String, Change, BiPredicate, Comparison)}, where both surveys have a plan. */
    static Law lawOfPlans(
            String id,
            String prose,
            String reason,
            Change change,
            BiPredicate<Recommendation, Recommendation> where,
            Comparison comparison) {
        return law(
                id,
                prose,
                reason,
                change,
                (before, after) -> isPlanned(before) && isPlanned(after) && where.test(before, after),
                comparison);
    }

    /** Both decide a topic. */
    static BiPredicate<Recommendation, Recommendation> decide(Topic<?> topic, Subject subject) {
        return (before, after) -> before.decision(topic, subject).isPresent()
                && after.decision(topic, subject).isPresent();
    }

    /** Both have a step at the same place that is alike. */
    static BiPredicate<Recommendation, Recommendation> sameStep(BiPredicate<Placed, Placed> alike) {
        return (before, after) -> steps(before).stream()
                .anyMatch(one -> steps(after).stream().anyMatch(other -> one.isAt(other) && alike.test(one, other)));
    }

    static boolean cuts(Recommendation answer) {
        return !steps(answer).isEmpty();
    }

    List<Violation> found() {
        return List.copyOf(found);
    }

    static boolean isPlanned(Recommendation answer) {
        return answer.status() == Status.PLANNED || answer.status() == Status.PROVISIONAL;
    }

    void add(String topic, Subject subject, Object expected, Object got) {
        found.add(new Violation(law, topic, subject, expected.toString(), got.toString(), survey));
    }

    void add(Topic<?> topic, Subject subject, Object expected, Object got) {
        add(topic.id(), subject, expected, got);
    }

    void add(Topic<?> topic, Object expected, Object got) {
        add(topic.id(), Subject.FLOOR, expected, got);
    }

    /** Adds a breach unless what is asked for holds. */
    void require(boolean holds, Topic<?> topic, Subject subject, Object expected, Object got) {
        if (!holds) {
            add(topic.id(), subject, expected, got);
        }
    }

    void require(boolean holds, Topic<?> topic, Object expected, Object got) {
        require(holds, topic, Subject.FLOOR, expected, got);
    }

    /** Adds a breach unless the topic was decided with just these values; a topic that was not reached is left out. */
    <V extends Term> void same(Recommendation answer, Topic<V> topic, Subject subject, List<? extends Term> planned) {
        answer.decision(topic, subject)
                .map(Decision::values)
                .ifPresent(decided ->
                        require(decided.equals(planned), topic, subject, "as decided, " + Term.keys(decided), planned));
    }

    /** Adds a breach where the value after the change lies beyond the value before it in the topic's domain. */
    <V extends Term> void notAbove(Topic<V> topic, Subject subject, Recommendation before, Recommendation after) {
        compare(topic, subject, before, after, -1);
    }

    /** Adds a breach where the value after the change lies before that before the change in the topic's domain. */
    <V extends Term> void notBelow(Topic<V> topic, Subject subject, Recommendation before, Recommendation after) {
        compare(topic, subject, before, after, 1);
    }

    private <V extends Term> void compare(
            Topic<V> topic, Subject subject, Recommendation before, Recommendation after, int direction) {
        Optional<V> earlier = before.decision(topic, subject).map(Decision::value);
        Optional<V> later = after.decision(topic, subject).map(Decision::value);
        if (earlier.isEmpty() || later.isEmpty()) {
            return;
        }
        int from = topic.domain().indexOf(earlier.get());
        int to = topic.domain().indexOf(later.get());
        require(
                direction * (to - from) >= 0,
                topic,
                subject,
                (direction > 0 ? "at least " : "at most ") + earlier.get().key(),
                later.get().key());
    }

    /** A step of a plan with its place in its track. */
    record Placed(Track track, int index, PlannedStep step) {
        Subject subject() {
            return new Subject.OfStep(track.kind(), step.grade().key());
        }

        boolean isFirst() {
            return index == 0;
        }

        boolean isLast() {
            return index == track.steps().size() - 1;
        }

        /** The same grade of the same track, at the same place: first, second or later, and last or not. */
        boolean isAt(Placed other) {
            return subject().equals(other.subject())
                    && Math.min(index, 2) == Math.min(other.index, 2)
                    && isLast() == other.isLast();
        }
    }

    /** All steps of the plan, track by track; none without a plan. */
    static List<Placed> steps(Recommendation answer) {
        List<Placed> steps = new ArrayList<>();
        answer.plan()
                .ifPresent(plan -> plan.tracks().forEach(track -> {
                    for (int i = 0; i < track.steps().size(); i++) {
                        steps.add(new Placed(track, i, track.steps().get(i)));
                    }
                }));
        return steps;
    }

    /** Judges one step before and after a change. */
    @FunctionalInterface
    interface StepComparison {
        void judge(Placed before, Placed after);
    }

    /** The steps that stand at the same place before and after a change. */
    static void eachSameStep(Recommendation before, Recommendation after, StepComparison comparison) {
        for (Placed one : steps(before)) {
            steps(after).stream().filter(one::isAt).forEach(other -> comparison.judge(one, other));
        }
    }
}
