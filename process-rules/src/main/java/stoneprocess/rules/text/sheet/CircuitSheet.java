package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.atLeast;
import static stoneprocess.rules.text.sheet.ExposureWords.atMost;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.row;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.ArrayList;
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
    private static final Circuit CIRCUIT = Circuit.of(Parameters.standard());

    private CircuitSheet() {}

    static Document of(Voltage volts, Current breaker, List<Power> loads) {
        CircuitLoad load = CIRCUIT.load(volts, breaker, loads);
        Draft draft = ExposureWords.sheet("circuit.title").paragraph(Wording.of(load.verdict()));
        List<List<Wording>> rows = new ArrayList<>();
        rows.add(row(
                "circuit.circuit",
                phrase("circuit.volts-and-breaker").with("volts", given(volts)).with("breaker", given(breaker))));
        loads.forEach(power -> rows.add(row("circuit.load", given(power))));
        ExposureWords.given(draft, rows);
        ExposureWords.result(
                draft,
                List.of(
                        row("circuit.carries", atMost(load.continuous())),
                        row("circuit.hangs-on-it", atLeast(load.load())),
                        row("circuit.left", atMost(load.spare()))));
        Wording share = given(load.limit().value());
        ExposureWords.limit(draft, phrase("circuit.limit").with("share", share).with("source", source(load.limit())));
        boolean published = load.limit().source().published();
        return ExposureWords.close(
                draft,
                List.of(
                        phrase("circuit.rests.given"),
                        phrase(published ? "circuit.rests.published" : "circuit.rests.practice")
                                .with("share", share)),
                List.of(
                        phrase("circuit.caution.motors"),
                        phrase("circuit.caution.everything"),
                        phrase("circuit.caution.cable"),
                        phrase("circuit.caution.wet")),
                load.limit().decides());
    }
}
