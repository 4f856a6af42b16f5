package stoneprocess.rules.internal.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.Floors;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.testkit.law.Respondent;

/** Each law finds what it is meant to find: answers that are spoilt in one way break it on a floor on which it holds. */
class ExplainMutantTest {
    private static final int SEEDS = 20;
    private static final List<LoadedRule> RULES = ShippedRules.load();
    private static final Engine ENGINE = new Engine(RULES);
    private static final Recommendation MARBLE = Respondent.of(RULES, Parameters.standard(), GritSequence.standard())
            .recommend(Floors.calciteMarble(Floors.scratched(ScratchClass.FELT_BY_NAIL, 60))
                    .set(SurveyField.GOAL, Goal.POLISH)
                    .set(SurveyField.FINISH_NOW, Finish.HONE)
                    .build());
    private static final Answers TRUE = Answers.of(new Explainer(RuleMeanings.of(RULES)).explain(MARBLE));

    @Test
    void true_answers_break_no_law() {
        assertThat(IntStream.range(0, 4).mapToObj(seed -> complaints(TRUE, seed)))
                .allMatch(List::isEmpty);
    }

    @Test
    void a_reason_left_out_of_the_record_is_found() {
        Answers hiding = spoiltWhy(why -> withOutcome(
                why,
                decision -> withWon(decision, decision.won().stream().skip(1).toList())));

        assertFound(hiding, "cited facts alone make the same rules speak");
        assertFound(hiding, "grounds are decision records");
    }

    @Test
    void a_value_that_was_not_decided_is_found() {
        Answers lying = spoiltWhy(why -> withOutcome(why, ExplainMutantTest::withHalfTheValues));

        assertFound(lying, "cited facts alone give the outcome");
    }

    @Test
    void a_fact_made_up_afterwards_is_found() {
        Answers inventing = spoiltWhy(why -> withOutcome(
                why,
                decision -> withWon(
                        decision,
                        decision.won().stream().map(ExplainMutantTest::invented).toList())));

        assertFound(inventing, "cited facts are facts of the floor");
    }

    private static Reason invented(Reason reason) {
        return new Reason(
                reason.kind(),
                reason.rule(),
                reason.values(),
                reason.facts().stream()
                        .map(fact ->
                                new MatchedFact(fact.name(), List.of("made-up"), true, fact.fields(), fact.topics()))
                        .toList());
    }

    @Test
    void a_derivation_that_stops_before_the_survey_is_found() {
        Answers cutShort = spoiltWhy(why -> new Why(why.grounds(), why.cards(), List.of(), why.numbers()));

        assertFound(cutShort, "cited answers alone give the facts");
    }

    @Test
    void a_veto_that_is_not_named_is_found() {
        Answers hiding = spoiltWhyNot(whyNot -> whyNot.by().size() < 2
                ? whyNot
                : with(whyNot, whyNot.kind(), whyNot.by().subList(0, 1), whyNot.silent()));

        assertFound(hiding, "all that vetoes is named");
    }

    @Test
    void a_reason_that_excludes_nothing_named_as_a_veto_is_found() {
        Answers blaming = spoiltWhyNot(whyNot -> whyNot.kind() == WhyNotKind.OUTWEIGHED
                ? with(whyNot, WhyNotKind.VETOED, whyNot.by(), whyNot.silent())
                : whyNot);

        assertFound(blaming, "all that vetoes is named");
    }

    @Test
    void a_veto_told_as_silence_is_found() {
        Answers playingDown = spoiltWhyNot(whyNot ->
                whyNot.kind() == WhyNotKind.VETOED ? with(whyNot, WhyNotKind.NOT_ASKED, List.of(), List.of()) : whyNot);

        assertFound(playingDown, "a silent rule did not speak");
    }

    @Test
    void a_reason_said_to_outweigh_itself_is_found() {
        Answers turning = spoiltWhyNot(whyNot -> whyNot.kind() == WhyNotKind.OUTWEIGHED
                ? with(whyNot, whyNot.kind(), whyNot.asked(), whyNot.silent())
                : whyNot);

        assertFound(turning, "what outweighs asks for something else");
    }

    @Test
    void certainty_told_as_doubt_is_found() {
        Answers doubting = spoiltWhyNot(whyNot -> with(whyNot, WhyNotKind.UNCERTAIN, whyNot.by(), whyNot.silent()));

        assertFound(doubting, "what is uncertain rests on something unknown");
    }

    @Test
    void one_of_two_conditions_left_out_is_found() {
        Answers hasty = spoiltSilent(unmet -> unmet.subList(0, 1));

        assertFound(hasty, "a silent rule speaks when its conditions hold");
    }

    @Test
    void a_required_class_that_does_not_meet_the_condition_is_found() {
        Answers misleading = spoiltSilent(unmet -> unmet.stream()
                .map(condition -> new Unmet(
                        condition.fact(),
                        condition.actual(),
                        condition.actual(),
                        condition.steps(),
                        condition.fields(),
                        condition.topics()))
                .toList());

        assertFound(misleading, "a silent rule speaks when its conditions hold");
    }

    @Test
    void an_actual_class_that_the_floor_does_not_have_is_found() {
        Answers misreading = spoiltSilent(unmet -> unmet.stream()
                .map(condition -> new Unmet(
                        condition.fact(),
                        condition.required(),
                        condition.required(),
                        condition.steps(),
                        condition.fields(),
                        condition.topics()))
                .toList());

        assertFound(misreading, "a silent rule did not speak");
    }

    @Test
    void a_rule_that_would_decide_otherwise_is_found() {
        Answers swapping = new Spoilt(why -> why, whyNot -> whyNot) {
            @Override
            public WhyNot whyNot(Topic<?> topic, Subject subject, String value) {
                WhyNot whyNot = super.whyNot(topic, subject, value);
                if (!topic.id().equals("first-cut") || !value.equals("heavy-grind")) {
                    return whyNot;
                }
                WhyNot finer = super.whyNot(topic, subject, "coarse-hone");
                return new WhyNot(
                        value,
                        finer.kind(),
                        finer.outcome(),
                        finer.by(),
                        finer.asked(),
                        finer.silent(),
                        finer.restsOn(),
                        finer.cards(),
                        finer.answers());
            }
        };

        assertFound(swapping, "a silent rule that spoke would decide");
    }

    private static List<String> complaints(Answers answers, long seed) {
        ExplainLaws laws = new ExplainLaws(RULES, ENGINE, MARBLE, answers, new SplittableRandom(seed));
        laws.judge();
        return laws.complaints();
    }

    /** Laws draw what they check; the first draws that find the fault are enough. */
    private static void assertFound(Answers spoilt, String law) {
        boolean found = IntStream.range(0, SEEDS)
                .anyMatch(seed -> complaints(spoilt, seed).stream().anyMatch(complaint -> complaint.startsWith(law)));
        assertThat(found).as(law).isTrue();
    }

    private static Answers spoiltWhy(UnaryOperator<Why> spoil) {
        return new Spoilt(spoil, whyNot -> whyNot);
    }

    private static Answers spoiltWhyNot(UnaryOperator<WhyNot> spoil) {
        return new Spoilt(why -> why, spoil);
    }

    private static Answers spoiltSilent(UnaryOperator<List<Unmet>> spoil) {
        return spoiltWhyNot(whyNot -> with(
                whyNot,
                whyNot.kind(),
                whyNot.by(),
                whyNot.silent().stream()
                        .map(silent -> new SilentRule(silent.rule(), spoil.apply(silent.unmet())))
                        .toList()));
    }

    private static WhyNot with(WhyNot whyNot, WhyNotKind kind, List<Reason> by, List<SilentRule> silent) {
        return new WhyNot(
                whyNot.value(),
                kind,
                whyNot.outcome(),
                by,
                whyNot.asked(),
                silent,
                whyNot.restsOn(),
                whyNot.cards(),
                whyNot.answers());
    }

    private static <V> Decision<V> withWon(Decision<V> decision, List<Reason> won) {
        return new Decision<>(
                decision.topic(),
                decision.subject(),
                decision.values(),
                won,
                decision.outweighed(),
                decision.vetoed(),
                decision.inputs());
    }

    private static <V> Decision<V> withHalfTheValues(Decision<V> decision) {
        return new Decision<>(
                decision.topic(),
                decision.subject(),
                decision.values().subList(0, decision.values().size() / 2),
                decision.won(),
                decision.outweighed(),
                decision.vetoed(),
                decision.inputs());
    }

    private static Why withOutcome(Why why, UnaryOperator<Decision<?>> spoil) {
        Ground first = why.grounds().get(0);
        if (!(first.outcome() instanceof Decision<?> decision)) {
            return why;
        }
        List<Ground> grounds = new ArrayList<>(why.grounds());
        Outcome spoilt = spoil.apply(decision);
        grounds.set(0, new Ground(spoilt, first.policy(), first.restsOn()));
        return new Why(grounds, why.cards(), why.answers(), why.numbers());
    }

    private static class Spoilt implements Answers {
        private final UnaryOperator<Why> why;
        private final UnaryOperator<WhyNot> whyNot;

        Spoilt(UnaryOperator<Why> why, UnaryOperator<WhyNot> whyNot) {
            this.why = why;
            this.whyNot = whyNot;
        }

        @Override
        public List<Matter> matters() {
            return TRUE.matters();
        }

        @Override
        public List<String> alternatives(Topic<?> topic, Subject subject) {
            return TRUE.alternatives(topic, subject);
        }

        @Override
        public Why why(Topic<?> topic, Subject subject) {
            return why.apply(TRUE.why(topic, subject));
        }

        @Override
        public WhyNot whyNot(Topic<?> topic, Subject subject, String value) {
            return whyNot.apply(TRUE.whyNot(topic, subject, value));
        }
    }
}
