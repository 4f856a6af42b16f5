package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
                .bullet("gloss-sheet.mind.look")
                .bullet("gloss-sheet.mind.grip")
                .bullet("gloss-sheet.mind.test-area")
                .bullet("gloss-sheet.mind.codes")
                .bullet(Words.rulebase(recommendation.rulebase()))
                .document();
    }

    private static void ceilings(Draft draft, FloorGloss gloss) {
        Map<GlossCeiling, List<Wording>> families = new LinkedHashMap<>();
        gloss.ceilings()
                .forEach((family, ceiling) -> families.computeIfAbsent(ceiling, first -> new ArrayList<>())
                        .add(Wording.of(family)));
        List<List<Wording>> rows = new ArrayList<>();
        rows.add(List.of(angle(Geometry.DEG_20), angle(Geometry.DEG_60), angle(Geometry.DEG_85), Wording.name("")));
        families.forEach((ceiling, names) -> rows.add(row(ceiling, Wording.list(Joint.COMMA, names))));
        if (!gloss.withoutCeiling().isEmpty()) {
            List<Wording.Phrase> names =
                    gloss.withoutCeiling().stream().map(Wording::of).toList();
            rows.add(row(
                    GlossCeiling.ofAnyStone(),
                    phrase("gloss-sheet.any-stone").with("families", Wording.list(Joint.COMMA, names))));
        }
        draft.section("gloss-sheet.ceilings").rows(rows);
    }

    private static Wording angle(Geometry geometry) {
        return phrase("gloss-sheet.degrees").with("angle", geometry.degrees());
    }

    private static List<Wording> row(GlossCeiling ceiling, Wording families) {
        return Stream.concat(
                        Stream.of(Geometry.DEG_20, Geometry.DEG_60, Geometry.DEG_85)
                                .map(ceiling::at)
                                .map(GlossFigures::whole),
                        Stream.of(families))
                .toList();
    }

    private static void restsOn(Draft draft, Recommendation recommendation, GlossForecastPart forecast) {
        draft.section("exposure.rests-on")
                .bullet(phrase("gloss-sheet.rests.ceilings").with("source", source("ISO-2813")))
                .bullet(phrase("gloss-sheet.rests.angles").with("source", source("ASTM-D523")))
                .bullet(phrase("gloss-sheet.rests.tests").with("confidence", GlossFigures.confidence(recommendation)));
        forecast.sources().forEach(draft::bullet);
    }

    private static Wording source(String id) {
        return Wording.source(Sources.standard().get(id));
    }
}
