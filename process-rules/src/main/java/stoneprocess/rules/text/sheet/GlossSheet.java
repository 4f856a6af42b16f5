package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.source.Sources;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What a floor reads and could read. {@link FloorGloss} is the same as data. */
public final class GlossSheet {
    private GlossSheet() {}

    /**
     * The document for a plan and its survey.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for a zone or a grit that the survey or the plan does not have
     */
    public static Document of(Recommendation recommendation, GlossQuestion question) {
        FloorGloss gloss = FloorGloss.of(recommendation, question);
        GlossForecastPart forecast = new GlossForecastPart(recommendation, gloss);
        Draft draft = Draft.titled(
                        phrase("gloss-sheet.title")
                                .with("floor", recommendation.survey().title()),
                        recommendation.parameters())
                .paragraph(forecast.answer());
        ceilings(draft, gloss);
        new GlossReadingsPart(recommendation, gloss).write(draft);
        forecast.write(draft);
        GlossReadingsPart.needed(draft, gloss, question, GlossFigures.confidence(recommendation));
        restsOn(draft, recommendation, forecast);
        return draft.section("closing.heading")
                .bullets("gloss-sheet.mind.look", "gloss-sheet.mind.grip")
                .bullets("gloss-sheet.mind.test-area", "gloss-sheet.mind.codes")
                .bullet(Words.rulebase(recommendation.rulebase()))
                .document();
    }

    private static void ceilings(Draft draft, FloorGloss gloss) {
        Map<GlossCeiling, List<Wording>> families = new LinkedHashMap<>();
        gloss.ceilings()
                .forEach((family, ceiling) -> families.computeIfAbsent(ceiling, first -> new ArrayList<>())
                        .add(Wording.of(family)));
        draft.section("gloss-sheet.ceilings");
        row(draft, angle -> phrase("gloss-sheet.degrees").with("angle", angle.degrees()), Wording.name(""));
        families.forEach((ceiling, names) -> row(draft, ceiling, Wording.list(Joint.COMMA, names)));
        if (!gloss.withoutCeiling().isEmpty()) {
            Wording names = Wording.list(Joint.COMMA, gloss.withoutCeiling(), Wording::of);
            row(
                    draft,
                    GlossCeiling.ofAnyStone(),
                    phrase("gloss-sheet.any-stone").with("families", names));
        }
    }

    private static void row(Draft draft, GlossCeiling ceiling, Wording families) {
        row(draft, angle -> GlossFigures.whole(ceiling.at(angle)), families);
    }

    private static void row(Draft draft, Function<Geometry, Wording> cell, Wording last) {
        draft.row(cell.apply(Geometry.DEG_20), cell.apply(Geometry.DEG_60), cell.apply(Geometry.DEG_85), last);
    }

    private static void restsOn(Draft draft, Recommendation recommendation, GlossForecastPart forecast) {
        draft.section("exposure.rests-on")
                .bullet(phrase("gloss-sheet.rests.ceilings").with("source", source("ISO-2813")))
                .bullet(phrase("gloss-sheet.rests.angles").with("source", source("ASTM-D523")))
                .bullet(phrase("gloss-sheet.rests.tests").with("confidence", GlossFigures.confidence(recommendation)))
                .bullets(forecast.sources(), Function.identity());
    }

    private static Wording source(String id) {
        return Wording.source(Sources.standard().get(id));
    }
}
