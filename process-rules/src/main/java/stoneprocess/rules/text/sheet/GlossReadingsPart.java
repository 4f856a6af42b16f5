package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.gloss.Film;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GeometryAdvice;
import stoneprocess.core.gloss.SetAside;
import stoneprocess.core.gloss.ZoneStatistics;
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
import stoneprocess.rules.text.GlossWords;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What was read, zone by zone and hold point by hold point, and how many readings a mean needs. */
record GlossReadingsPart(Recommendation recommendation, FloorGloss gloss) {
    void write(Draft draft) {
        draft.section("gloss-sheet.readings");
        gloss.zones().stream()
                .filter(zone -> !zone.angles().isEmpty())
                .forEach(zone -> draft.group(Wording.name(zone.zone()), zone(zone)));
        notRead(draft);
        draft.bullets(gloss.setAside(), GlossReadingsPart::setAside);
        film(draft);
        holdPoints(draft);
    }

    private void notRead(Draft draft) {
        Wording first = phrase("gloss-sheet.first-reading").with("angle", GeometryAdvice.FIRST.degrees());
        List<Wording> zones = gloss.zones().stream()
                .filter(zone -> zone.angles().isEmpty())
                .map(zone -> Wording.name(zone.zone()))
                .toList();
        if (gloss.zones().isEmpty()) {
            draft.bullet(phrase("gloss-sheet.no-zones").with("begin", first));
        } else if (!zones.isEmpty()) {
            draft.bullet(phrase("gloss-sheet.not-read-zones")
                    .with("zones", Wording.list(Joint.COMMA, zones))
                    .with("begin", first));
        }
    }

    private List<Item> zone(ZoneGloss zone) {
        List<Item> items = new ArrayList<>();
        for (AngleGloss angle : zone.angles()) {
            items.add(line(phrase("gloss-sheet.at-angle")
                    .with("angle", angle.geometry().degrees())
                    .with("statistics", statistics(angle))));
            overCeiling(angle).ifPresent(items::add);
        }
        items.add(line(bestAngle(zone)));
        return items;
    }

    private static Item line(Wording words) {
        return new Item.Paragraph(words);
    }

    private Wording statistics(AngleGloss angle) {
        ZoneStatistics statistics = angle.statistics();
        Wording scatter = angle.meanWithin()
                .map(interval -> phrase("gloss-sheet.interval")
                        .with("interval", GlossFigures.range(interval))
                        .with("confidence", GlossFigures.confidence(recommendation))
                        .with(
                                "deviation",
                                GlossFigures.tenths(statistics.deviation().orElseThrow())))
                .orElseGet(() -> phrase("gloss-sheet.no-scatter"));
        return phrase("gloss-sheet.statistics")
                .with("readings", GlossWords.readings(statistics.count()))
                .with("mean", statistics.mean())
                .with("lowest", statistics.lowest())
                .with("scatter", scatter);
    }

    private Wording bestAngle(ZoneGloss zone) {
        if (zone.best().isEmpty()) {
            return phrase("gloss-sheet.read-at-60");
        }
        Geometry best = zone.best().orElseThrow();
        if (best == Geometry.DEG_60) {
            return phrase("gloss-sheet.60-tells-most");
        }
        boolean low = best == Geometry.DEG_85;
        String limit = low ? "gloss-angle.low" : "gloss-angle.high";
        Wording tellsMore = phrase(low ? "gloss-sheet.tells-more-under" : "gloss-sheet.tells-more-over")
                .with("angle", best.degrees())
                .with("limit", recommendation.parameters().get(limit, Gloss.class));
        return zone.isReadAt(best) ? tellsMore : Wording.sentences(tellsMore, phrase("gloss-sheet.not-at-that-angle"));
    }

    private Optional<Item> overCeiling(AngleGloss angle) {
        if (!angle.impossible().isEmpty()) {
            Gloss ceiling = KnownStone.of(recommendation).highestCeiling().at(angle.geometry());
            return Optional.of(line(phrase("gloss-sheet.over-ceiling")
                    .with("readings", GlossFigures.readings(angle.impossible()))
                    .with("ceiling", GlossFigures.whole(ceiling))
                    .with("angle", angle.geometry().degrees())));
        }
        return Optional.of(angle.excluded())
                .filter(families -> !families.isEmpty())
                .map(families -> line(phrase("gloss-sheet.excluded").with("families", GlossFigures.anyOf(families))));
    }

    private static Wording setAside(SetAside aside) {
        return phrase("gloss-sheet.set-aside")
                .with("zone", aside.reading().zone())
                .with("gloss", aside.reading().gloss())
                .with("angle", aside.reading().geometry().degrees())
                .with("why", aside.reason());
    }

    private void film(Draft draft) {
        if (recommendation.survey().readings().isEmpty()) {
            return;
        }
        Optional<Coating> coating =
                recommendation.survey().answer(SurveyField.COATING).value();
        if (gloss.coated()) {
            draft.bullet(phrase("gloss-sheet.coated")
                    .with("coating", coating.orElseThrow())
                    .with("cap", GlossFigures.whole(Film.COATING.cap(Geometry.DEG_60))));
        } else if (coating.isEmpty()) {
            draft.bullet("gloss-sheet.coating-not-known");
        }
    }

    private void holdPoints(Draft draft) {
        if (gloss.holdPoints().isEmpty()) {
            return;
        }
        draft.section(gloss.zone()
                .map(zone -> phrase("gloss-sheet.hold-points-of-zone").with("zone", zone))
                .orElseGet(() -> phrase("gloss-sheet.hold-points")));
        for (HoldPointGloss point : gloss.holdPoints()) {
            List<Item> items = new ArrayList<>();
            items.add(line(point.read().map(this::statistics).orElseGet(() -> phrase("gloss-sheet.not-read"))));
            point.gain().ifPresent(gain -> items.add(line(gain(gain))));
            point.read().flatMap(this::overCeiling).ifPresent(items::add);
            if (!point.overGrit().isEmpty()) {
                items.add(line(film(point)));
            }
            draft.group(
                    phrase("gloss-sheet.after-grit")
                            .with("grit", GlossFigures.resin(point.done().grit()))
                            .with("passes", point.done().passes()),
                    items);
        }
    }

    private static Wording film(HoldPointGloss point) {
        return phrase(point.films().isEmpty() ? "gloss-sheet.no-film" : "gloss-sheet.film")
                .with("readings", GlossFigures.readings(point.overGrit()))
                .with("grit", GlossFigures.resin(point.done().grit()))
                .with("most", GlossFigures.whole(point.mostOfGrit().orElseThrow()))
                .with("films", GlossFigures.anyOf(point.films()));
    }

    private static Wording gain(Gain gain) {
        Wording.Phrase verdict = Wording.of(gain.verdict(), "gain")
                .with("change", GlossFigures.change(gain.change()))
                .with("missing", missing(gain));
        return gain.interval()
                .map(interval -> verdict.with("interval", GlossFigures.changes(interval)))
                .orElse(verdict);
    }

    private static Wording missing(Gain gain) {
        List<Wording> missing = new ArrayList<>();
        if (gain.missingBefore() > 0) {
            missing.add(phrase("gloss-sheet.before").with("readings", GlossWords.readings(gain.missingBefore())));
        }
        if (gain.missingAfter() > 0) {
            missing.add(phrase("gloss-sheet.after").with("readings", GlossWords.readings(gain.missingAfter())));
        }
        return Wording.list(Joint.AND, missing);
    }

    /** How many readings give a mean of the wanted half width. */
    static void needed(Draft draft, FloorGloss gloss, GlossQuestion question, Share confidence) {
        draft.section(
                phrase("gloss-sheet.needed").with("within", question.within()).with("confidence", confidence));
        if (gloss.needed().isEmpty()) {
            draft.bullet("gloss-sheet.scatter-not-known");
        } else {
            gloss.needed().forEach(needed -> needed(draft, needed, question));
            if (gloss.needed().stream().anyMatch(needed -> !needed.known())) {
                draft.bullet("gloss-sheet.not-so-closely");
            }
        }
    }

    private static void needed(Draft draft, ReadingsNeeded needed, GlossQuestion question) {
        Wording.Phrase shows = needed.known()
                ? phrase("gloss-sheet.mean-known").with("within", GlossFigures.tenths(needed.shows()))
                : phrase("gloss-sheet.mean-not-known")
                        .with("within", GlossFigures.tenths(needed.shows()))
                        .with("wanted", question.within());
        draft.row(
                GlossWords.readings(needed.number()),
                phrase(needed.ownScatter() ? "gloss-sheet.own-scatter" : "gloss-sheet.usual-scatter")
                        .with("zone", needed.zone())
                        .with("deviation", GlossFigures.tenths(needed.deviation()))
                        .with("readings", GlossWords.readings(needed.taken()))
                        .with("shows", shows));
    }
}
