package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.atLeast;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.List;
import stoneprocess.core.exposure.Noise;
import stoneprocess.core.exposure.NoiseExposure;
import stoneprocess.core.exposure.NoisePeriod;
import stoneprocess.core.exposure.NoiseRule;
import stoneprocess.core.exposure.NoiseVerdict;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.SoundLevel;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** The noise of a working day by OSHA and by NIOSH, side by side. */
final class NoiseSheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private static final Noise NOISE = Noise.of(PARAMETERS);

    private NoiseSheet() {}

    static Document of(List<NoisePeriod> periods) {
        NoiseExposure osha = NOISE.exposure(periods, NoiseRule.OSHA);
        NoiseExposure niosh = NOISE.exposure(periods, NoiseRule.NIOSH);
        Draft draft = ExposureWords.sheet("noise.title")
                .paragraph(phrase("noise.osha").with("says", Wording.of(osha.verdict(), "sentence")))
                .paragraph(phrase("noise.niosh").with("says", Wording.of(niosh.verdict(), "sentence")));
        if (osha.verdict() == NoiseVerdict.OVER_CEILING || niosh.verdict() == NoiseVerdict.OVER_CEILING) {
            draft.paragraph("noise.ceiling-not-verified");
        }
        draft.section("exposure.given");
        periods.forEach(period -> draft.row(given(period.level()), given(period.time())));
        draft.section("exposure.result").row(Wording.name(""), Wording.of(NoiseRule.OSHA), Wording.of(NoiseRule.NIOSH));
        periods.stream()
                .map(NoisePeriod::level)
                .distinct()
                .forEach(level -> draft.row(
                        phrase("noise.may-last").with("level", given(level)),
                        allowed(level, NoiseRule.OSHA),
                        allowed(level, NoiseRule.NIOSH)));
        draft.row("noise.dose", atLeast(osha.dose()), atLeast(niosh.dose()))
                .row("noise.mean", mean(osha), mean(niosh))
                .row("noise.verdict", Wording.of(osha.verdict()), Wording.of(niosh.verdict()))
                .section("exposure.limits")
                .bullet(phrase("noise.osha").with("says", limit(osha)))
                .bullet(phrase("noise.niosh").with("says", limit(niosh)))
                .section("exposure.rests-on")
                .bullets("noise.rests.given", "noise.rests.formulas")
                .section("exposure.cautions")
                .bullets("noise.caution.level", "noise.caution.whole-day")
                .bullet(phrase("noise.caution.threshold")
                        .with("threshold", given(number(NoiseRule.OSHA, "threshold")))
                        .with("limit", given(osha.limit().value())))
                .bullet("noise.caution.law");
        return ExposureWords.decidedBy(draft, Role.HYGIENIST);
    }

    private static Wording allowed(SoundLevel level, NoiseRule rule) {
        return NOISE.allowedTime(level, rule)
                .map(time -> time.minutes() > 0 ? ExposureWords.atMost(time) : phrase("noise.no-time"))
                .orElseGet(() -> phrase("noise.not-limited"));
    }

    private static Wording mean(NoiseExposure exposure) {
        return exposure.mean().map(ExposureWords::atLeast).orElseGet(() -> phrase("noise.nothing-counts"));
    }

    private static Wording limit(NoiseExposure exposure) {
        return phrase("noise.limit")
                .with("limit", given(exposure.limit().value()))
                .with("exchange", given(number(exposure.rule(), "exchange")))
                .with("source", source(exposure.limit()))
                .with("ceiling", given(exposure.ceiling().value()))
                .with("ceilingSource", source(exposure.ceiling()));
    }

    private static SoundLevel number(NoiseRule rule, String name) {
        return PARAMETERS.get("noise." + rule.key() + "." + name, SoundLevel.class);
    }
}
