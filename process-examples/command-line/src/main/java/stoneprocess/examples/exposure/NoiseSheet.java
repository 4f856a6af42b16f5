package stoneprocess.examples.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.exposure.Noise;
import stoneprocess.core.exposure.NoiseExposure;
import stoneprocess.core.exposure.NoisePeriod;
import stoneprocess.core.exposure.NoiseRule;
import stoneprocess.core.exposure.NoiseVerdict;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.UnitSystem;

/** The noise of a working day by OSHA and by NIOSH, side by side. */
public final class NoiseSheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private final Noise noise = Noise.of(PARAMETERS);
    private final Figures figures;

    /** The sheet in the reader's units. */
    public NoiseSheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /**
     * The text.
     *
     * @throws stoneprocess.core.problem.InvalidInputException when the periods are none or make more than 24 h
     */
    public String render(List<NoisePeriod> periods) {
        NoiseExposure osha = noise.exposure(periods, NoiseRule.OSHA);
        NoiseExposure niosh = noise.exposure(periods, NoiseRule.NIOSH);
        Sheet sheet = new Sheet("Noise of a working day");
        sheet.answer("OSHA: " + sentence(osha.verdict()));
        sheet.answer("NIOSH: " + sentence(niosh.verdict()));
        sheet.rows(
                "Given",
                periods.stream()
                        .map(period -> List.of(figures.given(period.level()), figures.given(period.time())))
                        .toList());
        sheet.rows("Result", result(periods, osha, niosh));
        sheet.items("Limits", List.of("OSHA: " + limit(osha), "NIOSH: " + limit(niosh)));
        return sheet.close(
                List.of(
                        "The levels and times as given: nothing was measured here.",
                        "Published formulas of time, dose and mean: 29 CFR 1910.95 appendix A, NIOSH 98-126. "
                                + Figures.ROUNDING),
                List.of(
                        "A level is what reaches the ear, A-weighted and slow, on a meter or dosimeter worn on the"
                                + " job; the figure on a machine's data sheet is not that.",
                        "The whole day counts, vacuum, edge tool and the neighbour's machine too; what is not listed"
                                + " counts as quiet.",
                        "OSHA counts here from " + figures.given(number(NoiseRule.OSHA, "threshold"))
                                + ", as for hearing tests; counted for its limit alone, from "
                                + figures.given(osha.limit().value())
                                + ", the dose can be smaller, never larger.",
                        "OSHA is the law in the United States, NIOSH is what protects hearing. Quieter tools and"
                                + " turns come before hearing protection, which is not taken off here."),
                Role.HYGIENIST);
    }

    private List<List<String>> result(List<NoisePeriod> periods, NoiseExposure osha, NoiseExposure niosh) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "OSHA", "NIOSH"));
        periods.stream()
                .map(NoisePeriod::level)
                .distinct()
                .forEach(level -> rows.add(List.of(
                        figures.given(level) + " may last",
                        allowed(level, NoiseRule.OSHA),
                        allowed(level, NoiseRule.NIOSH))));
        rows.add(List.of("dose of the day", figures.atLeast(osha.dose()), figures.atLeast(niosh.dose())));
        rows.add(List.of("mean over 8 h", mean(osha), mean(niosh)));
        rows.add(List.of("verdict", word(osha.verdict()), word(niosh.verdict())));
        return rows;
    }

    private String allowed(SoundLevel level, NoiseRule rule) {
        Optional<TimeSpan> time = noise.allowedTime(level, rule);
        if (time.isEmpty()) {
            return "not limited";
        }
        return time.get().minutes() > 0 ? figures.atMost(time.get()) : "no time at all";
    }

    private String mean(NoiseExposure exposure) {
        return exposure.mean().map(figures::atLeast).orElse("nothing counts");
    }

    private String limit(NoiseExposure exposure) {
        SoundLevel exchange = number(exposure.rule(), "exchange");
        return figures.given(exposure.limit().value()) + " over 8 h, half the time for every " + figures.given(exchange)
                + " more (" + Sheet.source(exposure.limit()) + "); never over "
                + figures.given(exposure.ceiling().value()) + " (" + Sheet.source(exposure.ceiling()) + ").";
    }

    private SoundLevel number(NoiseRule rule, String name) {
        return PARAMETERS.get("noise." + rule.key() + "." + name, SoundLevel.class);
    }

    private static String word(NoiseVerdict verdict) {
        return switch (verdict) {
            case BELOW_ACTION -> "below action";
            case HEARING_PROGRAMME -> "hearing programme";
            case OVER_LIMIT -> "over the limit";
            case OVER_CEILING -> "over the ceiling";
        };
    }

    private static String sentence(NoiseVerdict verdict) {
        return switch (verdict) {
            case BELOW_ACTION -> "below the level from which hearing has to be looked after.";
            case HEARING_PROGRAMME ->
                "within the limit, but hearing has to be looked after: measuring, hearing"
                        + " tests, protectors, training.";
            case OVER_LIMIT -> "OVER THE LIMIT of the day: less noise or less time.";
            case OVER_CEILING -> "OVER THE CEILING: a level that is allowed for no time at all.";
        };
    }
}
