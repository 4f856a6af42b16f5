package stoneprocess.rules.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Site;
import stoneprocess.rules.internal.engine.CompiledRules;
import stoneprocess.rules.internal.engine.FaultyRules;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.testkit.law.Respondent;

/** Every kind of fault, sown into the shipped rules, is found; without it nothing of the kind is said. */
class FaultyRulesTest {
    private static final List<Topic<?>> TOPICS =
            List.of(Topics.VERDICT, Topics.FIRST_CUT, Topics.SEALER, Topics.FINISH_TASKS, Topics.UPKEEP);
    private static final List<AuditFinding> FOUND = new ArrayList<>();
    private static final List<AuditFinding> WITHOUT = new ArrayList<>();
    private static Respondent answering;

    @BeforeAll
    static void audit() throws IOException, ReflectiveOperationException {
        CompiledRules faulty = FaultyRules.all();
        List<LoadedRule> all = new ArrayList<>(ShippedRules.load());
        all.addAll(faulty.flat());
        AuditReport report = Audit.of(new CompiledRules(all, faulty.misshapen()), Parameters.standard())
                .run(TOPICS, AuditProgress.silent());
        FOUND.addAll(report.findings());
        WITHOUT.addAll(Audit.of(new CompiledRules(ShippedRules.load(), List.of()), Parameters.standard())
                .run(TOPICS, AuditProgress.silent())
                .findings());
        answering = Respondent.of(RuleMeanings.of(all).sound().rules(), Parameters.standard(), GritSequence.standard());
    }

    @Test
    void a_rule_that_never_fires_names_the_conditions_that_no_fact_meets() {
        assertThat(only(FindingKind.NEVER_FIRES).rules()).containsExactly("BAD-001");
        assertThat(only(FindingKind.NEVER_FIRES).details()).containsExactly("TapSound");
    }

    @Test
    void a_rule_that_is_always_outweighed_is_shown_at_work() {
        AuditFinding finding = found(FindingKind.ALWAYS_OUTWEIGHED, "BAD-002");

        assertThat(finding.values()).containsExactly("hold");
        Decision<?> verdict = (Decision<?>) outcome(finding);
        assertThat(verdict.keys()).containsExactly("refuse");
        assertThat(rules(verdict.outweighed())).contains("BAD-002");
    }

    @Test
    void a_duplicate_fires_beside_its_twin() {
        AuditFinding finding = found(FindingKind.DUPLICATE, "BAD-004");

        assertThat(finding.rules()).containsExactly("BAD-004", "BAD-003");
        assertThat(rules(((Decision<?>) outcome(finding)).won())).contains("BAD-003", "BAD-004");
    }

    @Test
    void a_subsumed_rule_fires_beside_the_wider_one() {
        AuditFinding finding = found(FindingKind.SUBSUMED, "BAD-005");

        assertThat(finding.rules()).hasSize(2).startsWith("BAD-005");
        assertThat(rules(((Decision<?>) outcome(finding)).won())).containsAll(finding.rules());
    }

    @Test
    void a_gap_leaves_no_value_by_exclusions_alone() {
        AuditFinding finding = only(FindingKind.GAP);

        assertThat(finding.rules()).containsExactly("BAD-006");
        Impasse<?> impasse = (Impasse<?>) outcome(finding);
        assertThat(rules(impasse.vetoes())).contains("BAD-006");
    }

    @Test
    void an_undeclared_conflict_ends_in_an_impasse_of_both_rules() {
        AuditFinding finding = FOUND.stream()
                .filter(one -> one.kind() == FindingKind.UNDECLARED_CONFLICT)
                .filter(one -> one.rules().equals(List.of("BAD-007", "BAD-008")))
                .findFirst()
                .orElseThrow();

        Impasse<?> impasse = (Impasse<?>) outcome(finding);
        assertThat(rules(impasse.needs())).contains("BAD-007", "BAD-008");
    }

    @Test
    void a_value_that_is_always_excluded_is_unreachable() {
        AuditFinding finding = FOUND.stream()
                .filter(one -> one.kind() == FindingKind.UNREACHABLE_VALUE)
                .filter(one -> one.topicId().equals("upkeep"))
                .findFirst()
                .orElseThrow();

        assertThat(finding.values()).containsExactly("watch-gloss");
        assertThat(finding.details()).as("rules that ask for it in vain").isNotEmpty();
    }

    @Test
    void an_impasse_without_a_counter_offer_is_answered_by_leaving_the_floor() {
        AuditFinding finding = FOUND.stream()
                .filter(one -> one.kind() == FindingKind.IMPASSE_WITHOUT_OFFER)
                .filter(one -> one.topicId().equals("first-cut"))
                .filter(one -> one.survey().isPresent())
                .findFirst()
                .orElseThrow();

        Recommendation answer = answering.recommend(finding.survey().orElseThrow());
        assertThat(answer.impasses()).isNotEmpty();
        assertThat(answer.counterOffers())
                .filteredOn(offer -> offer.topic() == Topics.FIRST_CUT)
                .extracting(offer -> offer.kind())
                .containsOnly(OfferKind.LEAVE_IT);
    }

    @Test
    void a_stale_card_names_the_parts_that_are_not_so() {
        assertThat(only(FindingKind.STALE_CARD).rules()).containsExactly("BAD-010");
        assertThat(only(FindingKind.STALE_CARD).details())
                .containsExactly("since: 9.0", "rule: BAD-999", "parameter: no-such-number");
    }

    @Test
    void a_parameter_that_nothing_reads_is_named() {
        Parameter read = Parameters.standard().parameter("upkeep.gloss");
        Parameter unread = new Parameter("removal-rate.of-nobody", read.value(), read.source(), read.house());

        assertThat(Audit.unused(List.of(read, unread)))
                .extracting(AuditFinding::values)
                .containsExactly(List.of("removal-rate.of-nobody"));
    }

    /** The rules that read how much a floor is walked on, taken away. */
    @Test
    void a_field_that_no_rule_reads_is_named_and_none_is_left_by_the_shipped_rules() throws IOException {
        List<LoadedRule> withoutTraffic = ShippedRules.load().stream()
                .filter(rule ->
                        rule.conditions().stream().noneMatch(condition -> condition.type() == Site.FootTraffic.class))
                .toList();

        assertThat(Audit.unread(RuleMeanings.of(withoutTraffic)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.kind()).isEqualTo(FindingKind.UNREAD_FIELD);
                    assertThat(finding.values()).containsExactly("site.traffic");
                });
        assertThat(Audit.unread(RuleMeanings.of(ShippedRules.load()))).isEmpty();
    }

    @Test
    void forbidden_shapes_are_named() {
        assertThat(found(FindingKind.FORBIDDEN_SHAPE, "BAD-011").details()).containsExactly("not", "salience");
        assertThat(found(FindingKind.FORBIDDEN_SHAPE, "BAD-012").details()).containsExactly("not-one-contribution");
    }

    @Test
    void a_rule_that_reads_its_own_stage_names_the_fact() {
        assertThat(only(FindingKind.READS_OWN_STAGE).rules()).containsExactly("BAD-009");
        assertThat(only(FindingKind.READS_OWN_STAGE).details()).containsExactly("Sealing");
    }

    @Test
    void all_kinds_are_sown_and_without_the_faulty_rules_nothing_of_them_is_found() {
        Set<FindingKind> sown = FOUND.stream()
                .filter(finding -> !WITHOUT.contains(finding))
                .map(AuditFinding::kind)
                .collect(Collectors.toSet());
        sown.add(FindingKind.UNUSED_PARAMETER);
        sown.add(FindingKind.UNREAD_FIELD);

        assertThat(sown).containsExactlyInAnyOrderElementsOf(EnumSet.allOf(FindingKind.class));
        assertThat(WITHOUT)
                .noneMatch(finding -> finding.rules().stream().anyMatch(rule -> rule.startsWith("BAD")))
                .noneMatch(finding -> finding.explained().isEmpty());
    }

    private static AuditFinding only(FindingKind kind) {
        List<AuditFinding> all =
                FOUND.stream().filter(finding -> finding.kind() == kind).toList();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static AuditFinding found(FindingKind kind, String rule) {
        return FOUND.stream()
                .filter(finding -> finding.kind() == kind)
                .filter(finding ->
                        !finding.rules().isEmpty() && finding.rules().get(0).equals(rule))
                .findFirst()
                .orElseThrow();
    }

    /** What the engine makes of the survey that shows a finding, for the subject in which all its rules speak. */
    private static Outcome outcome(AuditFinding finding) {
        return answering.recommend(finding.survey().orElseThrow()).outcomes().stream()
                .filter(outcome -> outcome.topic().id().equals(finding.topicId()))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> rules(List<Reason> reasons) {
        return reasons.stream().map(Reason::rule).toList();
    }
}
