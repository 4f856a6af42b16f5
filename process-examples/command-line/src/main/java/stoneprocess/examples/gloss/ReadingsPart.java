package stoneprocess.examples.gloss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.gloss.Film;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GeometryAdvice;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.SetAside;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.AngleGloss;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.site.HoldPointGloss;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.ReadingsNeeded;
import stoneprocess.core.site.ZoneGloss;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** What was read, zone by zone and hold point by hold point, and how many readings a mean needs. */
final class ReadingsPart {
    private final Recommendation recommendation;
    private final FloorGloss gloss;
    private final GlossQuestion question;
    private final Parameters parameters;
    private final Figures figures;
    private final Texts texts;
    private final Share confidence;

    ReadingsPart(
            Recommendation recommendation, FloorGloss gloss, GlossQuestion question, Figures figures, Texts texts) {
        this.recommendation = recommendation;
        this.gloss = gloss;
        this.question = question;
        this.parameters = recommendation.parameters();
        this.figures = figures;
        this.texts = texts;
        this.confidence = parameters.get("gloss-gain.confidence", Share.class);
    }

    void writeTo(Sheet sheet) {
        sheet.heading("What the floor reads, clean and dry");
        List<String> notRead = new ArrayList<>();
        for (ZoneGloss zone : gloss.zones()) {
            if (zone.angles().isEmpty()) {
                notRead.add(zone.zone());
            } else {
                zone(zone, sheet);
            }
        }
        if (gloss.zones().isEmpty()) {
            sheet.item("The survey has no zones and so no readings. " + firstReading());
        } else if (!notRead.isEmpty()) {
            sheet.item("Not read: " + String.join(", ", notRead) + ". " + firstReading());
        }
        setAside(sheet);
        film(sheet);
        holdPoints(sheet);
    }

    private String firstReading() {
        return "Begin at " + GeometryAdvice.FIRST.degrees() + " degrees, lane and corner, three times each.";
    }

    private void zone(ZoneGloss zone, Sheet sheet) {
        sheet.group(zone.zone());
        for (AngleGloss angle : zone.angles()) {
            sheet.under("at " + angle.geometry().degrees() + " degrees: " + statistics(angle));
            overCeiling(angle).ifPresent(sheet::under);
        }
        sheet.under(angle(zone));
    }

    private String statistics(AngleGloss angle) {
        ZoneStatistics statistics = angle.statistics();
        return Figures.count(statistics.count(), "reading", "readings") + ", mean "
                + figures.read(statistics.mean()) + ", lowest " + figures.read(statistics.lowest()) + ". "
                + angle.meanWithin()
                        .map(interval -> "The mean lies within " + figures.read(interval) + " (" + confidence.print()
                                + "); single readings scatter by "
                                + figures.read(statistics.deviation().orElseThrow()) + ".")
                        .orElse("A single reading shows no scatter: it gives no interval and cannot show a gain."
                                + " At least 1 more is needed.");
    }

    private String angle(ZoneGloss zone) {
        if (zone.best().isEmpty()) {
            return "Read it at 60 degrees too: that angle comes first, and the forecast knows no other.";
        }
        Geometry best = zone.best().orElseThrow();
        if (best == Geometry.DEG_60) {
            return "60 degrees tells most here.";
        }
        String limit =
                best == Geometry.DEG_85 ? "under " + limit("gloss-angle.low") : "over " + limit("gloss-angle.high");
        return best.degrees() + " degrees tells more here: at 60 degrees it reads " + limit + "."
                + (zone.isReadAt(best) ? "" : " It is not read at that angle yet.");
    }

    private String limit(String name) {
        return figures.read(parameters.get(name, Gloss.class));
    }

    private Optional<String> overCeiling(AngleGloss angle) {
        if (!angle.impossible().isEmpty()) {
            return Optional.of("OVER THE CEILING: "
                    + String.join(
                            ", ", angle.impossible().stream().map(figures::read).toList())
                    + ". The stone reads "
                    + Figures.whole(
                            KnownStone.of(recommendation).highestCeiling().at(angle.geometry()))
                    + " at most at " + angle.geometry().degrees()
                    + " degrees. Check the meter's calibration, its angle and what the stone is;"
                    + " the forecast leaves it out.");
        }
        return angle.excluded().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "More than "
                                + Figures.or(angle.excluded().stream()
                                        .map(family -> texts.word(Wording.of(family)))
                                        .toList())
                                + " can read: the stone is another one, or a film reads. The forecast leaves such readings out.");
    }

    private void setAside(Sheet sheet) {
        for (SetAside aside : gloss.setAside()) {
            Reading reading = aside.reading();
            String why = aside.reason() == SetAside.Reason.WET
                    ? "wet: the water film reads, not the stone. Read it again dry."
                    : "soiled: dirt or slurry reads, not the stone. Clean it and read again.";
            sheet.item("Set aside, " + reading.zone() + ", " + figures.read(reading.gloss()) + " at "
                    + reading.geometry().degrees() + " degrees: " + why);
        }
    }

    private void film(Sheet sheet) {
        if (recommendation.survey().readings().isEmpty()) {
            return;
        }
        Optional<Coating> coating =
                recommendation.survey().answer(SurveyField.COATING).value();
        if (gloss.coated()) {
            sheet.item(
                    "FILM: the survey names a coating (" + coating.orElseThrow().key()
                            + "). These readings tell of the film, which reads up to "
                            + Figures.whole(Film.COATING.cap(Geometry.DEG_60))
                            + " at 60 degrees by itself; the forecast leaves them out.");
        } else if (coating.isEmpty()) {
            sheet.item("Whether a coating lies on the face is not known: the readings may be a film's.");
        }
    }

    private void holdPoints(Sheet sheet) {
        if (gloss.holdPoints().isEmpty()) {
            return;
        }
        sheet.heading("What it read at the hold points, 60 degrees"
                + gloss.zone().map(name -> ", " + name).orElse(""));
        for (HoldPointGloss point : gloss.holdPoints()) {
            int passes = point.done().passes();
            sheet.group("after resin " + point.done().grit() + ", " + Figures.count(passes, "pass", "passes"));
            point.read().ifPresentOrElse(read -> sheet.under(statistics(read)), () -> sheet.under("not read"));
            point.gain().ifPresent(gain -> sheet.under(gain(gain)));
            point.read().flatMap(this::overCeiling).ifPresent(sheet::under);
            if (!point.overGrit().isEmpty()) {
                sheet.under(film(point));
            }
        }
    }

    private String film(HoldPointGloss point) {
        String high =
                String.join(", ", point.overGrit().stream().map(figures::read).toList());
        return "FILM: " + high + " is more than resin " + point.done().grit()
                + " gives (up to " + Figures.whole(point.mostOfGrit().orElseThrow()) + " on 99 % of floors). "
                + (point.films().isEmpty()
                        ? "No water and no usual coating reads that much: check the meter."
                        : "Look for "
                                + Figures.or(
                                        point.films().stream().map(Term::key).toList())
                                + " and for residue, and read again clean and dry.");
    }

    private String gain(Gain gain) {
        String change = "Against the readings before: " + figures.change(gain.change());
        return switch (gain.verdict()) {
            case NOT_ENOUGH_READINGS ->
                change + ", which shows nothing yet: " + String.join(" and ", missing(gain))
                        + " missing until scatter is known.";
            case WITHIN_SCATTER ->
                change + " (" + figures.change(gain.interval().orElseThrow())
                        + "), which does not stand out from scatter and meter.";
            case REAL ->
                change + " (" + figures.change(gain.interval().orElseThrow()) + "): real, beyond scatter and meter.";
        };
    }

    private static List<String> missing(Gain gain) {
        List<String> missing = new ArrayList<>();
        if (gain.missingBefore() > 0) {
            missing.add(Figures.count(gain.missingBefore(), "reading", "readings") + " before");
        }
        if (gain.missingAfter() > 0) {
            missing.add(Figures.count(gain.missingAfter(), "reading", "readings") + " after");
        }
        return missing;
    }

    /** How many readings give a mean of the wanted half width. */
    void needed(Sheet sheet) {
        sheet.heading("Readings for a mean within " + figures.read(question.within()) + " either way, "
                + confidence.print() + " sure, 60 degrees");
        List<List<String>> rows = new ArrayList<>();
        for (ReadingsNeeded needed : gloss.needed()) {
            rows.add(List.of(
                    Figures.count(needed.number(), "reading", "readings"),
                    needed.zone() + ": scatter " + figures.read(needed.deviation())
                            + (needed.ownScatter()
                                    ? ", of its own " + needed.taken() + " readings"
                                    : ", usual for such gloss (common practice), since one reading shows none")));
        }
        if (rows.isEmpty()) {
            sheet.item("No zone is read clean and dry at 60 degrees, so its scatter is not known."
                    + " Read three times, then ask again.");
            return;
        }
        sheet.rows(rows);
    }
}
