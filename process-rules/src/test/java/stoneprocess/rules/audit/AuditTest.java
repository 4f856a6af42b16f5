package stoneprocess.rules.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.decide.Stated;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.EngineRun;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.run.Runner;

class AuditTest {
    private static final BigInteger FEW = BigInteger.valueOf(25_000);

    /** The recommendation's topics; with {@code -Daudit.whole=true}, as in the profile of that name, all topics. */
    @Test
    void the_shipped_rules_have_no_finding_that_nobody_explained() {
        boolean whole = Boolean.getBoolean("audit.whole");
        long start = System.nanoTime();
        AuditReport report = Audit.of(Advisor.standard())
                .run(whole ? AuditDepth.WHOLE : AuditDepth.RECOMMENDATION, AuditProgress.silent());
        double seconds = (System.nanoTime() - start) / 1e9;
        report.topics()
                .forEach(space -> System.out.printf(
                        "%-16s %3d rules %3d facts %,48d combinations %,9d states%n",
                        space.topic(), space.rules(), space.facts(), space.combinations(), space.states()));
        System.out.printf(
                "%,d combinations in %.1f s, %.2e in a second; %.1e of the %.1e across stages%n",
                report.combinations(),
                seconds,
                report.combinations().doubleValue() / seconds,
                new BigDecimal(report.combinations())
                        .divide(new BigDecimal(report.acrossStages()), MathContext.DECIMAL64),
                new BigDecimal(report.acrossStages()));

        assertThat(report.open()).isEmpty();
        assertThat(Explained.shipped().idle(report)).isEmpty();
        assertThat(report.topics())
                .allSatisfy(space -> assertThat(space.covered())
                        .as(space.topic().id())
                        .isEqualTo(space.rules() == 0 ? BigInteger.ZERO : space.combinations()));
        assertThat(report.topics())
                .hasSize(whole ? Topics.all().size() : Topics.all().size() - 6);
    }

    @Test
    void the_same_rules_give_an_equal_report() {
        TopicAudit one = new TopicAudit(Topics.FIRST_CUT, RuleMeanings.of(ShippedRules.load()));
        TopicAudit other = new TopicAudit(Topics.FIRST_CUT, RuleMeanings.of(ShippedRules.load()));

        assertThat(one.findings()).isEqualTo(other.findings());
        assertThat(one.size()).isEqualTo(other.size());
    }

    @Test
    void going_through_states_ends_as_going_through_every_combination_of_the_small_spaces() {
        RuleMeanings rules = RuleMeanings.of(ShippedRules.load());
        int compared = 0;
        for (Topic<?> topic : Topics.all()) {
            WaySpace space = new WaySpace(topic, rules);
            boolean valued = topic.policy() == PolicyKind.ONE || topic.policy() == PolicyKind.REMAINS;
            if (!valued || space.rules().isEmpty() || space.size().compareTo(FEW) > 0) {
                continue;
            }
            compared++;
            Subject subject = space.subjects().get(0);
            List<FiringWay> ways = space.ways().stream()
                    .filter(way -> Runner.concerns(way.says(), subject))
                    .toList();
            View<OutcomeViews.Left> allowed = new OutcomeViews(topic, subject, ways).allowed();
            Set<List<String>> swept = new HashSet<>();
            new Sweep<>(space, ways, Map.of(), allowed).run().forEach(end -> swept.add(allowed.outcome(end.kept())));

            assertThat(swept).as(topic.id()).isEqualTo(oneByOne(space, subject));
        }
        assertThat(compared).isGreaterThanOrEqualTo(4);
    }

    /** The outcomes that the topic's own policy gives on what the engine fires on each combination. */
    private static Set<List<String>> oneByOne(WaySpace space, Subject subject) {
        Engine engine = new Engine(space.rules().stream().map(RuleMeaning::rule).toList());
        Set<List<String>> outcomes = new HashSet<>();
        int[] classes = new int[space.dimensions().size()];
        for (long index = 0; index < space.size().longValueExact(); index++) {
            long rest = index;
            for (int i = 0; i < classes.length; i++) {
                int size = space.dimensions().get(i).classes().size();
                classes[i] = (int) (rest % size);
                rest /= size;
            }
            try (EngineRun run = engine.start()) {
                space.facts(classes).forEach(run::insert);
                Set<Stated> said = new LinkedHashSet<>();
                run.fire(space.topic().stage()).forEach(firing -> {
                    List<MatchedFact> facts =
                            firing.facts().stream().map(Facts::matched).toList();
                    Contribution says = firing.contribution();
                    said.add(new Stated(
                            says, new Reason(says.kind(), firing.card().id(), says.values(), facts)));
                });
                Outcome outcome = Policy.of((Choice<?>) space.topic())
                        .close((Choice<?>) space.topic(), subject, new ArrayList<>(said));
                outcomes.add(outcome instanceof Decision<?> decision ? decision.keys() : List.of());
            }
        }
        return outcomes;
    }

    @Test
    void a_line_that_explains_nothing_is_named() {
        Explained explained = Explained.parse("kind\ttopic\tabout\treason\ngap\tsealer\tBAD-001\tIt is old\n");
        AuditReport report = new AuditReport(
                Advisor.standard().rulebase().stamp(),
                List.of(new AuditReport.Space(Topics.SEALER, 1, 1, BigInteger.ONE, BigInteger.ONE, 1)),
                BigInteger.ONE,
                List.<AuditFinding>of());

        assertThat(explained.idle(report)).hasSize(1);
    }
}
