package stoneprocess.rules.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.validation.DMNValidator;
import org.kie.dmn.validation.DMNValidatorFactory;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Condition.Scratches;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.StoneTraits.CuttingHardness;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.CompiledRules;
import stoneprocess.rules.internal.engine.HandMadeRule;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.RuleMutant;
import stoneprocess.rules.internal.engine.ShippedRules;

/**
 * The rules for scratches and hardness as a decision table, as shipped and with faults, before the analyser of decision
 * tables of the rule engine's vendor and before our audit. Runs in the profile {@code analyser} only, since the analyser
 * brings a compiler of rules.
 */
class StartGritTableTest {
    private static final Set<Class<?>> READ = Set.of(Scratches.class, CuttingHardness.class);
    private static final Map<String, String> KINDS = Map.of(
            "DECISION_TABLE_GAP", "gap",
            "DECISION_TABLE_OVERLAP_HITPOLICY_UNIQUE", "overlap",
            "DECISION_TABLE_1STNFVIOLATION", "duplicates",
            "DECISION_TABLE_SUBSUMPTION_RULE", "subsumption",
            "DECISION_TABLE_MASKED_RULE", "masked");
    private static final List<LoadedRule> TABLE = ShippedRules.load().stream()
            .filter(rule -> rule.card().topic() == Topics.FIRST_CUT)
            .filter(rule -> rule.conditions().stream().allMatch(condition -> READ.contains(condition.type())))
            .filter(rule -> says(rule).kind() == ContributionKind.NEED)
            .toList();

    /**
     * A table with a fault.
     *
     * @param fault what was done to it
     * @param rules its rows
     * @param unique what the analyser says beyond the shipped table, when only one row may speak
     * @param priority the same, when the coarsest cut goes first, as the topic has it
     * @param audit what the audit says beyond the shipped table: kinds of finding with their rules, or values
     */
    private record Variant(
            String fault, List<LoadedRule> rules, List<String> unique, List<String> priority, List<String> audit) {}

    @Test
    void the_audit_finds_what_the_analyser_finds() throws IOException {
        assertThat(TABLE.stream().map(LoadedRule::id))
                .containsExactly("CUT-002", "CUT-003", "CUT-004", "CUT-005", "CUT-006", "CUT-007", "CUT-008");
        List<String> unique = analyser(TABLE, "UNIQUE");
        List<String> priority = analyser(TABLE, "PRIORITY");
        List<String> audit = audit(TABLE);
        // No row speaks of an unscratched floor: the topic then falls to its first value, which is to cut nothing.
        assertThat(priority).containsExactly("gap [none, -]");
        assertThat(unique).containsExactly("gap [none, -]", "overlap", "overlap");
        // These cuts are asked for by other rules: lippage, dullness.
        assertThat(audit).containsExactly("unreachable-value heavy-grind", "unreachable-value refresh");
        StringBuilder page = new StringBuilder("| fault | analyser, one row may speak | analyser, rows by priority"
                + " | our audit |\n|---|---|---|---|\n");
        page.append(row("none", unique, priority, audit));
        for (Variant variant : variants()) {
            List<String> byUnique = beyond(unique, analyser(variant.rules(), "UNIQUE"));
            List<String> byPriority = beyond(priority, analyser(variant.rules(), "PRIORITY"));
            List<String> byAudit = beyond(audit, audit(variant.rules()));
            page.append(row(variant.fault(), byUnique, byPriority, byAudit));
            assertThat(byUnique).as(variant.fault()).isEqualTo(variant.unique());
            assertThat(byPriority).as(variant.fault()).isEqualTo(variant.priority());
            assertThat(byAudit).as(variant.fault()).isEqualTo(variant.audit()).isNotEmpty();
        }
        System.out.println(page);
        Files.createDirectories(Path.of("target", "analyser"));
        Files.writeString(Path.of("target", "analyser", "table.md"), page);
    }

    private static String row(String fault, List<String> unique, List<String> priority, List<String> audit) {
        return Stream.of(unique, priority, audit)
                .map(found -> found.isEmpty() ? "nothing" : String.join(", ", found))
                .collect(Collectors.joining(" | ", "| " + fault + " | ", " |\n"));
    }

    /** What is found more often than in the shipped table. */
    private static List<String> beyond(List<String> shipped, List<String> found) {
        List<String> more = new ArrayList<>(found);
        shipped.forEach(more::remove);
        return more;
    }

    private static List<Variant> variants() {
        LoadedRule deep = HandMadeRule.of(
                "BAD-005",
                Topics.FIRST_CUT,
                Scratches.class,
                fact -> fact.known() == ScratchClass.DEEP,
                fact -> Topics.FIRST_CUT.needAtLeast(Cut.GRIND));
        return List.of(
                new Variant(
                        "a row twice",
                        with(TABLE, look("BAD-001", ScratchClass.FELT_BY_NAIL, Cut.HONE)),
                        List.of("duplicates", "overlap"),
                        List.of("duplicates"),
                        List.of("duplicate CUT-003 BAD-001")),
                new Variant(
                        "a narrower row that says the same",
                        with(
                                TABLE,
                                HandMadeRule.of(
                                        "BAD-002",
                                        Topics.FIRST_CUT,
                                        Scratches.class,
                                        fact -> fact.known() == ScratchClass.FELT_BY_NAIL,
                                        CuttingHardness.class,
                                        fact -> fact.known() == Hardness.SOFT,
                                        () -> Topics.FIRST_CUT.needAtLeast(Cut.HONE))),
                        List.of("overlap", "subsumption"),
                        List.of("subsumption"),
                        List.of("subsumed BAD-002 CUT-003")),
                new Variant(
                        "a row that another always outdoes",
                        with(TABLE, look("BAD-003", ScratchClass.GOUGED, Cut.FINE_HONE)),
                        List.of("duplicates", "overlap"),
                        List.of("duplicates", "masked"),
                        List.of("always-outweighed BAD-003")),
                new Variant(
                        "two rows that cannot both be",
                        with(
                                without("CUT-007"),
                                deep,
                                HandMadeRule.of(
                                        "BAD-004",
                                        Topics.FIRST_CUT,
                                        Scratches.class,
                                        fact -> fact.known() == ScratchClass.DEEP,
                                        CuttingHardness.class,
                                        fact -> fact.known() == Hardness.MEDIUM,
                                        () -> Topics.FIRST_CUT.need(Cut.NONE))),
                        List.of("overlap"),
                        List.of("masked"),
                        List.of("impasse-without-offer BAD-004 BAD-005", "undeclared-conflict BAD-004 BAD-005")),
                new Variant(
                        "a row left out",
                        without("CUT-002"),
                        List.of("gap [[none .. seen], -]"),
                        List.of("gap [[none .. seen], -]"),
                        List.of("unreachable-value fine-hone")));
    }

    private static List<LoadedRule> without(String id) {
        return TABLE.stream().filter(rule -> !rule.id().equals(id)).toList();
    }

    private static List<LoadedRule> with(List<LoadedRule> rules, LoadedRule... more) {
        return Stream.concat(rules.stream(), Stream.of(more)).toList();
    }

    private static LoadedRule look(String id, ScratchClass look, Cut coarsest) {
        return HandMadeRule.of(
                id,
                Topics.FIRST_CUT,
                Scratches.class,
                fact -> fact.known() == look,
                fact -> Topics.FIRST_CUT.needAtLeast(coarsest));
    }

    private static Contribution says(LoadedRule rule) {
        List<Object> facts = rule.conditions().stream()
                .map(condition -> Facts.space(condition.type()).stream().filter(condition::matches).findFirst().orElseThrow())
                .toList();
        return RuleMutant.said(rule, facts).get(0);
    }

    private static List<String> audit(List<LoadedRule> rules) {
        return Audit.of(new CompiledRules(rules, List.of()), Parameters.standard())
                .run(List.of(Topics.FIRST_CUT), AuditProgress.silent())
                .findings()
                .stream()
                .filter(finding -> finding.topic().equals(Topics.FIRST_CUT.id()))
                .map(finding -> finding.kind().key() + " "
                        + String.join(" ", finding.rules().isEmpty() ? finding.values() : finding.rules()))
                .distinct()
                .sorted()
                .toList();
    }

    /** The kinds of message, and where a gap is. */
    private static List<String> analyser(List<LoadedRule> rules, String hitPolicy) {
        DMNValidator validator = DMNValidatorFactory.newValidator();
        try {
            return validator
                    .validateUsing(
                            DMNValidator.Validation.VALIDATE_SCHEMA,
                            DMNValidator.Validation.VALIDATE_MODEL,
                            DMNValidator.Validation.ANALYZE_DECISION_TABLE)
                    .theseModels(new StringReader(model(rules, hitPolicy)))
                    .stream()
                    .map(StartGritTableTest::kind)
                    .sorted()
                    .toList();
        } finally {
            validator.dispose();
        }
    }

    private static String kind(DMNMessage message) {
        String type = message.getMessageType().name();
        if (!type.startsWith("DECISION_TABLE_")) {
            throw new IllegalStateException("The model is not sound: " + message.getText());
        }
        String kind = KINDS.getOrDefault(type, type);
        Matcher gap = Pattern.compile("Gap detected: (\\[.*?\\]) \\(").matcher(message.getText());
        return gap.find() ? kind + " " + gap.group(1).replace("\"", "").replace("[ ", "[").replace(" ]", "]") : kind;
    }

    private static String model(List<LoadedRule> rules, String hitPolicy) {
        StringBuilder rows = new StringBuilder();
        for (LoadedRule rule : rules) {
            rows.append("<rule id=\"").append(rule.id()).append("\">")
                    .append(input(rule, Scratches.class))
                    .append(input(rule, CuttingHardness.class))
                    .append("<outputEntry><text>\"").append(says(rule).values().get(0).key()).append("\"</text></outputEntry></rule>\n");
        }
        return """
                <definitions xmlns="https://www.omg.org/spec/DMN/20191111/MODEL/" id="start-grit" name="Start grit" namespace="start-grit">
                  <itemDefinition name="look"><typeRef>string</typeRef><allowedValues><text>%1$s</text></allowedValues></itemDefinition>
                  <itemDefinition name="hardness"><typeRef>string</typeRef><allowedValues><text>%2$s</text></allowedValues></itemDefinition>
                  <itemDefinition name="cut"><typeRef>string</typeRef><allowedValues><text>%3$s</text></allowedValues></itemDefinition>
                  <inputData id="in-look" name="Scratches"><variable name="Scratches" typeRef="look"/></inputData>
                  <inputData id="in-hardness" name="Hardness"><variable name="Hardness" typeRef="hardness"/></inputData>
                  <decision id="first-cut" name="First cut"><variable name="First cut" typeRef="cut"/>
                    <informationRequirement><requiredInput href="#in-look"/></informationRequirement>
                    <informationRequirement><requiredInput href="#in-hardness"/></informationRequirement>
                    <decisionTable hitPolicy="%4$s" outputLabel="First cut">
                      <input label="Scratches"><inputExpression typeRef="look"><text>Scratches</text></inputExpression><inputValues><text>%1$s</text></inputValues></input>
                      <input label="Hardness"><inputExpression typeRef="hardness"><text>Hardness</text></inputExpression><inputValues><text>%2$s</text></inputValues></input>
                      <output><outputValues><text>%3$s</text></outputValues></output>
                      %5$s
                    </decisionTable>
                  </decision>
                </definitions>
                """
                .formatted(
                        keys(ScratchClass.values()),
                        keys(Hardness.values()),
                        keys(Cut.HEAVY_GRIND, Cut.GRIND, Cut.FINE_GRIND, Cut.COARSE_HONE, Cut.HONE, Cut.FINE_HONE, Cut.REFRESH, Cut.NONE),
                        hitPolicy,
                        rows);
    }

    /** The classes with which a rule speaks when they are known; all are written as a dash. */
    private static String input(LoadedRule rule, Class<?> type) {
        List<String> accepted = Facts.space(type).stream()
                .map(fact -> (Feature<?>) fact)
                .filter(fact -> fact.known() != null)
                .filter(fact -> rule.conditions().stream().filter(condition -> condition.type() == type).allMatch(condition -> condition.matches(fact)))
                .map(fact -> "\"" + fact.known().key() + "\"")
                .toList();
        boolean all = rule.conditions().stream().noneMatch(condition -> condition.type() == type);
        return "<inputEntry><text>" + (all ? "-" : String.join(", ", accepted)) + "</text></inputEntry>";
    }

    private static String keys(Term... terms) {
        return Stream.of(terms).map(term -> "\"" + term.key() + "\"").collect(Collectors.joining(", "));
    }
}
