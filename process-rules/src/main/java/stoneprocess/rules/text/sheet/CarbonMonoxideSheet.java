package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.atLeast;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stoneprocess.core.exposure.CarbonMonoxide;
import stoneprocess.core.exposure.CarbonMonoxideBuildUp;
import stoneprocess.core.exposure.CarbonMonoxideLimit;
import stoneprocess.core.exposure.NeededAir;
import stoneprocess.core.exposure.Purge;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.exposure.RoomAir;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.source.Sources;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.Wording;

/** What an engine does to the air of a room. Every sheet says that it is not cleared. */
final class CarbonMonoxideSheet {
    private static final CarbonMonoxide CARBON_MONOXIDE = CarbonMonoxide.of(Parameters.standard());

    private CarbonMonoxideSheet() {}

    static Document ofEngine(RoomAir room, Power power, TimeSpan running) {
        Parameter emission = Parameters.standard().parameter("carbon-monoxide.petrol-per-kilowatt-hour");
        return document(
                room,
                phrase("carbon-monoxide.engine"),
                phrase("carbon-monoxide.petrol-engine").with("power", Wording.amount(power, Precision.ENGINE)),
                CARBON_MONOXIDE.petrolEngine(power),
                running,
                phrase("carbon-monoxide.rests.engine")
                        .with("emission", Wording.amount(emission.value(), Precision.EXACT))
                        .with("source", source(emission.source())));
    }

    static Document ofSource(RoomAir room, Airflow gas, TimeSpan running) {
        return document(
                room,
                phrase("carbon-monoxide.source"),
                phrase("carbon-monoxide.of-gas").with("flow", given(gas)),
                gas,
                running,
                phrase("carbon-monoxide.rests.source"));
    }

    private static Document document(
            RoomAir room, Wording label, Wording engine, Airflow gas, TimeSpan running, Wording whereTheGasIsFrom) {
        CarbonMonoxideBuildUp buildUp = CARBON_MONOXIDE.buildUp(room, gas, running);
        boolean airKnown = room.outdoorAir().cubicMetresPerHour() > 0;
        Wording ceiling =
                given(CARBON_MONOXIDE.limit(CarbonMonoxideLimit.NIOSH_CEILING).value());
        Draft draft = ExposureWords.sheet("carbon-monoxide.title")
                .paragraph("carbon-monoxide.not-cleared")
                .paragraph(Wording.of(buildUp.verdict()))
                .section("exposure.given")
                .row("carbon-monoxide.room", given(room.volume()))
                .row(
                        "carbon-monoxide.fresh-air",
                        airKnown ? given(room.outdoorAir()) : phrase("carbon-monoxide.no-air-known"))
                .row("carbon-monoxide.background", given(room.background()))
                .row(label, engine)
                .row("carbon-monoxide.running", given(running))
                .section("carbon-monoxide.mixed")
                .row(
                        "carbon-monoxide.gives-off",
                        phrase("carbon-monoxide.of-gas").with("flow", atLeast(gas)))
                .row("carbon-monoxide.at-end", atLeast(buildUp.atEnd()))
                .row("carbon-monoxide.mean", atLeast(buildUp.shiftMean()))
                .row(
                        phrase("carbon-monoxide.time-to-ceiling").with("ceiling", ceiling),
                        buildUp.timeToCeiling()
                                .map(ExposureWords::atMost)
                                .orElseGet(() -> phrase("carbon-monoxide.ceiling-not-reached")));
        holding(draft, room, buildUp, gas);
        draft.section("exposure.rests-on")
                .bullet("carbon-monoxide.rests.given")
                .bullet(whereTheGasIsFrom)
                .bullet(phrase("carbon-monoxide.rests.balance")
                        .with("source", source(Sources.standard().get("NIOSH-96-118"))))
                .section("exposure.cautions")
                .bullets(buildUp.cautions(), Wording::of);
        return ExposureWords.decidedBy(draft, Role.HYGIENIST);
    }

    private static void holding(Draft draft, RoomAir room, CarbonMonoxideBuildUp buildUp, Airflow gas) {
        draft.section("carbon-monoxide.holding")
                .row(
                        Wording.name(""),
                        phrase("carbon-monoxide.air-to-hold"),
                        phrase("carbon-monoxide.one-change"),
                        phrase("carbon-monoxide.airing-after"));
        List<Wording> sources = new ArrayList<>();
        for (CarbonMonoxideLimit aim : CarbonMonoxideLimit.values()) {
            NeededAir needed = CARBON_MONOXIDE.neededAir(room, gas, aim);
            Purge purge = CARBON_MONOXIDE.purge(room, buildUp.atEnd(), aim);
            Wording limit = phrase("carbon-monoxide.limit")
                    .with("name", aim)
                    .with("value", given(purge.limit().value()));
            draft.row(
                    limit,
                    needed.air().map(ExposureWords::atLeast).orElseGet(() -> phrase("carbon-monoxide.no-air-does")),
                    needed.oneChange().map(ExposureWords::atMost).orElse(Wording.name("-")),
                    airing(purge));
            sources.add(
                    phrase("carbon-monoxide.limit-source").with("limit", limit).with("source", source(purge.limit())));
        }
        draft.section("exposure.limits").bullets(sources, Function.identity());
    }

    private static Wording airing(Purge purge) {
        return purge.time()
                .map(time -> time.minutes() > 0 ? atLeast(time) : phrase("carbon-monoxide.not-over"))
                .orElseGet(() -> phrase("carbon-monoxide.never-aired"));
    }
}
