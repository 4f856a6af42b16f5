package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.atLeast;
import static stoneprocess.rules.text.sheet.ExposureWords.atMost;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.Comparator;
import java.util.List;
import stoneprocess.core.exposure.Lift;
import stoneprocess.core.exposure.LiftMultipliers;
import stoneprocess.core.exposure.LiftVerdict;
import stoneprocess.core.exposure.Lifting;
import stoneprocess.core.exposure.LiftingLimit;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Sources;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** A lift against the weight that the revised lifting equation recommends. */
final class LiftingSheet {
    private static final int PERCENT = 100;

    /** A part of the lift, what was given of it, and the factor that it leaves. */
    private record Part(String key, Wording given, double multiplier) {
        Wording name() {
            return phrase("lifting.part." + key);
        }
    }

    private LiftingSheet() {}

    static Document of(Lift lift) {
        LiftingLimit limit = Lifting.of(Parameters.standard()).limit(lift);
        Wording best = atMost(limit.limit().value());
        List<Part> parts = parts(lift, limit.multipliers());
        Draft draft =
                ExposureWords.sheet("lifting.title").paragraph(verdict(limit)).paragraph("lifting.not-verified");
        parts.stream()
                .min(Comparator.comparingDouble(Part::multiplier))
                .filter(part -> part.multiplier() < 1)
                .ifPresent(part -> draft.paragraph(phrase("lifting.most-lost")
                        .with("part", part.name())
                        .with("remedy", phrase("lifting.part." + part.key() + ".remedy"))));
        draft.section("exposure.given")
                .row("lifting.load", given(lift.load()))
                .row("lifting.lasts", given(lift.duration()))
                .section(phrase("lifting.parts").with("best", best));
        parts.forEach(part -> draft.row(part.name(), part.given(), atMost(new Share(PERCENT * part.multiplier()))));
        draft.section("exposure.result")
                .row("lifting.recommended", atMost(limit.recommended()))
                .row("lifting.against-it", againstLimit(limit))
                .section("exposure.limit")
                .bullet(phrase("lifting.limit").with("best", best).with("source", source(limit.limit())))
                .bullet(phrase("lifting.tables")
                        .with("source", source(Sources.standard().get("NIOSH-LIFTING-TABLES"))))
                .section("exposure.rests-on")
                .bullets("lifting.rests.given", "lifting.rests.equation")
                .section("exposure.cautions")
                .bullets("lifting.caution.two-hands", "lifting.caution.wet")
                .bullets("lifting.caution.both-ends", "lifting.caution.healthy");
        return ExposureWords.decidedBy(draft, limit.limit().decides());
    }

    private static List<Part> parts(Lift lift, LiftMultipliers multipliers) {
        Wording frequency = phrase("lifting.lifts-in-time")
                .with("lifts", Wording.number(lift.lifts().decimal()))
                .with("time", given(lift.counted()));
        return List.of(
                new Part("reach", given(lift.reach()), multipliers.horizontal()),
                new Part("height", given(lift.height()), multipliers.vertical()),
                new Part("travel", given(lift.travel()), multipliers.distance()),
                new Part("turn", given(lift.turn()), multipliers.asymmetry()),
                new Part("frequency", frequency, multipliers.frequency()),
                new Part("hold", Wording.of(lift.coupling()), multipliers.coupling()));
    }

    private static Wording againstLimit(LiftingLimit limit) {
        return limit.index()
                .<Wording>map(index -> phrase("lifting.of-the-limit").with("index", atLeast(index)))
                .orElseGet(() -> phrase("lifting.beyond"));
    }

    private static Wording verdict(LiftingLimit limit) {
        return limit.verdict() == LiftVerdict.FAR_OVER_LIMIT && limit.index().isEmpty()
                ? phrase("lifting.not-by-one")
                : Wording.of(limit.verdict());
    }
}
