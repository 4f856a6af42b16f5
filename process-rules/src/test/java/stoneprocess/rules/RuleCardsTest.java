package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.engine.Chapters;

class RuleCardsTest {
    private static final List<Card> CARDS = Rulebase.standard().cards();

    /** A limit of law or of a standard: acidity, an angle of reading, a load in bar, a permitted level. */
    private static final Pattern REGULATED = Pattern.compile("\\bpH\\b|\\bdegrees\\b|\\bbar\\b|\\bunits at\\b");

    static Stream<Card> cards() {
        return CARDS.stream();
    }

    static Stream<Card> locked() {
        return CARDS.stream().filter(Card::locked);
    }

    @ParameterizedTest
    @MethodSource("cards")
    void every_rule_has_a_full_card(Card card) {
        assertThat(card.title()).isNotBlank().doesNotEndWith(".");
        assertThat(card.because()).isNotBlank().doesNotEndWith(".");
        assertThat(card.since()).matches("\\d+\\.\\d+");
        assertThat(Sources.standard().get(card.source().id())).isEqualTo(card.source());
        assertThat(card.topic().stage().key()).isEqualTo(card.chapter());
        assertThat(Stream.of(Stage.values()).map(Stage::key)).contains(card.chapter());
    }

    @ParameterizedTest
    @MethodSource("cards")
    void title_and_reason_start_with_a_capital_and_say_two_different_things(Card card) {
        assertThat(Character.isUpperCase(card.title().charAt(0))
                        || Character.isDigit(card.title().charAt(0)))
                .isTrue();
        assertThat(Character.isUpperCase(card.because().charAt(0))
                        || Character.isDigit(card.because().charAt(0)))
                .isTrue();
        assertThat(card.because()).isNotEqualToIgnoringCase(card.title());
    }

    @ParameterizedTest
    @MethodSource("cards")
    void every_offer_of_a_rule_is_an_offer_that_the_plan_knows(Card card) {
        assertThat(card.offers())
                .doesNotHaveDuplicates()
                .allSatisfy(
                        offer -> assertThatCode(() -> OfferKind.valueOf(offer)).doesNotThrowAnyException());
    }

    /** Topics of following the work and of faults; what is known of those is nearly all common practice. */
    private static final Set<String> ON_SITE = Stream.of(
                    Topics.FINDINGS, Topics.CAUSES, Topics.MOVE, Topics.SITE_CHECKS, Topics.MENDS, Topics.ASKS)
            .map(Topic::id)
            .collect(Collectors.toUnmodifiableSet());

    @Test
    void ids_and_titles_are_unique_and_each_rule_of_the_chapters_is_there() {
        assertThat(CARDS).extracting(Card::id).doesNotHaveDuplicates();
        assertThat(CARDS).extracting(Card::title).doesNotHaveDuplicates();
        long written = Chapters.names().stream()
                .flatMap(name -> Chapters.text(name).lines())
                .filter(line -> line.startsWith("rule \""))
                .count();
        assertThat(CARDS).hasSize((int) written);
    }

    @ParameterizedTest
    @MethodSource("locked")
    void every_locked_safety_rule_cites_a_publication(Card card) {
        assertThat(card.source().published()).isTrue();
    }

    @Test
    void every_rule_that_speaks_of_a_regulated_limit_cites_a_publication() {
        List<Card> limits = CARDS.stream()
                .filter(card ->
                        REGULATED.matcher(card.title() + " " + card.because()).find())
                .toList();
        assertThat(limits)
                .extracting(Card::id)
                .contains("SLU-003", "SAF-015", "CHK-005", "CHK-006", "CHK-007", "WGT-003");
        assertThat(limits)
                .allSatisfy(card -> assertThat(card.source().published())
                        .as(card.id() + " " + card.title())
                        .isTrue());
    }

    @Test
    void every_hazard_is_raised_by_locked_rules_only() {
        assertThat(CARDS.stream().filter(card -> card.topic() == Topics.WARNINGS))
                .isNotEmpty()
                .allSatisfy(card -> assertThat(card.locked()).isTrue());
    }

    @Test
    void the_shares_of_evidence_are_printed() {
        Map<EvidenceGrade, Long> all = byGrade(CARDS);
        Map<EvidenceGrade, Long> lockedOnly = byGrade(locked().toList());
        System.out.println("Rules by grade of their source: " + all);
        System.out.println("Locked safety rules by grade of their source: " + lockedOnly);

        assertThat(all.values().stream().mapToLong(Long::longValue).sum()).isEqualTo(CARDS.size());
        List<Card> planning = CARDS.stream()
                .filter(card -> !ON_SITE.contains(card.topic().id()))
                .toList();
        assertThat(byGrade(planning).getOrDefault(EvidenceGrade.PUBLISHED, 0L))
                .as("a quarter of the rules that make a plan rest on something that was read")
                .isGreaterThanOrEqualTo(planning.size() / 4);
        assertThat(lockedOnly).containsOnlyKeys(EvidenceGrade.PUBLISHED);
    }

    private static Map<EvidenceGrade, Long> byGrade(List<Card> cards) {
        return new TreeMap<>(cards.stream().collect(Collectors.groupingBy(Card::grade, Collectors.counting())));
    }
}
