package stoneprocess.rules.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.plan.HazardSheet;
import stoneprocess.core.plan.Precaution;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;
import stoneprocess.rules.audit.RuleCheck;
import stoneprocess.rules.feature.Equipment.MachineOnHand;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** Warnings against the triggers and the limits that stand beside the expert cases. */
class WarningsTest {
    private static final Path FOLDER = Path.of("src/test/resources/expert-cases");
    private static final Map<Hazard, List<LoadedRule>> RULES = rulesByHazard();

    /** The fact of one type, or of one machine, and the classes of which it may be one. */
    private record Part(String fact, Set<String> classes) {
        boolean possible(Map<String, Object> facts) {
            return ((Feature<?>) facts.get(fact))
                    .mayBe().stream()
                            .map(constant -> ((Enum<?>) constant).name())
                            .anyMatch(classes::contains);
        }
    }

    @ParameterizedTest
    @EnumSource(Hazard.class)
    void a_warning_is_raised_on_its_triggers_and_on_nothing_else(Hazard hazard) throws IOException {
        List<List<Part>> triggers = triggers().getOrDefault(hazard, List.of());
        assertThat(triggers).as("a hazard without a trigger").isNotEmpty();
        Set<String> names = new LinkedHashSet<>();
        triggers.forEach(trigger -> trigger.forEach(part -> names.add(part.fact())));
        RULES.get(hazard).forEach(rule -> rule.conditions().forEach(condition -> names.addAll(names(condition))));
        List<Map<String, Object>> rows = List.of(Map.of());
        for (String name : names) {
            List<Map<String, Object>> longer = new ArrayList<>();
            for (Map<String, Object> row : rows) {
                for (Object fact : space(name)) {
                    Map<String, Object> next = new LinkedHashMap<>(row);
                    next.put(name, fact);
                    longer.add(next);
                }
            }
            rows = longer;
        }
        int raised = 0;
        for (Map<String, Object> row : rows) {
            boolean wanted =
                    triggers.stream().anyMatch(trigger -> trigger.stream().allMatch(part -> part.possible(row)));
            boolean is = RULES.get(hazard).stream().anyMatch(rule -> fires(rule, row));
            assertThat(is).as(() -> hazard.key() + " on " + row.values()).isEqualTo(wanted);
            raised += is ? 1 : 0;
        }
        System.out.printf("Warning %s: %d of %d situations raise it%n", hazard.key(), raised, rows.size());
        assertThat(raised).isPositive();
    }

    @Test
    void every_limit_shows_the_published_figure_and_names_its_source() throws IOException {
        for (List<String> row : rows("warning-limits.tsv")) {
            Hazard hazard = Hazard.valueOf(row.get(0));
            String figure = row.get(1);
            HazardSheet sheet = HazardSheet.of(hazard);
            String precautions = Texts.english().word(Wording.sentences(sheet.precautions()));
            assertThat(sheet.limitSources().stream().map(Citation::id))
                    .as(hazard.key())
                    .contains(row.get(2));
            assertThat(Sources.standard().get(row.get(2)).print()).isNotBlank();
            if (!figure.equals("none")) {
                assertThat(Texts.english().word(Wording.of(hazard, "limit")) + precautions)
                        .as(hazard.key())
                        .containsPattern("(?<![0-9.])" + Pattern.quote(figure) + "(?![0-9])");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Hazard.class)
    void every_warning_names_who_is_exposed_what_to_do_and_who_decides(Hazard hazard) {
        for (String part : List.of("exposed", "limit")) {
            assertThat(Language.english().has(Wording.key(hazard) + "." + part))
                    .as(part)
                    .isTrue();
        }
        HazardSheet sheet = HazardSheet.of(hazard);
        assertThat(sheet.precautions()).isNotEmpty().doesNotHaveDuplicates();
        assertThat(sheet.decides()).isNotEmpty();
        assertThat(sheet.limitSources()).isNotEmpty();
    }

    @Test
    void a_warning_carries_precautions_deciders_and_every_source_as_data() {
        List<SafetyWarning> warnings =
                Advisor.standard().recommend(Floors.wornGranite()).warnings();
        assertThat(warnings).hasSizeGreaterThan(5).allSatisfy(warning -> {
            HazardSheet sheet = HazardSheet.of(warning.hazard());
            assertThat(warning.precautions()).isEqualTo(sheet.precautions());
            assertThat(warning.decides()).isEqualTo(sheet.decides());
            assertThat(warning.sources())
                    .isSorted()
                    .containsAll(sheet.limitSources().stream().map(Citation::id).toList())
                    .containsAll(RULES.get(warning.hazard()).stream()
                            .filter(rule -> warning.rules().contains(rule.id()))
                            .map(rule -> rule.card().source().id())
                            .toList());
        });
        assertThat(warnings)
                .filteredOn(warning -> warning.hazard() == Hazard.SILICA_DUST)
                .singleElement()
                .satisfies(warning -> {
                    assertThat(warning.sources()).contains("29-CFR-1910.1053", "29-CFR-1926.1153");
                    assertThat(warning.decides()).containsExactly(Role.HYGIENIST);
                    assertThat(warning.precautions()).contains(Precaution.WATER_FED_OR_COLLECTOR);
                });
    }

    private static boolean fires(LoadedRule rule, Map<String, Object> row) {
        return rule.conditions().stream()
                .allMatch(condition -> row.values().stream().anyMatch(condition::matches));
    }

    private static Map<Hazard, List<LoadedRule>> rulesByHazard() {
        RuleCheck check = RuleCheck.shipped();
        Map<Hazard, List<LoadedRule>> byHazard = new EnumMap<>(Hazard.class);
        Arrays.stream(Hazard.values()).forEach(hazard -> byHazard.put(hazard, new ArrayList<>()));
        for (LoadedRule rule : ShippedRules.load()) {
            if (rule.card().topic() == Topics.WARNINGS) {
                check.check(rule.id())
                        .alone()
                        .forEach(said -> said.values()
                                .forEach(hazard -> byHazard.get(hazard).add(rule)));
            }
        }
        return byHazard;
    }

    /** Names of the facts that a condition may match: one for each class of machine that it does not exclude. */
    private static Set<String> names(FactPattern condition) {
        if (condition.type() != MachineOnHand.class) {
            return Set.of(condition.type().getSimpleName());
        }
        return Facts.space(MachineOnHand.class).stream()
                .filter(condition::matches)
                .map(fact -> "MachineOnHand[" + ((MachineOnHand) fact).machine() + "]")
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<Object> space(String name) {
        if (name.startsWith("MachineOnHand[")) {
            MachineClass machine = MachineClass.valueOf(name.substring(name.indexOf('[') + 1, name.indexOf(']')));
            return Facts.space(MachineOnHand.class).stream()
                    .filter(fact -> ((MachineOnHand) fact).machine() == machine)
                    .toList();
        }
        Class<?> type = Facts.types().stream()
                .filter(one -> one.getSimpleName().equals(name))
                .findFirst()
                .orElseThrow();
        return Facts.space(type);
    }

    private static Map<Hazard, List<List<Part>>> triggers() throws IOException {
        Map<Hazard, List<List<Part>>> triggers = new EnumMap<>(Hazard.class);
        for (List<String> row : rows("warning-triggers.tsv")) {
            List<Part> parts = new ArrayList<>();
            for (String part : row.get(1).split(" & ")) {
                int at = part.indexOf('=');
                parts.add(new Part(
                        part.substring(0, at), Set.of(part.substring(at + 1).split("\\|"))));
            }
            triggers.computeIfAbsent(Hazard.valueOf(row.get(0)), hazard -> new ArrayList<>())
                    .add(parts);
        }
        return triggers;
    }

    /** The rows without the heading and the comments. */
    private static List<List<String>> rows(String file) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file)).stream()
                .skip(1)
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> List.of(line.split("\t")))
                .toList();
    }
}
