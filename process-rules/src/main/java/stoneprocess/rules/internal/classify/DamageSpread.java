package stoneprocess.rules.internal.classify;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Zone;

/**
 * Weighs one kind of damage over the zones. The worst class that reaches the share of a local repair governs the floor;
 * what is worse and rarer is local. What nobody looked at may be anything, so the answer is computed twice: as mild and
 * as bad as the survey allows.
 */
final class DamageSpread {
    /** Percent that counts as more than nothing and as less than any share that a survey can state. */
    private static final double TRACE = 1e-6;

    private final FloorSurvey survey;
    private final DamageKind kind;
    private final Parameters parameters;
    private final double threshold;
    private final int worst;

    DamageSpread(FloorSurvey survey, DamageKind kind, Parameters parameters) {
        this.survey = survey;
        this.kind = kind;
        this.parameters = parameters;
        this.threshold =
                parameters.get("local-repair." + kind.shareOf(), Share.class).percent();
        this.worst = kind.terms().size() - 1;
    }

    /** Classes that may govern the floor. */
    <E extends Enum<E>> Set<E> governing(Class<E> classes) {
        return between(classes, governing(shares(false)), governing(shares(true)));
    }

    /** Classes that may occur in a few places, worse than what governs; the mildest class means none. */
    <E extends Enum<E>> Set<E> local(Class<E> classes) {
        double[] mild = shares(false);
        double[] bad = shares(true);
        E[] constants = classes.getEnumConstants();
        EnumSet<E> local = EnumSet.noneOf(classes);
        boolean mayGovern = governing(bad) >= highest(mild);
        if (mayGovern) {
            local.add(constants[0]);
        }
        boolean certain = Arrays.equals(mild, bad);
        if (!certain || !mayGovern) {
            local.addAll(EnumSet.range(constants[Math.max(1, highest(mild))], constants[highest(bad)]));
        }
        return local;
    }

    /** Classes that occur anywhere, however rare. */
    <E extends Enum<E>> Set<E> anywhere(Class<E> classes) {
        return between(classes, highest(shares(false)), highest(shares(true)));
    }

    /** The greatest measured depth of what governs; empty when that is not certain or nobody measured. */
    Optional<Length> governingDepth() {
        int severity = governing(shares(false));
        if (severity != governing(shares(true))) {
            return Optional.empty();
        }
        return survey.zones().stream()
                .map(zone -> zone.damages().get(kind))
                .filter(Objects::nonNull)
                .filter(damage -> damage.severity(parameters) == severity)
                .flatMap(damage -> damage.depth().stream())
                .max(Comparator.naturalOrder());
    }

    private static <E extends Enum<E>> Set<E> between(Class<E> classes, int low, int high) {
        E[] constants = classes.getEnumConstants();
        return EnumSet.range(constants[low], constants[high]);
    }

    /** Share of the floor, in percent, that has each class; unknown read as none or as the worst everywhere. */
    private double[] shares(boolean unknownIsBad) {
        double[] shares = new double[worst + 1];
        double surveyed = 0;
        for (Zone zone : survey.zones()) {
            double zoneShare = zone.share().percent();
            surveyed += zoneShare;
            Damage damage = zone.damages().get(kind);
            if (damage == null) {
                shares[unknownIsBad ? worst : 0] += zoneShare;
                continue;
            }
            int severity = damage.severity(parameters);
            double part = damage.share().map(Share::percent).orElse(unknownIsBad ? 100.0 : TRACE);
            shares[severity] += severity == 0 ? zoneShare : zoneShare * part / 100;
        }
        double rest = 100 - surveyed;
        if (rest > 0.01) {
            shares[unknownIsBad ? worst : 0] += rest;
        }
        return shares;
    }

    private int governing(double[] shares) {
        double sum = 0;
        for (int severity = worst; severity > 0; severity--) {
            sum += shares[severity];
            if (sum > threshold - TRACE) {
                return severity;
            }
        }
        return 0;
    }

    private int highest(double[] shares) {
        for (int severity = worst; severity > 0; severity--) {
            if (shares[severity] > 0) {
                return severity;
            }
        }
        return 0;
    }
}
