package stoneprocess.examples.exposure;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.exposure.FrictionCheck;
import stoneprocess.core.exposure.Limit;
import stoneprocess.core.exposure.RampClass;
import stoneprocess.core.exposure.RampResult;
import stoneprocess.core.exposure.SlipCaution;
import stoneprocess.core.exposure.SlipClass;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.exposure.SlipPotential;
import stoneprocess.core.exposure.WetSlip;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.UnitSystem;

/** A measured slip value with its class. */
public final class SlipSheet {
    private static final Parameters PARAMETERS = Parameters.standard();
    private static final String THIS_FLOOR =
            "This floor's reading as given, taken on the floor as it will be used: cleaned, sealed, waxed.";
    private static final String TITLE = "Slip of a measured floor";

    private final WetSlip slip = WetSlip.of(PARAMETERS);
    private final Figures figures;

    /** The sheet in the reader's units. */
    public SlipSheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /**
     * The text for a pendulum value.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for a value beyond the instrument
     */
    public String pendulum(PendulumValue value) {
        SlipClass<PendulumValue> found = slip.byPendulum(value);
        Sheet sheet = new Sheet(TITLE).answer(sentence(found.potential()));
        sheet.rows("Given", List.of(List.of("pendulum, wet", figures.given(value))));
        sheet.rows(
                "Result",
                List.of(
                        List.of("slip potential", found.potential().key()),
                        List.of(
                                "coefficient of friction",
                                figures.atMost(WetSlip.friction(value))
                                        + ", by the slider's energy; no value of another instrument")));
        limit(sheet, classes("slip-pendulum.moderate-from", PendulumValue.class, "from", found.limit()), found.limit());
        return close(
                sheet,
                found.limit(),
                found.cautions(),
                THIS_FLOOR
                        + " Lowest mean of the directions tested: hard slider for shoes, soft slider for bare feet.");
    }

    /**
     * The text for a roughness Rz.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for more than a stylus measures
     */
    public String roughness(Length rz) {
        SlipClass<Length> found = slip.byRoughness(rz);
        Sheet sheet = new Sheet(TITLE).answer(sentence(found.potential()));
        sheet.rows("Given", List.of(List.of("roughness Rz", figures.given(rz))));
        sheet.rows("Result", List.of(List.of("slip potential", found.potential().key() + ", in clean water")));
        limit(sheet, classes("slip-roughness.moderate-from", Length.class, "over", found.limit()), found.limit());
        return close(
                sheet,
                found.limit(),
                found.cautions(),
                THIS_FLOOR + " Roughness supports a pendulum test and does not replace it.");
    }

    /**
     * The text for a dynamic coefficient of friction.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for a value beyond the instrument
     */
    public String friction(Friction measured, SlipPlace place) {
        FrictionCheck check = slip.byFriction(measured, place);
        String limit = figures.given(check.limit().value());
        Sheet sheet = new Sheet(TITLE)
                .answer(check.meetsLimit() ? "LIMIT MET for this use." : "UNDER THE LIMIT for this use.");
        sheet.rows(
                "Given", List.of(List.of("dynamic friction", figures.given(measured)), List.of("place", place(place))));
        sheet.rows(
                "Result",
                List.of(List.of("least value here", limit), List.of("met", check.meetsLimit() ? "yes" : "no")));
        limit(sheet, "At least " + limit + " for this use", check.limit());
        return close(
                sheet,
                check.limit(),
                check.cautions(),
                THIS_FLOOR + " By the method of that standard: "
                        + (place == SlipPlace.INTERIOR_DRY ? "dry for this place." : "wet for this place."));
    }

    /**
     * The text for an angle of the shod ramp.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for an angle beyond the ramp
     */
    public String ramp(Angle angle) {
        RampResult result = slip.byRamp(angle);
        boolean classed = result.ramp() != RampClass.UNCLASSED;
        Sheet sheet = new Sheet(TITLE)
                .answer(
                        classed
                                ? "CLASS " + result.ramp().name() + " of the shod ramp."
                                : "NO CLASS: it slips under the lowest class of the shod ramp.");
        sheet.rows("Given", List.of(List.of("shod ramp, oil", figures.given(angle))));
        sheet.rows("Result", List.of(List.of("class", classed ? result.ramp().name() : "none")));
        String above = Stream.of(RampClass.R10, RampClass.R11, RampClass.R12, RampClass.R13)
                .map(ramp ->
                        ramp.name() + " over " + figures.given(PARAMETERS.get("slip-ramp." + ramp.key(), Angle.class)))
                .collect(Collectors.joining(", "));
        limit(sheet, "R9 from " + figures.given(result.limit().value()) + ", " + above, result.limit());
        return close(
                sheet,
                result.limit(),
                result.cautions(),
                "A specimen's reading on a laboratory's ramp, as given: it is not this floor.");
    }

    private <Q extends Quantity> String classes(String moderateFrom, Class<Q> type, String word, Limit<Q> low) {
        return "Moderate from " + figures.given(PARAMETERS.get(moderateFrom, type)) + ", low " + word + " "
                + figures.given(low.value()) + ", high under both";
    }

    private static void limit(Sheet sheet, String limit, Limit<?> source) {
        sheet.items("Limit", List.of(limit + " (" + Sheet.source(source) + ")."));
    }

    private static String close(Sheet sheet, Limit<?> limit, List<SlipCaution> cautions, String rests) {
        return sheet.close(
                List.of(rests, "Published classes. Slip is never told from gloss or grit. " + Figures.ROUNDING),
                cautions.stream().map(SlipSheet::caution).toList(),
                limit.decides());
    }

    private static String sentence(SlipPotential potential) {
        return switch (potential) {
            case HIGH -> "HIGH slip potential.";
            case MODERATE -> "MODERATE slip potential.";
            case LOW -> "LOW slip potential.";
        };
    }

    private static String place(SlipPlace place) {
        return switch (place) {
            case INTERIOR_DRY -> "inside and kept dry";
            case INTERIOR_WET -> "inside, walked on wet";
            case INTERIOR_WET_PLUS -> "inside, wet with more demand: showers, pools, kitchens without grease";
            case EXTERIOR_WET -> "outside";
            case OILS_AND_GREASES -> "where oil or grease is expected";
        };
    }

    private static String caution(SlipCaution caution) {
        return switch (caution) {
            case LEVEL_AND_STRAIGHT_WALKING_ONLY ->
                "Level floor and straight walking only: slopes, turns, pushing and" + " running need more.";
            case CLEAN_WATER_ONLY -> "Clean water only: roughness does not answer for grease, soap or dust.";
            case SPECIMEN_AS_NEW ->
                "A clean specimen as new: wear and upkeep change the floor, and so does any grit"
                        + " that goes over it.";
            case MEETING_IT_IS_NO_PROMISE ->
                "Meeting the limit is no promise that nobody slips: use, slope, drainage" + " and upkeep count.";
        };
    }
}
