package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.List;
import stoneprocess.core.exposure.FrictionCheck;
import stoneprocess.core.exposure.Limit;
import stoneprocess.core.exposure.RampClass;
import stoneprocess.core.exposure.RampResult;
import stoneprocess.core.exposure.SlipCaution;
import stoneprocess.core.exposure.SlipClass;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.exposure.WetSlip;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** A measured slip value with its class. */
final class SlipSheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private static final WetSlip WET_SLIP = WetSlip.of(PARAMETERS);

    private SlipSheet() {}

    static Document ofPendulum(PendulumValue value) {
        SlipClass<PendulumValue> found = WET_SLIP.byPendulum(value);
        Wording friction =
                phrase("slip.friction-of-slider").with("friction", ExposureWords.atMost(WetSlip.friction(value)));
        Draft draft = sheet(Wording.of(found.potential(), "sentence"))
                .row("slip.pendulum", given(value))
                .section("exposure.result")
                .row("slip.potential", Wording.of(found.potential()))
                .row("slip.friction", friction);
        Wording classes = classes("slip.classes-from", "slip-pendulum.moderate", PendulumValue.class, found);
        return close(draft, classes, found.limit(), "slip.rests.pendulum", found.cautions());
    }

    static Document ofRoughness(Length rz) {
        SlipClass<Length> found = WET_SLIP.byRoughness(rz);
        Draft draft = sheet(Wording.of(found.potential(), "sentence"))
                .row("slip.roughness", given(rz))
                .section("exposure.result")
                .row("slip.potential", phrase("slip.in-clean-water").with("potential", found.potential()));
        Wording classes = classes("slip.classes-over", "slip-roughness.moderate-from", Length.class, found);
        return close(draft, classes, found.limit(), "slip.rests.roughness", found.cautions());
    }

    static Document ofFriction(Friction measured, SlipPlace place) {
        FrictionCheck check = WET_SLIP.byFriction(measured, place);
        Wording limit = given(check.limit().value());
        Draft draft = sheet(phrase(check.meetsLimit() ? "slip.limit-met" : "slip.under-limit"))
                .row("slip.dynamic", given(measured))
                .row("slip.place", Wording.of(place))
                .section("exposure.result")
                .row("slip.least", limit)
                .row("slip.met", phrase(check.meetsLimit() ? "slip.yes" : "slip.no"));
        String rests = place == SlipPlace.INTERIOR_DRY ? "slip.rests.dry" : "slip.rests.wet";
        return close(draft, phrase("slip.at-least").with("limit", limit), check.limit(), rests, check.cautions());
    }

    static Document ofRamp(Angle angle) {
        RampResult result = WET_SLIP.byRamp(angle);
        boolean classed = result.ramp() != RampClass.UNCLASSED;
        Wording name = Wording.name(result.ramp().name());
        Draft draft = sheet(classed ? phrase("slip.ramp-class").with("class", name) : phrase("slip.no-ramp-class"))
                .row("slip.ramp", given(angle))
                .section("exposure.result")
                .row("slip.class", classed ? name : phrase("slip.none"));
        Wording above = Wording.list(
                Joint.COMMA,
                List.of(RampClass.R10, RampClass.R11, RampClass.R12, RampClass.R13),
                ramp -> phrase("slip.ramp-over")
                        .with("class", ramp.name())
                        .with("angle", given(PARAMETERS.get("slip-ramp." + ramp.key(), Angle.class))));
        Wording limits = phrase("slip.ramp-limits")
                .with("lowest", given(result.limit().value()))
                .with("above", above);
        return close(draft, limits, result.limit(), "slip.rests.ramp", result.cautions());
    }

    /** Begins a sheet up to what was given. */
    private static Draft sheet(Wording answer) {
        return ExposureWords.sheet("slip.title").paragraph(answer).section("exposure.given");
    }

    private static <Q extends Quantity> Wording classes(
            String key, String moderateFrom, Class<Q> type, SlipClass<Q> found) {
        return phrase(key)
                .with("moderate", given(PARAMETERS.get(moderateFrom, type)))
                .with("low", given(found.limit().value()));
    }

    private static Document close(
            Draft draft, Wording limit, Limit<?> published, String rests, List<SlipCaution> cautions) {
        draft.section("exposure.limit")
                .bullet(phrase("slip.limit").with("limit", limit).with("source", source(published)))
                .section("exposure.rests-on")
                .bullets(rests, "slip.rests.classes")
                .section("exposure.cautions")
                .bullets(cautions, Wording::of);
        return ExposureWords.decidedBy(draft, published.decides());
    }
}
