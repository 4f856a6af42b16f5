package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Citation;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** What the readings of a job log tell, zone by zone. */
final class FollowReadings {
    private FollowReadings() {}

    static void write(Draft draft, NextMove next) {
        if (next.progress().isEmpty()) {
            return;
        }
        draft.section("follow.readings");
        Share level = next.ahead().parameters().get("gloss-gain.confidence", Share.class);
        next.progress().forEach(zone -> draft.bullet(Wording.list(Wording.Joint.SENTENCES, zone(zone, level))));
        next.progress().stream()
                .flatMap(zone -> zone.morePasses().stream())
                .map(GlossPrediction::basis)
                .distinct()
                .forEach(basis -> draft.bullet(basis(basis)));
    }

    private static List<Wording> zone(ZoneProgress zone, Share level) {
        List<Wording> words = new ArrayList<>(List.of(statistics(zone), scatter(zone, level)));
        zone.gain().ifPresent(gain -> words.add(gain(gain)));
        if (zone.angle() != Geometry.DEG_60) {
            words.add(phrase("follow.read-at").with("angle", zone.angle().degrees()));
        }
        zone.outlook().ifPresent(outlook -> words.add(outlook(zone, outlook)));
        zone.morePasses().ifPresent(more -> words.add(further(more)));
        return words;
    }

    private static Wording statistics(ZoneProgress zone) {
        return phrase("follow.zone")
                .with("zone", zone.zone())
                .with("readings", GlossWords.readings(zone.now().count()))
                .with("mean", zone.now().mean())
                .with("lowest", zone.now().lowest());
    }

    private static Wording scatter(ZoneProgress zone, Share level) {
        return zone.now()
                .meanInterval()
                .map(interval ->
                        phrase("follow.interval").with("interval", interval).with("level", level))
                .orElse(phrase("follow.no-scatter"));
    }

    private static Wording gain(Gain gain) {
        double change = gain.change().glossUnits();
        List<Wording> text = new ArrayList<>();
        text.add(
                phrase(change < 0 ? "follow.gain-loss" : "follow.gain-rise").with("size", new Gloss(Math.abs(change))));
        text.add(Wording.of(gain.verdict()));
        if (gain.missingBefore() + gain.missingAfter() > 0) {
            text.add(phrase("follow.missing")
                    .with("before", gain.missingBefore())
                    .with("after", gain.missingAfter()));
        }
        return Wording.list(Wording.Joint.SENTENCES, text);
    }

    private static Wording outlook(ZoneProgress zone, TargetOutlook outlook) {
        List<Wording> text = new ArrayList<>();
        text.add(phrase("follow.target").with("target", outlook.target()));
        text.add(Wording.of(outlook.verdict()));
        if (outlook.verdict() != TargetVerdict.OUT_OF_REACH) {
            outlook.reachedBy().or(outlook::best).ifPresent(option -> text.add(way(zone, option)));
        }
        if (outlook.startedTooFine()) {
            text.add(phrase("follow.too-fine").with("chance", GlossWords.chance(outlook.oldDamage())));
        }
        return Wording.list(Wording.Joint.SENTENCES, text);
    }

    /** The way to the finish; a finer grit comes after those that the plan has before it. */
    private static Wording way(ZoneProgress zone, TargetOption option) {
        boolean finer =
                zone.morePasses().filter(more -> more.grit() < option.grit()).isPresent();
        return phrase(finer ? "follow.way-finer" : "follow.way")
                .with("grit", option.grit())
                .with("passes", option.passes())
                .with("chance", GlossWords.chance(option.probability()));
    }

    private static Wording further(GlossPrediction more) {
        return phrase("follow.further")
                .with("passes", more.passes())
                .with("grit", more.grit())
                .with("median", more.median())
                .with("interval", more.interval())
                .with("level", more.level());
    }

    /** What the forecast is made from: readings of the floor, common practice, publications. */
    private static Wording basis(ForecastBasis basis) {
        List<Citation> published =
                basis.sources().stream().filter(source -> !source.practice()).toList();
        Wording.Phrase words = basis.defaultsOnly()
                ? phrase("follow.basis-defaults")
                : phrase("follow.basis-readings")
                        .with("readings", basis.readings())
                        .with("occasions", basis.occasions());
        return words.with(
                "sources",
                Wording.list(
                        Wording.Joint.SEMICOLON, published.isEmpty() ? basis.sources() : published, Wording::source));
    }
}
