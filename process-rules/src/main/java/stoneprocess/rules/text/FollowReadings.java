package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

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
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Wording;

/** What the readings of a job log tell, zone by zone. */
final class FollowReadings {
    private FollowReadings() {}

    static void write(Draft draft, NextMove next) {
        if (next.progress().isEmpty()) {
            return;
        }
        draft.section("follow.readings");
        Share level = next.ahead().parameters().get("gloss-forecast.level", Share.class);
        next.progress().forEach(zone -> draft.bullet(sentences(statistics(zone), scatter(zone, level)), details(zone)));
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

    private static List<Item> details(ZoneProgress zone) {
        List<Item> details = new ArrayList<>();
        zone.gain().ifPresent(gain -> details.add(label("follow.gain", gain(gain))));
        if (zone.angle() != Geometry.DEG_60) {
            details.add(label(
                    "follow.angle",
                    phrase("follow.read-at").with("angle", zone.angle().degrees())));
        }
        zone.outlook().ifPresent(outlook -> details.add(label("follow.finish", outlook(outlook))));
        zone.morePasses().ifPresent(more -> {
            details.add(label("follow.further", further(more)));
            details.add(label("follow.basis", basis(more.basis())));
        });
        return details;
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

    private static Wording outlook(TargetOutlook outlook) {
        List<Wording> text = new ArrayList<>();
        text.add(phrase("follow.target").with("target", outlook.target()));
        text.add(Wording.of(outlook.verdict()));
        if (outlook.verdict() != TargetVerdict.OUT_OF_REACH) {
            outlook.reachedBy().or(outlook::best).ifPresent(option -> text.add(way(option)));
        }
        if (outlook.startedTooFine()) {
            text.add(phrase("follow.too-fine").with("chance", GlossWords.chance(outlook.oldDamage())));
        }
        return Wording.list(Wording.Joint.SENTENCES, text);
    }

    private static Wording way(TargetOption option) {
        return phrase("follow.way")
                .with("grit", option.grit())
                .with("passes", option.passes())
                .with("chance", GlossWords.chance(option.probability()));
    }

    private static Wording further(GlossPrediction more) {
        return phrase("follow.further-text")
                .with("passes", more.passes())
                .with("grit", more.grit())
                .with("median", more.median())
                .with("interval", more.interval())
                .with("level", more.level());
    }

    private static Wording basis(ForecastBasis basis) {
        Wording sources = Wording.list(Wording.Joint.SEMICOLON, basis.sources(), Wording::source);
        return basis.defaultsOnly()
                ? phrase("follow.basis-defaults").with("sources", sources)
                : phrase("follow.basis-readings")
                        .with("readings", basis.readings())
                        .with("occasions", basis.occasions())
                        .with("sources", sources);
    }
}
