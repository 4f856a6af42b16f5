package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.json.Form;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Unit;
import stoneprocess.rules.overlay.Overlay;

class RulesJsonTest {
    private static final String OVERLAY = """
            {"format":"overlay/1",
             "switched-off":[{"rule":"FIN-001","who":"trainer","why":"not in this house"}],
             "retuned":[{"parameter":"lippage.high","value":{"value":0.1,"unit":"in"},
                         "who":"floor manager","why":"our owners see less"}]}
            """;

    @Test
    void a_house_keeps_its_rules_in_a_file() {
        Overlay overlay = RulesJson.OVERLAY.read(OVERLAY);
        assertThat(overlay)
                .isEqualTo(Overlay.none()
                        .switchOff("FIN-001", "trainer", "not in this house")
                        .retune("lippage.high", Length.of(0.1, Unit.INCH), "floor manager", "our owners see less"));
        assertThat(RulesJson.OVERLAY.read(RulesJson.OVERLAY.print(overlay))).isEqualTo(overlay);
        assertThat(Rulebase.with(overlay).stamp().switchedOff()).containsExactly("FIN-001");
    }

    @Test
    void a_house_rule_without_a_reason_is_refused_with_its_path() {
        assertThatThrownBy(() -> RulesJson.OVERLAY.read(OVERLAY.replace("not in this house", " ")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("switched-off[0].why: ''");
        assertThatThrownBy(() -> RulesJson.OVERLAY.read(OVERLAY.replace("\"in\"", "\"ells\"")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("retuned[0].value.unit: 'ells' is not accepted; accepted: one of mm, um");
    }

    @Test
    void every_rule_survives_printing_and_reading() {
        RuleSheets sheets = RuleSheets.of(Rulebase.standard());
        assertThat(sheets.rules()).hasSameSizeAs(Rulebase.standard().cards());
        String json = RulesJson.RULES.print(sheets);
        assertThat(RulesJson.RULES.read(json)).isEqualTo(sheets);
        assertThat(RulesJson.RULES.print(RulesJson.RULES.read(json))).isEqualTo(json);
    }

    /** Run with {@code -Dschema.write} to write the files anew. */
    @ParameterizedTest
    @MethodSource("stoneprocess.rules.RulesJson#all")
    void the_files_of_the_schemas_are_those_of_the_records(Form<?> form) throws IOException {
        Path file = Path.of("..", "docs", "schema", form.name() + ".schema.json");
        if (System.getProperty("schema.write") != null) {
            Files.writeString(file, form.schema());
        }
        assertThat(file).hasContent(form.schema());
    }
}
