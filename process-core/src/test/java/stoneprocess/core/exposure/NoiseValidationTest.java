package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/** Noise against the tables of 29 CFR 1910.95 with its appendix A, and against those of NIOSH 98-126. */
class NoiseValidationTest {
    private final Noise noise = Noise.of(Parameters.standard());

    /** 29 CFR 1910.95, table G-16; 92, 97 and 102 dBA stand there rounded, and a quarter of an hour is the last row. */
    @ParameterizedTest
    @CsvSource({
        "90, 8, 0",
        "92, 6, 0.1",
        "95, 4, 0",
        "97, 3, 0.05",
        "100, 2, 0",
        "102, 1.5, 0.05",
        "105, 1, 0",
        "110, 0.5, 0",
        "115, 0.25, 0"
    })
    void allowed_times_are_those_of_table_g_16(double decibels, double hours, double rounded) {
        assertThat(hours(decibels, NoiseRule.OSHA)).isCloseTo(hours, Offset.offset(rounded + 1e-6));
    }

    /** 29 CFR 1910.95 appendix A, table G-16A, read in full; each figure within half of its last printed digit. */
    @ParameterizedTest
    @CsvSource({
        "80, 32, 0.5",
        "81, 27.9, 0.05",
        "82, 24.3, 0.051",
        "83, 21.1, 0.051",
        "84, 18.4, 0.05",
        "85, 16, 0.5",
        "86, 13.9, 0.05",
        "87, 12.1, 0.05",
        "88, 10.6, 0.05",
        "89, 9.2, 0.05",
        "91, 7.0, 0.05",
        "92, 6.1, 0.05",
        "93, 5.3, 0.05",
        "94, 4.6, 0.05",
        "96, 3.5, 0.05",
        "97, 3.0, 0.05",
        "98, 2.6, 0.05",
        "99, 2.3, 0.05",
        "101, 1.7, 0.05",
        "102, 1.5, 0.05",
        "103, 1.3, 0.05",
        "104, 1.1, 0.05",
        "106, 0.87, 0.005",
        "107, 0.76, 0.005",
        "108, 0.66, 0.005",
        "109, 0.57, 0.005",
        "111, 0.44, 0.005",
        "112, 0.38, 0.005",
        "113, 0.33, 0.005",
        "114, 0.29, 0.005"
    })
    void allowed_times_are_those_of_table_g_16a(double decibels, double hours, double half) {
        assertThat(hours(decibels, NoiseRule.OSHA)).isCloseTo(hours, Offset.offset(half));
    }

    /** Table G-16A goes on to 130 dBA for counting doses: 116 dBA 0.22, 120 dBA 0.125, 125 dBA 0.063, 130 dBA 0.031 h. */
    @ParameterizedTest
    @CsvSource({"116, 0.22, 0.03", "120, 0.125, 0.005", "125, 0.063, 0.01", "130, 0.031, 0.01"})
    void doses_above_the_ceiling_follow_table_g_16a(double decibels, double hours, double relative) {
        NoiseExposure exposure = noise.exposure(List.of(period(decibels, hours)), NoiseRule.OSHA);
        assertThat(exposure.dose().percent()).isCloseTo(100, Offset.offset(100 * relative));
        assertThat(exposure.verdict()).isEqualTo(NoiseVerdict.OVER_CEILING);
    }

    /**
     * NIOSH 98-126, table 1-1, in seconds: 88, 91, 94 and 100 dBA read, the rest from memory. The table drops fractions
     * of its last unit, which is a minute from 85 dBA and a second from 95 dBA.
     */
    @ParameterizedTest
    @CsvSource({
        "85, 28800, 60",
        "86, 22860, 60",
        "87, 18120, 60",
        "88, 14400, 60",
        "89, 11400, 60",
        "90, 9060, 60",
        "91, 7200, 60",
        "92, 5700, 60",
        "93, 4560, 60",
        "94, 3600, 60",
        "95, 2857, 1",
        "96, 2268, 1",
        "97, 1800, 1",
        "98, 1429, 1",
        "99, 1134, 6",
        "100, 900, 1"
    })
    void recommended_times_are_those_of_niosh(double decibels, double seconds, double tolerance) {
        assertThat(hours(decibels, NoiseRule.NIOSH) * 3600).isCloseTo(seconds, Offset.offset(tolerance));
    }

    /**
     * 29 CFR 1910.95 appendix A: D = 100 (C1/T1 + C2/T2 + ...) with T of table G-16A, TWA = 16.61 log10(D/100) + 90. Two
     * hours at 95, four at 90 and two at 85 dBA: 50 % + 50 % + 12.5 %.
     */
    @Test
    void the_dose_of_a_mixed_day_is_the_sum_of_its_parts() {
        NoiseExposure day = noise.exposure(List.of(period(95, 2), period(90, 4), period(85, 2)), NoiseRule.OSHA);
        assertThat(day.dose().percent()).isCloseTo(112.5, Offset.offset(1e-3));
        assertThat(day.mean().orElseThrow().decibels()).isCloseTo(16.61 * Math.log10(1.125) + 90, Offset.offset(1e-3));
        assertThat(day.verdict()).isEqualTo(NoiseVerdict.OVER_LIMIT);
    }

    /** NIOSH 98-126: TWA = 10.0 log10(D/100) + 85; two hours at 88 and one at 94 dBA make 50 % + 100 %. */
    @Test
    void the_same_by_niosh() {
        NoiseExposure day = noise.exposure(List.of(period(88, 2), period(94, 1)), NoiseRule.NIOSH);
        assertThat(day.dose().percent()).isCloseTo(150, Offset.offset(1e-3));
        assertThat(day.mean().orElseThrow().decibels()).isCloseTo(10 * Math.log10(1.5) + 85, Offset.offset(0.01));
    }

    /** 29 CFR 1910.95 appendix A, table A-1 (from memory): mean over 8 h by dose, to 0.1 dB. */
    @ParameterizedTest
    @CsvSource({
        "10, 73.4",
        "15, 76.3",
        "20, 78.4",
        "25, 80.0",
        "50, 85.0",
        "75, 87.9",
        "100, 90.0",
        "110, 90.7",
        "150, 92.9",
        "200, 95.0",
        "300, 97.9",
        "400, 100.0",
        "500, 101.6"
    })
    void means_by_dose_are_those_of_table_a_1(double dose, double mean) {
        NoiseExposure day = noise.exposure(List.of(period(105, dose / 100)), NoiseRule.OSHA);
        assertThat(day.dose().percent()).isCloseTo(dose, Offset.offset(1e-3));
        assertThat(day.mean().orElseThrow().decibels()).isCloseTo(mean, Offset.offset(0.051));
    }

    /** 29 CFR 1910.95(c): the hearing programme starts at a mean of 85 dBA, which is a dose of 50 %. */
    @Test
    void half_a_dose_starts_the_hearing_programme() {
        assertThat(noise.exposure(List.of(period(90, 4)), NoiseRule.OSHA).verdict())
                .isEqualTo(NoiseVerdict.HEARING_PROGRAMME);
        assertThat(noise.exposure(List.of(period(90, 3.99)), NoiseRule.OSHA).verdict())
                .isEqualTo(NoiseVerdict.BELOW_ACTION);
    }

    private double hours(double decibels, NoiseRule rule) {
        return noise.allowedTime(new SoundLevel(decibels), rule).orElseThrow().minutes() / 60;
    }

    private static NoisePeriod period(double decibels, double hours) {
        return new NoisePeriod(new SoundLevel(decibels), TimeSpan.of(hours, Unit.HOUR));
    }
}
