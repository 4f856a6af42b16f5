package stoneprocess.examples.gloss;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.source.Sources;
import stoneprocess.core.stone.Family;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/**
 * What a floor reads and could read, as a text. Never parse it; {@link FloorGloss} is the same as data. Immutable and
 * safe to share between threads.
 */
public final class GlossSheet {
    private final UnitSystem units;

    /** @param units the reader's units; gloss reads the same in both */
    public GlossSheet(UnitSystem units) {
        this.units = units;
    }

    /** The text for a plan and its survey, lines of at most 96 characters, ending with a line feed. */
    public String render(Recommendation recommendation, GlossQuestion question) {
        FloorGloss gloss = FloorGloss.of(recommendation, question);
        Parameters parameters = recommendation.parameters();
        Figures figures = new Figures(units);
        Texts texts = Texts.english().in(units).with(parameters);
        ReadingsPart readings = new ReadingsPart(recommendation, gloss, question, figures, texts);
        ForecastPart forecast = new ForecastPart(recommendation, gloss, figures, texts);
        Sheet sheet = new Sheet(recommendation.survey().title() + ": gloss");
        sheet.line(forecast.answer());
        ceilings(sheet, gloss, texts);
        readings.writeTo(sheet);
        forecast.writeTo(sheet);
        readings.needed(sheet);
        rests(sheet, parameters, forecast);
        close(sheet, recommendation);
        return sheet.toString();
    }

    private static void ceilings(Sheet sheet, FloorGloss gloss, Texts texts) {
        sheet.heading("What the stone could reach, perfectly smooth");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("20 degrees", "60 degrees", "85 degrees", ""));
        Map<GlossCeiling, List<String>> families = new LinkedHashMap<>();
        gloss.ceilings()
                .forEach((family, ceiling) -> families.computeIfAbsent(ceiling, key -> new ArrayList<>())
                        .add(texts.word(Wording.of(family))));
        families.forEach((ceiling, names) -> rows.add(row(ceiling, String.join(", ", names))));
        Set<Family> without = gloss.withoutCeiling();
        if (!without.isEmpty()) {
            List<String> names = without.stream()
                    .map(family -> texts.word(Wording.of(family)))
                    .toList();
            rows.add(row(
                    GlossCeiling.ofAnyStone(),
                    "any stone; used for " + String.join(", ", names) + ", of which no ceiling is known"));
        }
        sheet.rows(rows);
    }

    private static List<String> row(GlossCeiling ceiling, String name) {
        return List.of(
                Figures.whole(ceiling.at(Geometry.DEG_20)),
                Figures.whole(ceiling.at(Geometry.DEG_60)),
                Figures.whole(ceiling.at(Geometry.DEG_85)),
                name);
    }

    private static void rests(Sheet sheet, Parameters parameters, ForecastPart forecast) {
        Share confidence = parameters.get("gloss-gain.confidence", Share.class);
        sheet.heading("Rests on");
        sheet.item("Ceilings: " + Sources.standard().get("ISO-2813").print()
                + ": light reflected at the minerals' refractive indices against black glass."
                + " What a family usually consists of is common practice.");
        sheet.item("Angles: " + Sources.standard().get("ASTM-D523").print() + ".");
        sheet.item("Means and gains: Student's t and Welch's test, " + confidence.print() + ".");
        sheet.items(forecast.sources());
    }

    private static void close(Sheet sheet, Recommendation recommendation) {
        sheet.heading("Mind");
        sheet.item("The look comes first: clean, dry, in low-angle light, no scratch of the last grit.");
        sheet.item("Gloss says nothing of grip. Where the floor gets wet a slip tester measures wet slip and decides.");
        sheet.item("The owner accepts the floor against the signed test area, not against this sheet.");
        sheet.item("Local codes and the named tester go before this sheet.");
        sheet.item("Made with rulebase " + recommendation.rulebase().version() + ", "
                + recommendation.rulebase().hash().substring(0, 12) + ".");
    }
}
