package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.row;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.List;
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
        Draft draft = sheet(found.potential());
        ExposureWords.given(draft, List.of(row("slip.pendulum", given(value))));
        ExposureWords.result(
                draft,
                List.of(
                        row("slip.potential", Wording.of(found.potential())),
                        row(
                                "slip.friction",
                                phrase("slip.friction-of-slider")
                                        .with("friction", ExposureWords.atMost(WetSlip.friction(value))))));
        limit(
                draft,
                classes("slip.classes-from", "slip-pendulum.moderate-from", PendulumValue.class, found),
                found.limit());
        return close(draft, found.limit(), found.cautions(), phrase("slip.rests.pendulum"));
    }

    static Document ofRoughness(Length rz) {
        SlipClass<Length> found = WET_SLIP.byRoughness(rz);
        Draft draft = sheet(found.potential());
        ExposureWords.given(draft, List.of(row("slip.roughness", given(rz))));
        ExposureWords.result(
                draft,
                List.of(row("slip.potential", phrase("slip.in-clean-water").with("potential", found.potential()))));
        limit(draft, classes("slip.classes-over", "slip-roughness.moderate-from", Length.class, found), found.limit());
        return close(draft, found.limit(), found.cautions(), phrase("slip.rests.roughness"));
    }

    static Document ofFriction(Friction measured, SlipPlace place) {
        FrictionCheck check = WET_SLIP.byFriction(measured, place);
        Wording limit = given(check.limit().value());
        Draft draft =
                ExposureWords.sheet("slip.title").paragraph(check.meetsLimit() ? "slip.limit-met" : "slip.under-limit");
        ExposureWords.given(draft, List.of(row("slip.dynamic", given(measured)), row("slip.place", Wording.of(place))));
        ExposureWords.result(
                draft,
                List.of(
                        row("slip.least", limit),
                        row("slip.met", phrase(check.meetsLimit() ? "slip.yes" : "slip.no"))));
        limit(draft, phrase("slip.at-least").with("limit", limit), check.limit());
        return close(
                draft,
                check.limit(),
                check.cautions(),
                phrase(place == SlipPlace.INTERIOR_DRY ? "slip.rests.dry" : "slip.rests.wet"));
    }

    static Document ofRamp(Angle angle) {
        RampResult result = WET_SLIP.byRamp(angle);
        boolean classed = result.ramp() != RampClass.UNCLASSED;
        Wording name = Wording.name(result.ramp().name());
        Draft draft = ExposureWords.sheet("slip.title")
                .paragraph(classed ? phrase("slip.ramp-class").with("class", name) : phrase("slip.no-ramp-class"));
        ExposureWords.given(draft, List.of(row("slip.ramp", given(angle))));
        ExposureWords.result(draft, List.of(row("slip.class", classed ? name : phrase("slip.none"))));
        List<Wording> above = Stream.of(RampClass.R10, RampClass.R11, RampClass.R12, RampClass.R13)
                .<Wording>map(ramp -> phrase("slip.ramp-over")
                        .with("class", ramp.name())
                        .with("angle", given(PARAMETERS.get("slip-ramp." + ramp.key(), Angle.class))))
                .toList();
        limit(
                draft,
                phrase("slip.ramp-limits")
                        .with("lowest", given(result.limit().value()))
                        .with("above", Wording.list(Joint.COMMA, above)),
                result.limit());
        return close(draft, result.limit(), result.cautions(), phrase("slip.rests.ramp"));
    }

    private static Draft sheet(SlipPotential potential) {
        return ExposureWords.sheet("slip.title").paragraph(Wording.of(potential, "sentence"));
    }

    private static <Q extends Quantity> Wording classes(
            String key, String moderateFrom, Class<Q> type, SlipClass<Q> found) {
        return phrase(key)
                .with("moderate", given(PARAMETERS.get(moderateFrom, type)))
                .with("low", given(found.limit().value()));
    }

    private static void limit(Draft draft, Wording limit, Limit<?> published) {
        ExposureWords.limit(draft, phrase("slip.limit").with("limit", limit).with("source", source(published)));
    }

    private static Document close(Draft draft, Limit<?> limit, List<SlipCaution> cautions, Wording rests) {
        return ExposureWords.close(
                draft,
                List.of(rests, phrase("slip.rests.classes")),
                cautions.stream().map(Wording::of).toList(),
                limit.decides());
    }
}
