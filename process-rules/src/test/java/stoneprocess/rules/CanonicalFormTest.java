package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.engine.Chapters;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.WrittenRules;
import stoneprocess.rules.overlay.Overlay;

/** What the hash of a rulebase depends on, and what it does not. */
class CanonicalFormTest {
    private static final String VERSION = Rulebase.version();
    private static final List<Card> CARDS =
            Rulebase.standard().rules().stream().map(LoadedRule::card).toList();
    private static final List<String> CHAPTERS =
            Chapters.names().stream().map(Chapters::text).toList();
    private static final Parameters PARAMETERS = Parameters.standard();
    private static final Map<String, String> TABLES = CanonicalForm.shippedTables();
    private static final String SHIPPED = Rulebase.standard().stamp().hash();

    private static final String RULE = """
            // A chapter.
            package a

            import b.Fact
            import c.Other

            agenda-group "survey"

            rule "A title"
              @id("ABC-001") @because("A reason")
            when
              Fact( known == Kind.ONE, mayBe contains Kind.TWO )
            then
              insert( Topics.MOVE.need( Move.GO_ON ) );
            end
            """;

    @Test
    void the_parts_that_the_tests_change_make_up_the_hash_of_the_shipped_rulebase() {
        assertThat(hash(VERSION, CARDS, CHAPTERS, PARAMETERS, TABLES)).isEqualTo(SHIPPED);
    }

    static Stream<UnaryOperator<String>> layouts() {
        return Stream.of(
                text -> text.replace("import c.Other\n", ""),
                text -> text.replace("import b.Fact\nimport c.Other\n", "import c.Other\nimport b.*\n"),
                text -> text.replace("// A chapter.", "// Another remark, with a rule \"x\" when then end in it."),
                text -> text.replace("when\n", "when // as often as not\n  /* rule \"y\"\n  end */\n"),
                text -> text.replace("( known == Kind.ONE, mayBe", "(known==Kind.ONE ,\n\t\tmayBe"),
                text -> text.replace("\n", "\r\n"),
                text -> text + "\n// The end.\n");
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void remarks_space_and_imports_change_nothing(UnaryOperator<String> layout) {
        assertThat(layout.apply(RULE)).isNotEqualTo(RULE);
        assertThat(body(layout.apply(RULE))).isEqualTo(body(RULE));
    }

    @Test
    void no_remark_space_or_import_of_the_shipped_chapters_counts() {
        List<String> relaid = CHAPTERS.stream()
                .map(text -> text.replaceAll("(?m)^import .*$", "")
                        .replaceAll("(?m)^//.*$", "")
                        .replaceAll("(?m)^then$", "\n then // so\n"))
                .toList();
        List<String> reversed = new ArrayList<>(relaid);
        Collections.reverse(reversed);
        assertThat(hash(VERSION, CARDS, reversed, PARAMETERS, TABLES)).isEqualTo(SHIPPED);
    }

    static Stream<UnaryOperator<String>> otherBodies() {
        return Stream.of(
                text -> text.replace("Kind.ONE", "Kind.THREE"),
                text -> text.replace("known ==", "known !="),
                text -> text.replace("Fact( known", "Facts( known"),
                text -> text.replace(", mayBe contains Kind.TWO", ""),
                text -> text.replace("then\n", "  Fact( known == Kind.TWO )\nthen\n"),
                text -> text.replace(".need(", ".wish("),
                text -> text.replace("Move.GO_ON", "Move.STOP_AND_ASK"));
    }

    @ParameterizedTest
    @MethodSource("otherBodies")
    void every_word_of_a_condition_and_a_consequence_counts(UnaryOperator<String> change) {
        assertThat(body(change.apply(RULE))).isNotEqualTo(body(RULE));
    }

    @Test
    void signs_of_remarks_within_a_text_are_text() {
        String link = RULE.replace("Kind.ONE", "\"https://a /* b */ end \\\" c\"");
        assertThat(body(link))
                .contains("\"https://a /* b */ end \\\" c\"")
                .endsWith("Topics . MOVE . need ( Move . GO_ON ) ) ; ");
    }

    @Test
    void the_body_of_every_shipped_rule_counts() {
        WrittenRules written = WrittenRules.of(CHAPTERS);
        assertThat(CARDS)
                .hasSizeGreaterThan(700)
                .allSatisfy(card -> assertThat(written.body(card.id())).contains("then insert ("));
        String form =
                CanonicalForm.of(VERSION, CARDS, written, PARAMETERS, TABLES).toString();
        assertThat(CARDS).allSatisfy(card -> assertThat(form).contains("body=" + written.body(card.id())));
    }

    @Test
    void a_rule_that_stands_in_no_chapter_is_an_error_that_names_it() {
        assertThatThrownBy(() -> WrittenRules.of(List.of(RULE)).body("ABC-002"))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("ABC-002");
        assertThatThrownBy(() -> WrittenRules.of(List.of(RULE.replace("@id", "@number"))))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("A title");
    }

    static Stream<Card> otherCards() {
        Card card = CARDS.get(0);
        Citation other = Sources.standard().get("house");
        return Stream.of(
                card(card, card.title() + " still", card.because(), card.source(), card.topic()),
                card(card, card.title(), card.because() + " still", card.source(), card.topic()),
                card(card, card.title(), card.because(), other, card.topic()),
                card(card, card.title(), card.because(), card.source(), Topics.LITRES),
                new Card(
                        card.id(),
                        card.title(),
                        card.because(),
                        card.source(),
                        "9.9",
                        card.locked(),
                        card.offers(),
                        card.protects(),
                        card.differs(),
                        card.chapter(),
                        card.topic()),
                new Card(
                        card.id(),
                        card.title(),
                        card.because(),
                        card.source(),
                        card.since(),
                        !card.locked(),
                        List.of("LOCAL_REPAIR"),
                        card.protects(),
                        Optional.of("Others differ"),
                        card.chapter(),
                        card.topic()));
    }

    private static Card card(Card card, String title, String because, Citation source, Topic<?> topic) {
        return new Card(
                card.id(),
                title,
                because,
                source,
                card.since(),
                card.locked(),
                card.offers(),
                card.protects(),
                card.differs(),
                card.chapter(),
                topic);
    }

    @ParameterizedTest
    @MethodSource("otherCards")
    void every_part_of_a_card_counts(Card card) {
        List<Card> cards = new ArrayList<>(CARDS);
        cards.set(0, card);
        assertThat(hash(VERSION, cards, CHAPTERS, PARAMETERS, TABLES)).isNotEqualTo(SHIPPED);
    }

    @Test
    void the_id_of_a_rule_counts() {
        Card card = CARDS.get(0);
        List<Card> cards = new ArrayList<>(CARDS);
        cards.set(
                0,
                new Card(
                        "ZZZ-999",
                        card.title(),
                        card.because(),
                        card.source(),
                        card.since(),
                        card.locked(),
                        card.offers(),
                        card.protects(),
                        card.differs(),
                        card.chapter(),
                        card.topic()));
        List<String> chapters = CHAPTERS.stream()
                .map(text -> text.replace(card.id(), "ZZZ-999"))
                .toList();
        assertThat(hash(VERSION, cards, chapters, PARAMETERS, TABLES)).isNotEqualTo(SHIPPED);
    }

    @Test
    void a_rule_switched_off_a_number_and_the_version_count() {
        String who = "a test";
        String why = "to see the hash";
        Overlay lipped = Overlay.none().retune("lippage.high", Length.of(4, Unit.MILLIMETRE), who, why);
        assertThat(Stream.concat(
                        Stream.of(
                                SHIPPED,
                                Rulebase.with(lipped).stamp().hash(),
                                hash("9.9.9", CARDS, CHAPTERS, PARAMETERS, TABLES)),
                        Stream.of("PRE-001", "PRE-002")
                                .map(id -> Rulebase.with(Overlay.none().switchOff(id, who, why))
                                        .stamp()
                                        .hash())))
                .doesNotHaveDuplicates();
    }

    @Test
    void every_parameter_counts() {
        String form = CanonicalForm.of(VERSION, List.of(), WrittenRules.of(List.of()), PARAMETERS, Map.of())
                .toString();
        assertThat(PARAMETERS.all())
                .hasSizeGreaterThan(250)
                .allSatisfy(parameter -> assertThat(form).contains(lines(parameter)));
    }

    private static String lines(Parameter parameter) {
        return "parameter=" + parameter.name() + "\nvalue=" + parameter.value().print() + "\nsource="
                + parameter.source().id() + "\n";
    }

    static Stream<String> tables() {
        return TABLES.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void every_row_of_every_shipped_table_counts(String table) {
        String[] rows = TABLES.get(table).split("\n");
        for (int i = 0; i < rows.length; i++) {
            String[] changed = rows.clone();
            changed[i] = changed[i] + "x";
            Map<String, String> tables = new TreeMap<>(TABLES);
            tables.put(table, String.join("\n", changed));
            assertThat(CanonicalForm.of(VERSION, List.of(), WrittenRules.of(List.of()), PARAMETERS, tables)
                            .hash())
                    .as("%s, row %d", table, i)
                    .isNotEqualTo(CanonicalForm.of(VERSION, List.of(), WrittenRules.of(List.of()), PARAMETERS, TABLES)
                            .hash());
        }
    }

    @Test
    void every_table_of_core_is_part_of_the_hash_as_content_or_as_parameters() throws IOException {
        Path resources = Path.of("..", "process-core", "src", "main", "resources");
        try (Stream<Path> files = Files.walk(resources)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".tsv")))
                    .filteredOn(name -> !name.equals("parameters.tsv"))
                    .containsExactlyInAnyOrderElementsOf(TABLES.keySet());
        }
        assertThat(TABLES.get("stones.tsv")).contains("\n").doesNotContain("#").doesNotContain("\n\n");
    }

    private static String body(String chapter) {
        return WrittenRules.of(List.of(chapter)).body("ABC-001");
    }

    private static String hash(
            String version,
            List<Card> cards,
            List<String> chapters,
            Parameters parameters,
            Map<String, String> tables) {
        return CanonicalForm.of(version, cards, WrittenRules.of(chapters), parameters, tables)
                .hash();
    }
}
