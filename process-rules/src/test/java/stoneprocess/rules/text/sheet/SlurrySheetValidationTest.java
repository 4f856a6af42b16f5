package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.quantity.Acidity;
import stoneprocess.rules.text.document.Texts;

/** What the sheet of slurry prints against 40 CFR 261.22 (corrosive waste) and 40 CFR 403.5 (discharge to a sewer). */
class SlurrySheetValidationTest {
    /** 40 CFR 261.22: corrosive at pH 2 and below, 12.5 and above; 40 CFR 403.5: no discharge under pH 5. */
    @ParameterizedTest
    @CsvSource({
        "2, 'CORROSIVE WASTE, acid', pH 2",
        "2.01, TOO ACID for a sewer, pH 5",
        "4.99, TOO ACID for a sewer, pH 5",
        "5, SEWER ONLY WITH A PERMIT, pH 5",
        "12.49, SEWER ONLY WITH A PERMIT, pH 12.5",
        "12.5, 'CORROSIVE WASTE, alkaline', pH 12.5"
    })
    void classes_are_those_of_the_federal_rules(double ph, String answer, String limit) {
        String sheet = sheet(ph);
        assertThat(sheet.lines().skip(2).findFirst().orElseThrow()).startsWith(answer);
        assertThat(Printed.row(sheet, "deciding limit")).containsExactly(limit);
    }

    /** The reading stands as it was given: 12.49 rounded to three digits would be corrosive. */
    @Test
    void the_reading_is_not_rounded_over_a_limit() {
        assertThat(Printed.row(sheet(12.49), "slurry water")).containsExactly("pH 12.49");
    }

    /** Concrete slurry has pH 11 to 13 (trade literature); whatever its class, a storm drain takes none. */
    @ParameterizedTest
    @CsvSource({"7", "11", "13"})
    void no_slurry_goes_to_a_storm_drain(double ph) {
        assertThat(Printed.joined(sheet(ph)))
                .contains("Only rainwater goes to a storm drain, whatever its pH.")
                .contains("Corrosive waste at pH 12.5 and above (US EPA, 40 CFR 261.22")
                .contains("No sewer below pH 5 (US EPA, 40 CFR 403.5")
                .contains("The local water authority; for solids and caustic water the local waste authority.");
    }

    private static String sheet(double ph) {
        return Texts.english().page(SlurrySheet.of(new Acidity(ph)));
    }
}
