package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import stoneprocess.core.exposure.Slurry;
import stoneprocess.core.exposure.SlurryWater;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Acidity;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** Where slurry water may go by its pH. */
final class SlurrySheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private SlurrySheet() {}

    static Document of(Acidity measured) {
        SlurryWater water = Slurry.of(PARAMETERS).classify(measured);
        Draft draft = ExposureWords.sheet("slurry.title")
                .paragraph(Wording.of(water.slurryClass(), "sentence"))
                .section("exposure.given")
                .row("slurry.water", given(measured))
                .section("exposure.result")
                .row("slurry.class", Wording.of(water.slurryClass()))
                .row("slurry.deciding-limit", given(water.limit().value()))
                .section("exposure.limits")
                .bullet(limit("slurry.limit.acid", "corrosive-acid"))
                .bullet(limit("slurry.limit.sewer", "sewer-lowest"))
                .bullet(limit("slurry.limit.alkali", "corrosive-alkali"))
                .section("exposure.rests-on")
                .bullets("slurry.rests.reading", "slurry.rests.limits")
                .section("exposure.cautions")
                .bullets("slurry.caution.storm-drain", "slurry.caution.settle")
                .bullets("slurry.caution.local", "slurry.caution.neutralise");
        return ExposureWords.decidedBy(draft, water.limit().decides());
    }

    private static Wording limit(String key, String name) {
        Parameter parameter = PARAMETERS.parameter("slurry-ph." + name);
        return phrase(key).with("limit", given(parameter.value())).with("source", source(parameter.source()));
    }
}
