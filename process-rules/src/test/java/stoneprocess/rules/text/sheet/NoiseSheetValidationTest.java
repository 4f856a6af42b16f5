package stoneprocess.rules.text.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.exposure.NoisePeriod;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.rules.text.document.Texts;

/** What the sheet of noise prints against 29 CFR 1910.95 with its appendix A and NIOSH 98-126. */
class NoiseSheetValidationTest {
    /**
     * 29 CFR 1910.95, table G-16, beside NIOSH 98-126, table 1-1: 88, 91, 94 and 100 dBA read, 85 and 97 dBA from
     * memory. Where one of them gives no figure, the row is held against the other alone.
     */
    @ParameterizedTest
    @CsvSource({
        "85, 16 h, 8 h",
        "88, , 4 h",
        "90, 8 h, ",
        "91, , 2 h",
        "94, , 1 h",
        "95, 4 h, ",
        "97, , 30 min",
        "100, 2 h, 15 min",
        "105, 1 h, ",
        "110, 30 min, ",
        "115, 15 min, "
    })
    void allowed_times_stand_side_by_side(double decibels, String osha, String niosh) {
        List<String> row = Printed.row(sheet(period(decibels, 1)), plain(decibels) + " dBA may last");
        assertThat(row).hasSize(2);
        if (osha != null) {
            assertThat(row.get(0)).isEqualTo(osha);
        }
        if (niosh != null) {
            assertThat(row.get(1)).isEqualTo(niosh);
        }
    }

    /**
     * 29 CFR 1910.95 appendix A: two hours at 95, four at 90 and two at 85 dBA are 50 % + 50 % + 12.5 %, and
     * 16.61 log10(1.125) + 90 is 90.85 dBA; a result is rounded up.
     */
    @Test
    void the_dose_of_a_mixed_day_is_printed_with_its_mean_and_verdict() {
        String sheet = sheet(period(95, 2), period(90, 4), period(85, 2));
        assertThat(Printed.row(sheet, "dose of the day").get(0)).isEqualTo("113 %");
        assertThat(Printed.row(sheet, "mean over 8 h").get(0)).isEqualTo("90.9 dBA");
        assertThat(Printed.row(sheet, "verdict")).containsExactly("over the limit", "over the limit");
        assertThat(sheet).contains("OSHA: OVER THE LIMIT", "NIOSH: OVER THE LIMIT");
        assertThat(Printed.row(sheet, "95 dBA")).containsExactly("2 h");
    }

    /** NIOSH 98-126: two hours at 88 and one at 94 dBA make 50 % + 100 %, a mean of 10 log10(1.5) + 85 = 86.76 dBA. */
    @Test
    void a_day_can_be_within_one_rule_and_over_the_other() {
        String sheet = sheet(period(88, 2), period(94, 1));
        assertThat(Printed.row(sheet, "dose of the day").get(1)).isEqualTo("150 %");
        assertThat(Printed.row(sheet, "mean over 8 h").get(1)).isEqualTo("86.8 dBA");
        assertThat(Printed.row(sheet, "verdict")).containsExactly("below action", "over the limit");
    }

    /** 29 CFR 1910.95(c): the hearing programme starts at 85 dBA over 8 h, a dose of 50 %; the limit is 90 dBA. */
    @Test
    void half_a_dose_starts_the_hearing_programme() {
        String sheet = sheet(period(90, 4));
        assertThat(Printed.row(sheet, "dose of the day").get(0)).isEqualTo("50 %");
        assertThat(sheet).contains("OSHA: within the limit, but a hearing programme is required");
    }

    /** 29 CFR 1910.95: 115 dBA is the last row of table G-16; both rules count from 80 dBA. */
    @Test
    void a_level_over_the_ceiling_is_allowed_for_no_time_and_a_quiet_day_counts_nothing() {
        String loud = sheet(period(116, 0.1));
        assertThat(Printed.row(loud, "116 dBA may last").get(0)).isEqualTo("no time at all");
        assertThat(loud).contains("OSHA: OVER THE CEILING");
        String quiet = sheet(period(79, 8));
        assertThat(Printed.row(quiet, "79 dBA may last")).containsExactly("not limited", "not limited");
        assertThat(Printed.row(quiet, "mean over 8 h")).containsExactly("nothing counts", "nothing counts");
    }

    /** Criterion and exchange of both rules, with their sources. */
    @Test
    void limits_are_printed_with_their_sources() {
        assertThat(Printed.joined(sheet(period(90, 4))))
                .contains("OSHA: 90 dBA over 8 h, half the time for each further 5 dBA (US OSHA, 29 CFR 1910.95")
                .contains("NIOSH: 85 dBA over 8 h, half the time for each further 3 dBA (US NIOSH, publication 98-126")
                .contains("An occupational hygienist");
    }

    private static String sheet(NoisePeriod... periods) {
        return Texts.english().page(NoiseSheet.of(Arrays.asList(periods)));
    }

    private static NoisePeriod period(double decibels, double hours) {
        return new NoisePeriod(new SoundLevel(decibels), TimeSpan.of(hours, Unit.HOUR));
    }

    private static String plain(double decibels) {
        return new SoundLevel(decibels).decimal().toPlainString();
    }
}
