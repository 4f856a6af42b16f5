package stoneprocess.core.topic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.source.Sources;

class CardTest {
    private static final Citation SOURCE = Sources.standard().get("ASTM-C503");

    private static Card card(
            String id, String title, String because, String since, String chapter, List<String> offers) {
        return new Card(
                id,
                title,
                because,
                SOURCE,
                since,
                false,
                offers,
                Optional.of(Protection.FABRIC),
                Optional.empty(),
                chapter,
                Topics.VERDICT);
    }

    @Test
    void a_card_is_as_firm_as_its_source() {
        assertThat(card("GON-001", "t", "b", "0.1", "c", List.of()).grade()).isEqualTo(EvidenceGrade.SECOND_HAND);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "GON-1", "gon-001", "GONE-001", "GON001", "GON-0012"})
    void an_id_of_another_form_is_refused(String id) {
        assertThatThrownBy(() -> card(id, "t", "b", "0.1", "c", List.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("rule.id: '" + id + "'");
    }

    @ParameterizedTest
    @CsvSource({
        "'', b, 0.1, c, title",
        "t, ' ', 0.1, c, because",
        "t, b, '', c, since",
        "t, b, 0.1, '', chapter",
    })
    void a_card_with_an_empty_part_is_refused(String title, String because, String since, String chapter, String part) {
        assertThatThrownBy(() -> card("GON-001", title, because, since, chapter, List.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("rule GON-001." + part + ": ");
    }

    @Test
    void offers_that_the_caller_changes_later_do_not_change_the_card() {
        List<String> offers = new ArrayList<>(List.of("leave-it"));
        Card card = card("GON-001", "t", "b", "0.1", "c", offers);
        offers.clear();
        assertThat(card.offers()).containsExactly("leave-it");
    }

    @Test
    void a_rule_that_speaks_to_the_verdict_says_what_it_protects() {
        assertThatThrownBy(() -> new Card(
                        "GON-001",
                        "t",
                        "b",
                        SOURCE,
                        "0.1",
                        false,
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        "c",
                        Topics.VERDICT))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("GON-001.protects");
    }
}
