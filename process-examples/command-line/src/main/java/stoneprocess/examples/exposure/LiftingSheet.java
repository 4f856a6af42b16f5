package stoneprocess.examples.exposure;

import java.util.Comparator;
import java.util.List;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.Lift;
import stoneprocess.core.exposure.LiftMultipliers;
import stoneprocess.core.exposure.LiftVerdict;
import stoneprocess.core.exposure.Lifting;
import stoneprocess.core.exposure.LiftingLimit;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Sources;

/** A lift against the weight that the revised lifting equation recommends. */
public final class LiftingSheet {
    private record Part(String name, String given, double multiplier, String remedy) {}

    private final Lifting lifting = Lifting.of(Parameters.standard());
    private final Figures figures;

    /** The sheet in the reader's units. */
    public LiftingSheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /** The text. */
    public String render(Lift lift) {
        LiftingLimit limit = lifting.limit(lift);
        String best = figures.atMost(limit.limit().value());
        List<Part> parts = parts(lift, limit.multipliers());
        Sheet sheet = new Sheet("A lift by one person").answer(sentence(limit));
        parts.stream()
                .min(Comparator.comparingDouble(Part::multiplier))
                .filter(part -> part.multiplier() < 1)
                .ifPresent(part -> sheet.answer("Most is lost by the " + part.name() + ": " + part.remedy() + "."));
        sheet.rows(
                "Given",
                List.of(
                        List.of("load", figures.given(lift.load())),
                        List.of("task lasts", figures.given(lift.duration()))));
        sheet.rows(
                "What each part of the lift leaves of " + best,
                parts.stream()
                        .map(part ->
                                List.of(part.name(), part.given(), figures.atMost(new Share(100 * part.multiplier()))))
                        .toList());
        sheet.rows(
                "Result",
                List.of(
                        List.of("recommended limit", figures.atMost(limit.recommended())),
                        List.of(
                                "load against it",
                                limit.index()
                                        .map(index -> figures.atLeast(index) + " of the limit")
                                        .orElse("beyond the equation"))));
        sheet.items(
                "Limit",
                List.of(
                        "The best lift that there is: " + best + " (" + Sheet.source(limit.limit()) + ").",
                        "Frequencies, holds and the index that is far over: "
                                + Sheet.source(Sources.standard().get("NIOSH-LIFTING-TABLES")) + "."));
        return sheet.close(
                List.of(
                        "The lift as given, at one end of its way: nothing was measured here.",
                        "The published equation in its metric form. " + Figures.ROUNDING),
                List.of(
                        "Two hands, smooth, firm dry floor. Not for one hand, sitting, kneeling, tight places, loads"
                                + " that shift, barrows or shovels.",
                        "A wet stone floor asks for less than stands here.",
                        "Where the load is set down with care, judge both ends and keep the lower limit.",
                        "The limit is for healthy people."),
                limit.limit().decides());
    }

    private List<Part> parts(Lift lift, LiftMultipliers multipliers) {
        return List.of(
                new Part("reach", figures.given(lift.reach()), multipliers.horizontal(), "bring the load closer"),
                new Part(
                        "height of the hands",
                        figures.given(lift.height()),
                        multipliers.vertical(),
                        "start and end nearer to the height of the knuckles"),
                new Part(
                        "way up or down",
                        figures.given(lift.travel()),
                        multipliers.distance(),
                        "shorten it, with a stand or a ramp"),
                new Part("turn", figures.given(lift.turn()), multipliers.asymmetry(), "step round with the feet"),
                new Part(
                        "frequency",
                        lift.lifts().decimal().toPlainString() + " in " + figures.given(lift.counted()),
                        multipliers.frequency(),
                        "lift less often, or take turns"),
                new Part("hold", hold(lift.coupling()), multipliers.coupling(), "give it handles"));
    }

    private static String hold(Coupling coupling) {
        return switch (coupling) {
            case GOOD -> "good, handles or cut-outs";
            case FAIR -> "fair, fingers bent under the load";
            case POOR -> "poor, bulky, sharp or sagging";
        };
    }

    private static String sentence(LiftingLimit limit) {
        if (limit.verdict() == LiftVerdict.FAR_OVER_LIMIT && limit.index().isEmpty()) {
            return "NOT BY ONE PERSON: a part of this lift is beyond what one person may do at all.";
        }
        return switch (limit.verdict()) {
            case WITHIN_LIMIT -> "WITHIN THE LIMIT.";
            case OVER_LIMIT -> "OVER THE LIMIT: more people, a machine, or another way of lifting.";
            case FAR_OVER_LIMIT -> "FAR OVER THE LIMIT: nearly everybody is at risk.";
        };
    }
}
