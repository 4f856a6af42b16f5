package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossChange;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;

/** What readings tell of a zone: a part of the next move. */
final class ProgressJson {
    private ProgressJson() {}

    static Object tree(ZoneProgress progress) {
        return new Fields()
                .put("zone", progress.zone())
                .put("now", tree(progress.now()))
                .putIf("gain", progress.gain().map(ProgressJson::tree))
                .put("angle", progress.angle().key())
                .putIf("outlook", progress.outlook().map(ProgressJson::tree))
                .putIf("more-passes", progress.morePasses().map(ProgressJson::tree))
                .tree();
    }

    static ZoneProgress read(Node node) {
        node.only(List.of("zone", "now", "gain", "angle", "outlook", "more-passes"));
        return new ZoneProgress(
                node.get("zone").text(),
                statistics(node.get("now")),
                node.optional("gain").map(ProgressJson::gain),
                node.get("angle").term(Geometry.class),
                node.optional("outlook").map(ProgressJson::outlook),
                node.optional("more-passes").map(ProgressJson::prediction));
    }

    private static Object tree(ZoneStatistics statistics) {
        return new Fields()
                .put("count", statistics.count())
                .put("mean", Fields.quantity(statistics.mean()))
                .putIf("deviation", statistics.deviation().map(Fields::quantity))
                .putIf("mean-interval", statistics.meanInterval().map(Fields::range))
                .put("lowest", Fields.quantity(statistics.lowest()))
                .put("spread", Fields.quantity(statistics.spread()))
                .tree();
    }

    private static ZoneStatistics statistics(Node node) {
        node.only(List.of("count", "mean", "deviation", "mean-interval", "lowest", "spread"));
        return new ZoneStatistics(
                node.get("count").integer(1),
                gloss(node.get("mean")),
                node.optional("deviation").map(ProgressJson::gloss),
                node.optional("mean-interval").map(ProgressJson::glossRange),
                gloss(node.get("lowest")),
                gloss(node.get("spread")));
    }

    private static Object tree(Gain gain) {
        return new Fields()
                .put("verdict", gain.verdict().key())
                .put("change", change(gain.change()))
                .putIf("interval", gain.interval().map(ProgressJson::changes))
                .putIf("chance", gain.chance().map(Fields::quantity))
                .put("missing-before", gain.missingBefore())
                .put("missing-after", gain.missingAfter())
                .tree();
    }

    private static Gain gain(Node node) {
        node.only(List.of("verdict", "change", "interval", "chance", "missing-before", "missing-after"));
        return new Gain(
                node.get("verdict").term(GainVerdict.class),
                change(node.get("change").only(List.of("value", "unit")), "value"),
                node.optional("interval").map(ProgressJson::changes),
                node.optional("chance").map(ProgressJson::share),
                node.get("missing-before").integer(0),
                node.get("missing-after").integer(0));
    }

    private static Map<String, Object> change(GlossChange change) {
        return new Fields()
                .put("value", decimal(change))
                .put("unit", Unit.GLOSS_UNIT.symbol())
                .tree();
    }

    private static Map<String, Object> changes(Range<GlossChange> range) {
        return new Fields()
                .put("low", decimal(range.low()))
                .put("high", decimal(range.high()))
                .put("unit", Unit.GLOSS_UNIT.symbol())
                .tree();
    }

    private static Range<GlossChange> changes(Node node) {
        node.only(List.of("low", "high", "unit"));
        GlossChange low = change(node, "low");
        GlossChange high = change(node, "high");
        return node.checked(() -> Range.of(low, high));
    }

    private static BigDecimal decimal(GlossChange change) {
        return BigDecimal.valueOf(change.glossUnits()).stripTrailingZeros();
    }

    private static GlossChange change(Node node, String part) {
        Unit.parse(Dimension.GLOSS, node.get("unit").text(), node.path());
        Node value = node.get(part);
        double amount = value.number().doubleValue();
        return value.checked(() -> new GlossChange(amount));
    }

    private static Object tree(TargetOutlook outlook) {
        return new Fields()
                .put("verdict", outlook.verdict().key())
                .put("target", Fields.quantity(outlook.target()))
                .putIf("reached-by", outlook.reachedBy().map(ProgressJson::tree))
                .putIf("best", outlook.best().map(ProgressJson::tree))
                .put("old-damage", Fields.quantity(outlook.oldDamage()))
                .put("started-too-fine", outlook.startedTooFine())
                .put("basis", tree(outlook.basis()))
                .tree();
    }

    private static TargetOutlook outlook(Node node) {
        node.only(List.of("verdict", "target", "reached-by", "best", "old-damage", "started-too-fine", "basis"));
        return new TargetOutlook(
                node.get("verdict").term(TargetVerdict.class),
                gloss(node.get("target")),
                node.optional("reached-by").map(ProgressJson::option),
                node.optional("best").map(ProgressJson::option),
                share(node.get("old-damage")),
                node.get("started-too-fine").flag(),
                basis(node.get("basis")));
    }

    private static Object tree(TargetOption option) {
        return new Fields()
                .put("grit", option.grit())
                .put("passes", option.passes())
                .put("probability", Fields.quantity(option.probability()))
                .tree();
    }

    private static TargetOption option(Node node) {
        node.only(List.of("grit", "passes", "probability"));
        return new TargetOption(
                node.get("grit").integer(1), node.get("passes").integer(0), share(node.get("probability")));
    }

    private static Object tree(GlossPrediction prediction) {
        return new Fields()
                .put("grit", prediction.grit())
                .put("passes", prediction.passes())
                .put("median", Fields.quantity(prediction.median()))
                .put("interval", Fields.range(prediction.interval()))
                .put("level", Fields.quantity(prediction.level()))
                .put("basis", tree(prediction.basis()))
                .tree();
    }

    private static GlossPrediction prediction(Node node) {
        node.only(List.of("grit", "passes", "median", "interval", "level", "basis"));
        return new GlossPrediction(
                node.get("grit").integer(1),
                node.get("passes").integer(0),
                gloss(node.get("median")),
                glossRange(node.get("interval")),
                share(node.get("level")),
                basis(node.get("basis")));
    }

    private static Object tree(ForecastBasis basis) {
        return new Fields()
                .put("readings", basis.readings())
                .put("occasions", basis.occasions())
                .put("sources", basis.sources().stream().map(Citation::id).toList())
                .tree();
    }

    private static ForecastBasis basis(Node node) {
        node.only(List.of("readings", "occasions", "sources"));
        return new ForecastBasis(
                node.get("readings").integer(0),
                node.get("occasions").integer(0),
                node.get("sources").list(ProgressJson::source));
    }

    private static Citation source(Node node) {
        String id = node.text();
        return node.checked(() -> Sources.standard().get(id));
    }

    private static Gloss gloss(Node node) {
        return (Gloss) node.quantity(Dimension.GLOSS);
    }

    private static Range<Gloss> glossRange(Node node) {
        return PlanJson.range(node, Dimension.GLOSS, Gloss.class);
    }

    private static Share share(Node node) {
        return (Share) node.quantity(Dimension.SHARE);
    }
}
