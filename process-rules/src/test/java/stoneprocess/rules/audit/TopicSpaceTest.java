package stoneprocess.rules.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;

class TopicSpaceTest {
    private static final List<LoadedRule> RULES = ShippedRules.load();
    private static final Engine ENGINE = new Engine(RULES);
    private static final BigInteger FEW = BigInteger.valueOf(5000);
    private static final int SAMPLE = 2000;

    @Test
    void sizes_are_exact_and_every_class_is_told_apart() {
        for (Topic<?> topic : Topics.all()) {
            TopicSpace space = TopicSpace.of(topic, RULES);
            System.out.printf(
                    "%-16s %3d rules %3d facts %,30d combinations%n",
                    topic.id(), space.rules().size(), space.dimensions().size(), space.size());
            BigInteger product = BigInteger.ONE;
            for (TopicSpace.Dimension dimension : space.dimensions()) {
                product =
                        product.multiply(BigInteger.valueOf(dimension.classes().size()));
                Set<Object> members = new HashSet<>();
                dimension.classes().forEach(members::addAll);
                assertThat(Facts.space(dimension.type())).containsAll(members);
            }
            assertThat(space.size()).as(topic.id()).isEqualTo(product);
        }
    }

    @Test
    void all_facts_of_a_type_are_in_one_class_of_one_dimension() {
        for (Topic<?> topic : Topics.all()) {
            TopicSpace space = TopicSpace.of(topic, RULES);
            for (LoadedRule rule : space.rules()) {
                rule.conditions()
                        .forEach(condition -> assertThat(space.dimensions().stream()
                                        .filter(dimension -> dimension.type() == condition.type())
                                        .flatMap(dimension -> dimension.classes().stream())
                                        .flatMap(List::stream))
                                .as(rule.id())
                                .containsExactlyInAnyOrderElementsOf(Facts.space(condition.type())));
            }
        }
    }

    @Test
    void conditions_and_engine_fire_the_same_rules_on_every_combination_of_the_small_spaces() {
        int whole = 0;
        for (Topic<?> topic : Topics.all()) {
            TopicSpace space = TopicSpace.of(topic, RULES);
            if (space.size().compareTo(FEW) <= 0) {
                whole++;
                space.combinations()
                        .forEach(facts -> assertThat(space.firing(facts, ENGINE))
                                .as(topic.id() + " " + facts)
                                .isEqualTo(space.firing(facts)));
            }
        }
        assertThat(whole).isGreaterThan(10);
    }

    @Test
    void conditions_and_engine_fire_the_same_rules_on_a_sample_of_the_large_spaces() {
        for (Topic<?> topic : Topics.all()) {
            TopicSpace space = TopicSpace.of(topic, RULES);
            if (space.size().compareTo(FEW) > 0) {
                space.sample(new SplittableRandom(topic.id().hashCode()))
                        .limit(SAMPLE)
                        .forEach(facts -> assertThat(space.firing(facts, ENGINE))
                                .as(topic.id() + " " + facts)
                                .isEqualTo(space.firing(facts)));
            }
        }
    }

    @Test
    void merged_facts_fire_the_same_rules() {
        TopicSpace space = TopicSpace.of(Topics.FIRST_CUT, RULES);
        List<Object> facts = space.combination(BigInteger.ZERO);
        for (int i = 0; i < facts.size(); i++) {
            for (List<Object> merged : space.dimensions().get(i).classes()) {
                Set<List<String>> fired = new HashSet<>();
                for (Object fact : merged) {
                    List<Object> changed = new ArrayList<>(facts);
                    changed.set(i, fact);
                    fired.add(space.firing(changed));
                }
                assertThat(fired).hasSize(1);
            }
        }
    }

    @Test
    void the_stream_counts_the_index_up_without_repeating_a_combination() {
        TopicSpace space = TopicSpace.of(Topics.SEALER, RULES);

        List<List<Object>> all = space.combinations().toList();

        assertThat(all).hasSize(space.size().intValueExact()).doesNotHaveDuplicates();
        assertThat(all.get(17)).isEqualTo(space.combination(BigInteger.valueOf(17)));
    }

    @Test
    void an_index_outside_the_space_is_refused() {
        TopicSpace space = TopicSpace.of(Topics.SEALER, RULES);

        assertThatThrownBy(() -> space.combination(space.size()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("sealer.index");
        assertThatThrownBy(() -> space.combination(BigInteger.valueOf(-1))).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void a_topic_that_is_computed_has_the_empty_combination_only() {
        TopicSpace space = TopicSpace.of(Topics.GRIT_PATH, RULES);

        assertThat(space.size()).isEqualTo(BigInteger.ONE);
        assertThat(space.combinations()).containsExactly(List.of());
    }
}
