package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.topic.Card;

/** Where the trade's own sources disagree, a named rule decides and says what others do. Common practice, no source. */
class PracticeDiffersTest {
    private static final Map<String, Card> CARDS =
            Advisor.standard().rulebase().cards().stream().collect(Collectors.toMap(Card::id, card -> card));

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "lippage 0.8 mm against 3 mm, CUT-011",
        "start at 220 against 50, CUT-003",
        "terrazzo 120 and a sealer against 800 and finer, END-010",
        "polished after 200 against polished after 3000, ACC-017",
        "gloss as one number against gain and spread, ACC-018",
        "each grade half the last against 2.7 times, SEQ-004",
        "honed from 80 against honed from 180, END-001",
        "satin as gloss against satin as image clarity, END-002",
        "three millimetres flattened against relaid, CUT-014",
        "a low reading: start finer and add passes against start coarser, CUT-029",
        "diamond pads every night against as often as traffic asks, UPK-004",
        "diamond pads every night on soft stone against none, UPK-006",
        "densifier before against after the cuts, DEN-001",
        "acid powder against neutral oxide, POW-001",
        "more against less water at 800, WAT-002",
        "concrete ground dry wherever there is an extractor against only without water, MET-001"
    })
    void a_disagreement_is_decided_by_a_rule_that_says_so(String disagreement, String rule) {
        assertThat(CARDS.get(rule).differs()).as(disagreement).isPresent();
    }

    @Test
    void what_others_do_is_said_in_a_full_sentence_of_its_own() {
        List<Card> differing = CARDS.values().stream()
                .filter(card -> card.differs().isPresent())
                .toList();
        assertThat(differing)
                .allSatisfy(card -> assertThat(card.differs().orElseThrow())
                        .as(card.id())
                        .startsWith("Some ")
                        .isNotEqualTo(card.because()));
    }
}
