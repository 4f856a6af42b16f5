package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.ExposureWords.given;
import static stoneprocess.rules.text.sheet.ExposureWords.row;
import static stoneprocess.rules.text.sheet.ExposureWords.source;

import java.util.List;
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

    private static final Slurry SLURRY = Slurry.of(PARAMETERS);

    private SlurrySheet() {}

    static Document of(Acidity measured) {
        SlurryWater water = SLURRY.classify(measured);
        Draft draft = ExposureWords.sheet("slurry.title").paragraph(Wording.of(water.slurryClass(), "sentence"));
        ExposureWords.given(draft, List.of(row("slurry.water", given(measured))));
        ExposureWords.result(
                draft,
                List.of(
                        row("slurry.class", Wording.of(water.slurryClass())),
                        row("slurry.deciding-limit", given(water.limit().value()))));
        ExposureWords.limit(
                draft,
                limit("slurry.limit.acid", "corrosive-acid"),
                limit("slurry.limit.sewer", "sewer-lowest"),
                limit("slurry.limit.alkali", "corrosive-alkali"));
        return ExposureWords.close(
                draft,
                List.of(phrase("slurry.rests.reading"), phrase("slurry.rests.limits")),
                List.of(
                        phrase("slurry.caution.storm-drain"),
                        phrase("slurry.caution.settle"),
                        phrase("slurry.caution.local"),
                        phrase("slurry.caution.neutralise")),
                water.limit().decides());
    }

    private static Wording limit(String key, String name) {
        Parameter parameter = PARAMETERS.parameter("slurry-ph." + name);
        return phrase(key).with("limit", given(parameter.value())).with("source", source(parameter.source()));
    }
}
