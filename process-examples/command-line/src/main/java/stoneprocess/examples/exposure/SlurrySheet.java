package stoneprocess.examples.exposure;

import java.util.List;
import stoneprocess.core.exposure.Slurry;
import stoneprocess.core.exposure.SlurryClass;
import stoneprocess.core.exposure.SlurryWater;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Acidity;
import stoneprocess.core.quantity.UnitSystem;

/** Where slurry water may go by its pH. */
public final class SlurrySheet {
    private static final Parameters PARAMETERS = Parameters.standard();

    private final Slurry slurry = Slurry.of(PARAMETERS);
    private final Figures figures;

    /** The sheet in the reader's units. */
    public SlurrySheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /**
     * The text.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for a pH that no meter reads
     */
    public String render(Acidity measured) {
        SlurryWater water = slurry.classify(measured);
        Sheet sheet = new Sheet("Slurry water").answer(sentence(water.slurryClass()));
        sheet.rows("Given", List.of(List.of("slurry water", figures.given(measured))));
        sheet.rows(
                "Result",
                List.of(
                        List.of("class", word(water.slurryClass())),
                        List.of(
                                "limit that decides",
                                figures.given(water.limit().value()))));
        sheet.items(
                "Limits",
                List.of(
                        limit("Corrosive waste at %s and below", "corrosive-acid"),
                        limit("No sewer under %s", "sewer-lowest"),
                        limit("Corrosive waste at %s and above", "corrosive-alkali")));
        return sheet.close(
                List.of(
                        "The reading of this slurry as given, by a meter or strip that is fit for it.",
                        "Published federal limits of the United States; the class is by pH alone."),
                List.of(
                        "Nothing but rain goes to a storm drain, whatever its pH.",
                        "Settle the solids out first: slurry sets in drains. Solids go the way that the waste"
                                + " authority names.",
                        "The local authority often sets more than pH: a narrower band, solids, metals.",
                        "Never thin or neutralise corrosive waste to get it under a limit without leave; caustic slurry"
                                + " burns skin and eyes: waterproof gloves, goggles, boots."),
                water.limit().decides());
    }

    private String limit(String words, String name) {
        Parameter parameter = PARAMETERS.parameter("slurry-ph." + name);
        return String.format(words, figures.given(parameter.value())) + " (" + Sheet.source(parameter.source()) + ").";
    }

    private static String sentence(SlurryClass slurryClass) {
        return switch (slurryClass) {
            case CORROSIVE_ACID -> "CORROSIVE WASTE by its acid: no drain and no sewer.";
            case CORROSIVE_ALKALI -> "CORROSIVE WASTE by its alkali: no drain and no sewer.";
            case TOO_ACID_FOR_SEWER -> "TOO ACID for a sewer.";
            case SEWER_BY_LEAVE_ONLY -> "SEWER BY LEAVE ONLY: its pH alone forbids no sewer; the local authority may.";
        };
    }

    private static String word(SlurryClass slurryClass) {
        return switch (slurryClass) {
            case CORROSIVE_ACID, CORROSIVE_ALKALI -> "corrosive waste";
            case TOO_ACID_FOR_SEWER -> "too acid for a sewer";
            case SEWER_BY_LEAVE_ONLY -> "to a sewer by leave only, settled";
        };
    }
}
