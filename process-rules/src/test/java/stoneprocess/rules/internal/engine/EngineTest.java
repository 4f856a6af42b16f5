package stoneprocess.rules.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.drools.model.DSL.declarationOf;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.drools.model.Drools;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.source.Sources;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Protection;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.feature.Site.HistoricFabric;

/** Tiny rulebases, so that what the shipped one never does can be seen to be caught. */
class EngineTest {
    private static final String PACKAGE = "stoneprocess.rules.chapter.test";
    private static final HistoricFabric FACT = new HistoricFabric(Set.of(Historic.YES));

    @Test
    void a_firing_carries_the_card_the_contribution_and_the_matched_facts() {
        Engine engine = new Engine(List.of(made("TST-901", drools -> drools.insert(hold()))));
        try (EngineRun run = engine.start()) {
            run.insert(FACT);
            List<Firing> firings = run.fire(Stage.GO_NO_GO);
            assertThat(firings).hasSize(1);
            assertThat(firings.get(0).card().id()).isEqualTo("TST-901");
            assertThat(firings.get(0).contribution()).isEqualTo(hold());
            assertThat(firings.get(0).facts()).containsExactly(FACT);
        }
    }

    @Test
    void a_rule_fires_in_the_stage_of_its_chapter_only() {
        Engine engine = new Engine(List.of(made("TST-901", drools -> drools.insert(hold()))));
        try (EngineRun run = engine.start()) {
            run.insert(FACT);
            assertThat(run.fire(Stage.SURVEY)).isEmpty();
            assertThat(run.fire(Stage.GO_NO_GO)).hasSize(1);
            assertThat(run.fire(Stage.GO_NO_GO))
                    .as("not twice on the same facts")
                    .isEmpty();
        }
    }

    @Test
    void two_runs_of_one_engine_do_not_see_each_others_facts() {
        Engine engine = new Engine(List.of(made("TST-901", drools -> drools.insert(hold()))));
        try (EngineRun one = engine.start();
                EngineRun two = engine.start()) {
            one.insert(FACT);
            assertThat(two.fire(Stage.GO_NO_GO)).isEmpty();
            assertThat(one.fire(Stage.GO_NO_GO)).hasSize(1);
        }
        try (EngineRun later = engine.start()) {
            assertThat(later.fire(Stage.GO_NO_GO)).isEmpty();
        }
    }

    @Test
    void a_rule_that_contributes_nothing_is_an_error_that_names_it() {
        assertFails(made("TST-901", drools -> {}), "TST-901", "0 contributions");
    }

    @Test
    void a_rule_that_contributes_twice_is_an_error_that_names_it() {
        assertFails(
                made("TST-901", drools -> {
                    drools.insert(hold());
                    drools.insert(Topics.VERDICT.need(Verdict.REFUSE));
                }),
                "TST-901",
                "2 contributions");
    }

    @Test
    void a_rule_that_inserts_something_else_is_an_error_that_names_it() {
        assertFails(made("TST-901", drools -> drools.insert("a text")), "TST-901", "no contribution");
    }

    @Test
    void a_rule_that_speaks_to_another_topic_than_its_card_is_an_error_that_names_both() {
        assertFails(
                made("TST-901", drools -> drools.insert(Topics.BONDS.veto())), "TST-901", "bonds", Topics.VERDICT.id());
    }

    @Test
    void a_rule_that_throws_is_an_error_that_names_it_and_keeps_the_cause() {
        Engine engine = new Engine(List.of(made("TST-901", drools -> {
            throw new IllegalStateException("out of sorts");
        })));
        try (EngineRun run = engine.start()) {
            run.insert(FACT);
            assertThatThrownBy(() -> run.fire(Stage.GO_NO_GO))
                    .isInstanceOf(RulebaseException.class)
                    .hasMessageContaining("made TST-901")
                    .hasRootCauseMessage("out of sorts");
        }
    }

    @Test
    void rules_that_never_end_are_stopped_at_the_cap() {
        Variable<Contribution> any = declarationOf(Contribution.class);
        Rule endless = rule(PACKAGE, "endless")
                .attribute(Rule.Attribute.AGENDA_GROUP, Stage.GO_NO_GO.key())
                .build(pattern(any), on(any).execute((drools, contribution) -> drools.insert(hold())));
        Engine engine = new Engine(List.of(loaded("TST-902", endless)));
        try (EngineRun run = engine.start()) {
            run.insert(hold());
            assertThatThrownBy(() -> run.fire(Stage.GO_NO_GO))
                    .isInstanceOf(RulebaseException.class)
                    .hasMessageContaining("go-no-go")
                    .hasMessageContaining(Integer.toString(EngineRun.CAP));
        }
    }

    @Test
    void an_engine_of_another_version_than_the_rules_is_an_error_that_names_both() {
        assertThatThrownBy(() -> ShippedRules.requireVersion("10.2.0", "9.44.0.Final"))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("10.2.0")
                .hasMessageContaining("9.44.0.Final");
        ShippedRules.requireVersion("10.2.0", "10.2.0");
    }

    @Test
    void conditions_can_be_asked_about_a_fact_without_a_session() {
        LoadedRule historic = ShippedRules.load().stream()
                .filter(rule -> rule.id().equals("BND-007"))
                .findFirst()
                .orElseThrow();
        assertThat(historic.conditions()).extracting(FactPattern::type).containsExactly(HistoricFabric.class);
        FactPattern condition = historic.conditions().get(0);
        assertThat(condition.matches(FACT)).isTrue();
        assertThat(condition.matches(new HistoricFabric(Set.of(Historic.NO, Historic.YES))))
                .isTrue();
        assertThat(condition.matches(new HistoricFabric(Set.of(Historic.NO)))).isFalse();
        assertThat(condition.matches("another type")).isFalse();
    }

    @Test
    void shipped_rules_are_ordered_by_id() {
        assertThat(ShippedRules.load())
                .extracting(LoadedRule::id)
                .isSortedAccordingTo(Comparator.naturalOrder())
                .doesNotHaveDuplicates();
    }

    @Test
    void every_chapter_file_is_there_with_line_feeds_only() {
        assertThat(Chapters.names())
                .hasSize(13)
                .allSatisfy(name ->
                        assertThat(Chapters.text(name)).contains("agenda-group").doesNotContain("\r"));
        assertThatThrownBy(() -> Chapters.text("90-none.drl"))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("90-none.drl");
    }

    private static void assertFails(LoadedRule rule, String... parts) {
        Engine engine = new Engine(List.of(rule));
        try (EngineRun run = engine.start()) {
            run.insert(FACT);
            assertThatThrownBy(() -> run.fire(Stage.GO_NO_GO))
                    .isInstanceOf(RulebaseException.class)
                    .satisfies(problem -> Arrays.stream(parts)
                            .forEach(part -> assertThat(problem).hasMessageContaining(part)));
        }
        try (EngineRun next = engine.start()) {
            assertThat(next.fire(Stage.GO_NO_GO))
                    .as("nothing is left of the failed run")
                    .isEmpty();
        }
    }

    private static Contribution hold() {
        return Topics.VERDICT.need(Verdict.HOLD);
    }

    private static LoadedRule made(String id, Consumer<Drools> consequence) {
        Variable<HistoricFabric> historic = declarationOf(HistoricFabric.class);
        Rule rule = rule(PACKAGE, "made " + id)
                .attribute(Rule.Attribute.AGENDA_GROUP, Stage.GO_NO_GO.key())
                .build(pattern(historic), on(historic).execute((drools, fact) -> consequence.accept(drools)));
        return loaded(id, rule);
    }

    private static LoadedRule loaded(String id, Rule rule) {
        Card card = new Card(
                id,
                rule.getName(),
                "because it is a test",
                Sources.standard().get("practice"),
                "0.1",
                false,
                List.of(),
                Optional.of(Protection.FABRIC),
                Optional.empty(),
                Stage.GO_NO_GO.key(),
                Topics.VERDICT);
        return new LoadedRule(card, FactPattern.of(id, rule.getView().getSubConditions()), rule);
    }
}
