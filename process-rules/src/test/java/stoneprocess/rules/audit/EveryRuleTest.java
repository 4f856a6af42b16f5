package stoneprocess.rules.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.rules.feature.BuildUp.TapSound;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Chapters;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.HandMadeRule;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;

class EveryRuleTest {
    private static final List<LoadedRule> RULES = ShippedRules.load();
    private static final List<RuleReport> REPORTS = new ArrayList<>();

    @BeforeAll
    static void check_all_rules() {
        RuleCheck check = RuleCheck.shipped();
        check.ids().forEach(id -> REPORTS.add(check.check(id)));
    }

    @Test
    void every_rule_fires_once_on_its_witness_and_says_the_same_alone_and_together() {
        assertThat(REPORTS).hasSameSizeAs(RULES).allSatisfy(report -> {
            assertThat(report.alone()).as(report.card().id() + " alone").hasSize(1);
            assertThat(report.together()).as(report.card().id() + " together").isEqualTo(report.alone());
        });
    }

    @Test
    void no_rule_fires_on_a_neighbour_of_its_witness() {
        assertThat(REPORTS)
                .allSatisfy(report -> assertThat(report.firedOnNeighbours())
                        .as(report.card().id())
                        .isEmpty());
    }

    /** These read a fact whatever its class: a limit that copies the fact, an option that is always open, good work. */
    @Test
    void every_rule_has_a_neighbour_that_does_not_fire_but_those_that_hold_always() {
        assertThat(REPORTS.stream()
                        .filter(report -> report.neighbours().isEmpty())
                        .map(report -> report.card().id()))
                .containsExactly(
                        "ACC-012", "CHK-001", "CHK-002", "CHK-003", "HAN-001", "HAN-003", "HAN-009", "SUR-001");
    }

    @Test
    void every_condition_that_refuses_a_class_has_a_neighbour() {
        assertThat(REPORTS).allSatisfy(report -> {
            for (int i = 0; i < report.conditions().size(); i++) {
                int position = i;
                boolean refuses = !report.conditions().get(i).refused().isEmpty();
                assertThat(report.neighbours().stream().anyMatch(neighbour -> neighbour.position() == position))
                        .as(report.card().id() + " "
                                + report.conditions().get(i).type())
                        .isEqualTo(refuses);
            }
        });
    }

    @Test
    void every_rule_contributes_to_the_topic_of_its_card() {
        assertThat(REPORTS)
                .allSatisfy(report -> assertThat(report.alone())
                        .as(report.card().id())
                        .allMatch(contribution ->
                                contribution.topic() == report.card().topic()));
    }

    @Test
    void no_rule_reads_what_its_own_or_a_later_stage_concludes() {
        for (LoadedRule rule : RULES) {
            Stage own = rule.card().topic().stage();
            for (FactPattern condition : rule.conditions()) {
                assertThat(Facts.topics(condition.type()))
                        .as(rule.id() + " reads " + condition.type().getSimpleName())
                        .extracting(Topic::stage)
                        .allMatch(stage -> stage.compareTo(own) < 0);
            }
        }
    }

    @Test
    void a_report_names_the_classes_that_make_a_rule_fire() {
        RuleReport report = RuleCheck.shipped().check("GON-001");

        assertThat(report.sound()).isTrue();
        assertThat(report.conditions()).hasSize(1);
        assertThat(report.conditions().get(0).accepted())
                .containsExactly(new TapSound(Set.of(Sounding.LOOSE)), new TapSound(Set.of(Sounding.values())));
        assertThat(report.neighbours())
                .extracting(RuleReport.Neighbour::fact)
                .containsExactly(
                        new TapSound(Set.of(Sounding.SOUND)),
                        new TapSound(Set.of(Sounding.FEW_HOLLOW)),
                        new TapSound(Set.of(Sounding.FEW_LOOSE)),
                        new TapSound(Set.of(Sounding.HOLLOW)));
    }

    @Test
    void a_rule_that_can_never_fire_is_named() {
        LoadedRule never = HandMadeRule.of(
                "BAD-001", Topics.UPKEEP, TapSound.class, sound -> false, sound -> Topics.UPKEEP.need());

        assertThatThrownBy(() -> RuleCheck.of(List.of(never)).check("BAD-001"))
                .isInstanceOf(RulebaseException.class)
                .hasMessage("Rule BAD-001 can never fire: no TapSound meets its conditions");
    }

    @Test
    void a_rule_that_says_another_thing_the_second_time_is_not_sound() {
        List<Sounding> asked = new ArrayList<>();
        LoadedRule moody = HandMadeRule.of("BAD-002", Topics.UPKEEP, TapSound.class, sound -> true, sound -> {
            asked.add(Sounding.SOUND);
            return asked.size() % 2 == 0 ? Topics.UPKEEP.need(Upkeep.MATS) : Topics.UPKEEP.need(Upkeep.DUST_MOP);
        });

        assertThat(RuleCheck.of(List.of(moody)).check("BAD-002").sound()).isFalse();
    }

    @Test
    void an_unknown_rule_is_refused_by_name() {
        assertThatThrownBy(() -> RuleCheck.shipped().check("XXX-999"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("XXX-999");
    }

    @Test
    void chapters_hold_flat_rules_only() {
        Pattern forbidden = Pattern.compile("\\b(salience|not|exists|forall|accumulate|collect|eval|from|insertLogical"
                + "|update|modify|delete|retract|no-loop|lock-on-active|global|query|function|declare)\\b");
        for (String name : Chapters.names()) {
            List<String> found = new ArrayList<>();
            Matcher matcher = forbidden.matcher(code(name));
            while (matcher.find()) {
                found.add(matcher.group());
            }
            assertThat(found).as(name).isEmpty();
        }
    }

    @Test
    void each_chapter_has_one_agenda_group_before_its_rules_and_it_is_the_stage_of_all_of_them() {
        List<String> seen = new ArrayList<>();
        for (String name : Chapters.names()) {
            String code = code(name);
            Matcher group = Pattern.compile("(?m)^agenda-group (\\S+)$").matcher(Chapters.text(name));
            assertThat(group.find()).as(name).isTrue();
            String stage = group.group(1).replace("\"", "");
            assertThat(code.split("agenda-group", -1)).as(name).hasSize(2);
            assertThat(code.indexOf("agenda-group")).as(name).isLessThan(code.indexOf("\nrule "));
            Matcher id = Pattern.compile("@id\\(\"([A-Z]{3}-\\d{3})\"\\)").matcher(Chapters.text(name));
            while (id.find()) {
                String rule = id.group(1);
                seen.add(rule);
                assertThat(RULES.stream()
                                .filter(loaded -> loaded.id().equals(rule))
                                .map(loaded -> loaded.card().chapter()))
                        .as(rule)
                        .containsExactly(stage);
            }
        }
        assertThat(seen).hasSameSizeAs(RULES);
    }

    @Test
    void the_check_of_chapters_finds_a_forbidden_word() {
        assertThat(withoutTextAndComments("// not here\nrule \"not here\"\nwhen\n  not A()\n"))
                .contains("not A()")
                .doesNotContain("here");
    }

    private static String code(String chapter) {
        return withoutTextAndComments(Chapters.text(chapter));
    }

    private static String withoutTextAndComments(String text) {
        return text.replaceAll("\"[^\"\n]*\"", "\"\"").replaceAll("(?m)//.*$", "");
    }
}
