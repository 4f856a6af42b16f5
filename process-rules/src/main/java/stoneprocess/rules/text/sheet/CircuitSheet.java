package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.atLeast;
import static stoneprocess.rules.text.sheet.ExposureWords.atMost;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.List;
import stoneprocess.core.exposure.Circuit;
import stoneprocess.core.exposure.CircuitLoad;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Current;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** What a circuit carries for hours, and what hangs on it. */
final class CircuitSheet {
    private CircuitSheet() {}

    static Document of(Voltage volts, Current breaker, List<Power> loads) {
        CircuitLoad load = Circuit.of(Parameters.standard()).load(volts, breaker, loads);
        Wording share = given(load.limit().value());
        boolean published = load.limit().source().published();
        Draft draft = ExposureWords.sheet("circuit.title")
                .paragraph(Wording.of(load.verdict()))
                .section("exposure.given")
                .row(
                        "circuit.circuit",
                        phrase("circuit.volts-and-breaker")
                                .with("volts", given(volts))
                                .with("breaker", given(breaker)));
        loads.forEach(power -> draft.row("circuit.load", given(power)));
        draft.section("exposure.result")
                .row("circuit.carries", atMost(load.continuous()))
                .row("circuit.hangs-on-it", atLeast(load.load()))
                .row("circuit.left", atMost(load.spare()))
                .section("exposure.limit")
                .bullet(phrase("circuit.limit").with("share", share).with("source", source(load.limit())))
                .section("exposure.rests-on")
                .bullet("circuit.rests.given")
                .bullet(phrase(published ? "circuit.rests.published" : "circuit.rests.practice")
                        .with("share", share))
                .section("exposure.cautions")
                .bullets("circuit.caution.motors", "circuit.caution.everything")
                .bullets("circuit.caution.cable", "circuit.caution.wet");
        return ExposureWords.decidedBy(draft, load.limit().decides());
    }
}
