package stoneprocess.rules.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stoneprocess.core.source.Card;
import stoneprocess.rules.Rulebase;

class RulebookPageTest {
    private static final Path PAGE = Path.of("..", "docs", "rulebook.md");

    /** Run with {@code -Drulebook.write} to write the page anew. */
    @Test
    void the_page_in_the_docs_is_the_page_of_the_shipped_rules() throws IOException {
        String page = RulebookPage.markdown(Rulebase.standard());
        if (System.getProperty("rulebook.write") != null) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE))
                .as("docs/rulebook.md is stale; write it anew with -Drulebook.write")
                .isEqualTo(page);
    }

    @Test
    void every_rule_stands_on_the_page_with_its_reason() {
        Rulebase rulebase = Rulebase.standard();
        String page = RulebookPage.markdown(rulebase);
        for (Card card : rulebase.cards()) {
            assertThat(page).contains("**" + card.id() + "** " + card.title()).contains(card.because());
        }
    }
}
