package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Acidity;

/** Slurry water against 40 CFR 261.22 (corrosive waste) and 40 CFR 403.5 (discharge to a sewer). */
class SlurryValidationTest {
    private final Slurry slurry = Slurry.of(Parameters.standard());

    /** 40 CFR 261.22: corrosive at pH 2 and below, 12.5 and above; 40 CFR 403.5: no discharge under pH 5. */
    @ParameterizedTest
    @CsvSource({
        "0, CORROSIVE_ACID, 2, 40-CFR-261.22",
        "2, CORROSIVE_ACID, 2, 40-CFR-261.22",
        "2.01, TOO_ACID_FOR_SEWER, 5, 40-CFR-403.5",
        "4.99, TOO_ACID_FOR_SEWER, 5, 40-CFR-403.5",
        "5, SEWER_BY_LEAVE_ONLY, 5, 40-CFR-403.5",
        "7, SEWER_BY_LEAVE_ONLY, 5, 40-CFR-403.5",
        "12.49, SEWER_BY_LEAVE_ONLY, 12.5, 40-CFR-261.22",
        "12.5, CORROSIVE_ALKALI, 12.5, 40-CFR-261.22",
        "14, CORROSIVE_ALKALI, 12.5, 40-CFR-261.22"
    })
    void classes_are_those_of_the_federal_rules(double ph, SlurryClass slurryClass, double limit, String source) {
        SlurryWater water = slurry.classify(new Acidity(ph));
        assertThat(water.slurryClass()).isEqualTo(slurryClass);
        assertThat(water.limit().value()).isEqualTo(new Acidity(limit));
        assertThat(water.limit().sourceId()).isEqualTo(source);
        assertThat(water.limit().decides()).isEqualTo(Role.WASTE_AUTHORITY);
    }

    /** Concrete slurry has pH 11 to 13 (trade literature): part of it is corrosive waste. */
    @Test
    void the_published_band_of_concrete_slurry_spans_the_limit_of_corrosive_waste() {
        assertThat(slurry.classify(new Acidity(11)).slurryClass()).isEqualTo(SlurryClass.SEWER_BY_LEAVE_ONLY);
        assertThat(slurry.classify(new Acidity(13)).slurryClass()).isEqualTo(SlurryClass.CORROSIVE_ALKALI);
    }

    @Test
    void a_ph_that_no_meter_reads_is_refused() {
        assertThatThrownBy(() -> slurry.classify(new Acidity(14.1)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("slurry.ph: '14.1 pH' is not accepted; accepted: 0 to 14 pH");
    }
}
