package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.json.AuditJson;
import stoneprocess.examples.command.CommandLineTest.Ran;

class AuditCommandTest {
    @Test
    void the_shipped_rules_leave_nothing_open_and_the_json_is_lossless() {
        Ran ran = Ran.command("", "audit", "--quick", "--json");

        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        AuditReport report = AuditJson.read(ran.out());
        assertThat(report.open()).isEmpty();
        assertThat(report.findings())
                .isNotEmpty()
                .anyMatch(finding -> finding.survey().isPresent());
        assertThat(AuditJson.print(report)).isEqualTo(ran.out());
    }

    @Test
    void an_unknown_option_is_refused() {
        assertThat(Ran.command("", "audit", "--deep").exit()).isEqualTo(2);
    }
}
