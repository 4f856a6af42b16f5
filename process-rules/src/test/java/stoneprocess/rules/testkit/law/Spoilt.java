package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;

/** Respondents with one fault each: rules left out or added, surveys misread, answers tampered with. */
final class Spoilt {
    static final Respondent SHIPPED = Respondent.remembering(Respondent.of(Advisor.standard()), 500);

    private Spoilt() {}

    /** The shipped rules without some, by id or the start of one, and with others. */
    static Respondent rules(List<String> without, LoadedRule... added) {
        List<LoadedRule> rules = new ArrayList<>(ShippedRules.load());
        without.forEach(start -> {
            boolean gone = rules.removeIf(rule -> rule.id().startsWith(start));
            if (!gone) {
                throw new AssertionError("There is no rule " + start);
            }
        });
        rules.addAll(Arrays.asList(added));
        return Respondent.of(rules, Parameters.standard(), GritSequence.standard());
    }

    /** Answers another survey than it is asked. */
    static Respondent reads(UnaryOperator<FloorSurvey> misread) {
        return of(survey -> SHIPPED.recommend(misread.apply(survey)), SHIPPED::recommendPinned);
    }

    /** Tampers with the answers. */
    static Respondent says(UnaryOperator<Recommendation> tampered) {
        return of(survey -> tampered.apply(SHIPPED.recommend(survey)), SHIPPED::recommendPinned);
    }

    /** Heeds in its own way what is closed beforehand. */
    static Respondent pins(BiFunction<FloorSurvey, List<Outcome>, Recommendation> pinned) {
        return of(SHIPPED::recommend, pinned);
    }

    private interface Answer {
        Recommendation of(FloorSurvey survey);
    }

    private static Respondent of(Answer answer, BiFunction<FloorSurvey, List<Outcome>, Recommendation> pinned) {
        return new Respondent() {
            @Override
            public List<LoadedRule> rules() {
                return SHIPPED.rules();
            }

            @Override
            public Recommendation recommend(FloorSurvey survey) {
                return answer.of(survey);
            }

            @Override
            public Recommendation recommendInOrder(FloorSurvey survey, long seed) {
                return SHIPPED.recommendInOrder(survey, seed);
            }

            @Override
            public Recommendation recommendPinned(FloorSurvey survey, List<Outcome> pins) {
                return pinned.apply(survey, pins);
            }
        };
    }

    static UnaryOperator<Recommendation> status(Status status) {
        return r ->
                copy(r, status, r.plan(), r.refusals(), r.warnings(), r.questions(), r.counterOffers(), r.outcomes());
    }

    static UnaryOperator<Recommendation> refusals(UnaryOperator<Reason> change) {
        return r -> copy(
                r,
                r.status(),
                r.plan(),
                r.refusals().stream().map(change).toList(),
                r.warnings(),
                r.questions(),
                r.counterOffers(),
                r.outcomes());
    }

    static UnaryOperator<Recommendation> questions(List<Question> questions) {
        return r ->
                copy(r, r.status(), r.plan(), r.refusals(), r.warnings(), questions, r.counterOffers(), r.outcomes());
    }

    static UnaryOperator<Recommendation> offers(UnaryOperator<List<CounterOffer<?>>> change) {
        return r -> copy(
                r,
                r.status(),
                r.plan(),
                r.refusals(),
                r.warnings(),
                r.questions(),
                change.apply(r.counterOffers()),
                r.outcomes());
    }

    static UnaryOperator<Recommendation> warnings(UnaryOperator<SafetyWarning> change) {
        return r -> copy(
                r,
                r.status(),
                r.plan(),
                r.refusals(),
                r.warnings().stream().map(change).toList(),
                r.questions(),
                r.counterOffers(),
                r.outcomes());
    }

    /** Changes the values of a topic's decisions, and leaves their reasons. */
    static UnaryOperator<Recommendation> values(Topic<?> topic, UnaryOperator<List<Term>> change) {
        return r -> copy(
                r,
                r.status(),
                r.plan(),
                r.refusals(),
                r.warnings(),
                r.questions(),
                r.counterOffers(),
                r.outcomes().stream()
                        .map(outcome -> outcome instanceof Decision<?> decision && decision.topic() == topic
                                ? with(decision, change)
                                : outcome)
                        .toList());
    }

    /** A value of another domain may be among these, which no honest code can bring about. */
    @SuppressWarnings("unchecked")
    private static <V> Outcome with(Decision<V> decision, UnaryOperator<List<Term>> change) {
        List<Term> terms = new ArrayList<>();
        decision.values().forEach(value -> terms.add((Term) value));
        return new Decision<>(
                decision.topic(),
                decision.subject(),
                (List<V>) change.apply(terms),
                decision.won(),
                decision.outweighed(),
                decision.vetoed(),
                decision.inputs());
    }

    static UnaryOperator<Recommendation> sealer(Sealer sealer) {
        return plan(plan -> copy(plan, plan.tracks(), sealer));
    }

    static UnaryOperator<Recommendation> tracks(UnaryOperator<List<Track>> change) {
        return plan(plan -> copy(plan, change.apply(new ArrayList<>(plan.tracks())), plan.sealer()));
    }

    /** Changes the steps of a grade, where the answer is one that is meant. */
    static UnaryOperator<Recommendation> steps(Predicate<Recommendation> where, UnaryOperator<PlannedStep> change) {
        return r -> where.test(r)
                ? tracks(tracks -> tracks.stream()
                                .map(track -> new Track(
                                        track.kind(),
                                        track.steps().stream().map(change).toList()))
                                .toList())
                        .apply(r)
                : r;
    }

    static PlannedStep with(
            PlannedStep step, MachineClass machine, Optional<Range<Volume>> litres, Range<Integer> passes) {
        return new PlannedStep(
                step.grade(),
                step.method(),
                machine,
                step.weight(),
                step.addedMass(),
                step.water(),
                litres,
                passes,
                step.depth(),
                step.handling(),
                step.pickUp(),
                step.checks());
    }

    private static UnaryOperator<Recommendation> plan(UnaryOperator<Plan> change) {
        return r -> copy(
                r,
                r.status(),
                r.plan().map(change),
                r.refusals(),
                r.warnings(),
                r.questions(),
                r.counterOffers(),
                r.outcomes());
    }

    private static Plan copy(Plan plan, List<Track> tracks, Sealer sealer) {
        return new Plan(
                plan.preparation(),
                plan.acceptances(),
                plan.testArea(),
                plan.testCuts(),
                plan.repairs(),
                plan.finish(),
                tracks,
                plan.starts(),
                plan.shortfalls(),
                plan.slurry(),
                plan.polishingAgent(),
                plan.densifier(),
                sealer,
                plan.finishTasks(),
                plan.upkeep());
    }

    private static Recommendation copy(
            Recommendation of,
            Status status,
            Optional<Plan> plan,
            List<Reason> refusals,
            List<SafetyWarning> warnings,
            List<Question> questions,
            List<CounterOffer<?>> offers,
            List<Outcome> outcomes) {
        return new Recommendation(
                status,
                plan,
                refusals,
                warnings,
                questions,
                offers,
                outcomes,
                of.survey(),
                of.sequence(),
                of.parameters(),
                of.rulebase());
    }
}
