package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.json.Json;
import stoneprocess.core.topic.Topics;
import stoneprocess.examples.command.CommandLineTest.Ran;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.text.AuditText;
import stoneprocess.rules.text.document.Texts;

class AuditCommandTest {
    @Test
    void the_shipped_rules_leave_nothing_open_and_the_json_is_lossless() {
        Ran ran = Ran.command("", "audit", "--quick", "--json");

        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        AuditReport report = Json.AUDIT.read(ran.out());
        assertThat(report.open()).isEmpty();
        assertThat(report.findings())
                .isNotEmpty()
                .anyMatch(finding -> finding.survey().isPresent());
        assertThat(Json.AUDIT.print(report)).isEqualTo(ran.out());
    }

    @Test
    void an_open_finding_ends_with_1_and_is_told_before_what_may_stay() {
        AuditFinding open = new AuditFinding(
                FindingKind.UNREACHABLE_VALUE,
                Optional.of(Topics.SEALER),
                List.of(),
                List.of("impregnator"),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        AuditFinding stays = open.explainedBy("It is on the shelf");
        Rulebase rulebase = Rulebase.standard();
        AuditReport report = new AuditReport(rulebase.stamp(), List.of(), BigInteger.ONE, List.of(stays, open));
        String text = Texts.english().unwrapped(new AuditText(rulebase.cards()).document(report));

        assertThat(AuditCommand.exitCode(report)).isEqualTo(1);
        assertThat(AuditCommand.exitCode(new AuditReport(rulebase.stamp(), List.of(), BigInteger.ONE, List.of(stays))))
                .isZero();
        assertThat(text)
                .contains("Topic sealer: a value that no facts lead to\n  about    impregnator\n")
                .containsSubsequence("Open: 1", "Accepted, for the reason given: 1", "accepted It is on the shelf");
    }

    @Test
    void an_unknown_option_is_refused() {
        assertThat(Ran.command("", "audit", "--deep").exit()).isEqualTo(2);
    }
}
