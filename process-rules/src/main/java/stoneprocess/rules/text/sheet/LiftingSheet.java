package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.atLeast;
import static stoneprocess.rules.text.sheet.ExposureWords.atMost;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.row;
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
    private record Part(Wording name, Wording given, double multiplier, Wording remedy) {}

    private static final Lifting LIFTING = Lifting.of(Parameters.standard());

    private LiftingSheet() {}

    static Document of(Lift lift) {
        LiftingLimit limit = LIFTING.limit(lift);
        Wording best = atMost(limit.limit().value());
        List<Part> parts = parts(lift, limit.multipliers());
        Draft draft =
                ExposureWords.sheet("lifting.title").paragraph(verdict(limit)).paragraph("lifting.not-verified");
        parts.stream()
                .min(Comparator.comparingDouble(Part::multiplier))
                .filter(part -> part.multiplier() < 1)
                .ifPresent(part -> draft.paragraph(
                        phrase("lifting.most-lost").with("part", part.name()).with("remedy", part.remedy())));
        ExposureWords.given(
                draft, List.of(row("lifting.load", given(lift.load())), row("lifting.lasts", given(lift.duration()))));
        ExposureWords.rows(
                draft,
                phrase("lifting.parts").with("best", best),
                parts.stream()
                        .map(part -> row(part.name(), part.given(), atMost(new Share(PERCENT * part.multiplier()))))
                        .toList());
        ExposureWords.result(
                draft,
                List.of(
                        row("lifting.recommended", atMost(limit.recommended())),
                        row(
                                "lifting.against-it",
                                limit.index()
                                        .<Wording>map(index ->
                                                phrase("lifting.of-the-limit").with("index", atLeast(index)))
                                        .orElseGet(() -> phrase("lifting.beyond")))));
        ExposureWords.items(
                draft,
                "exposure.limit",
                List.of(
                        phrase("lifting.limit").with("best", best).with("source", source(limit.limit())),
                        phrase("lifting.tables")
                                .with("source", source(Sources.standard().get("NIOSH-LIFTING-TABLES")))));
        return ExposureWords.close(
                draft,
                List.of(phrase("lifting.rests.given"), phrase("lifting.rests.equation")),
                List.of(
                        phrase("lifting.caution.two-hands"),
                        phrase("lifting.caution.wet"),
                        phrase("lifting.caution.both-ends"),
                        phrase("lifting.caution.healthy")),
                limit.limit().decides());
    }

    private static List<Part> parts(Lift lift, LiftMultipliers multipliers) {
        return List.of(
                part("reach", given(lift.reach()), multipliers.horizontal()),
                part("height", given(lift.height()), multipliers.vertical()),
                part("travel", given(lift.travel()), multipliers.distance()),
                part("turn", given(lift.turn()), multipliers.asymmetry()),
                part(
                        "frequency",
                        phrase("lifting.lifts-in-time")
                                .with("lifts", Wording.number(lift.lifts().decimal()))
                                .with("time", given(lift.counted())),
                        multipliers.frequency()),
                part("hold", Wording.of(lift.coupling()), multipliers.coupling()));
    }

    private static Part part(String name, Wording given, double multiplier) {
        return new Part(phrase("lifting.part." + name), given, multiplier, phrase("lifting.part." + name + ".remedy"));
    }

    private static Wording verdict(LiftingLimit limit) {
        return limit.verdict() == LiftVerdict.FAR_OVER_LIMIT && limit.index().isEmpty()
                ? phrase("lifting.not-by-one")
                : Wording.of(limit.verdict());
    }
}
