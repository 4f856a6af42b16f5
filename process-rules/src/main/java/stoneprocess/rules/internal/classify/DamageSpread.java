package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
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
import stoneprocess.core.survey.ZoneKind;

/**
 * Weighs one kind of damage over the zones of the floor, of its field or of its edges. The worst class that reaches the
 * share of a local repair governs; what is worse and rarer is local. What nobody looked at may be anything, so the answer
 * is computed twice: as mild and as bad as the survey allows.
 */
final class DamageSpread {
    /** Percent that counts as more than nothing and as less than any share that a survey can state. */
    private static final double TRACE = 1e-6;

    /** Percent of the floor under which a part does not exist; shares are stated to a hundredth. */
    private static final double SHARE_OF_NOTHING = 0.01;

    private enum Part {
        WHOLE,
        FIELD,
        LANES,
        OFF_LANES,
        EDGES;

        boolean holds(Zone zone) {
            return switch (this) {
                case WHOLE -> true;
                case EDGES -> handWorked(zone);
                case FIELD -> !handWorked(zone);
                case LANES -> zone.kind().isTrodden();
                case OFF_LANES -> !handWorked(zone) && !zone.kind().isTrodden();
            };
        }
    }

    private final FloorSurvey survey;
    private final Part part;
    private final DamageKind kind;
    private final Parameters parameters;
    private final double threshold;
    private final int worst;
    private final List<Zone> zones = new ArrayList<>();

    private DamageSpread(FloorSurvey survey, DamageKind kind, Parameters parameters, Part part) {
        this.survey = survey;
        this.part = part;
        this.kind = kind;
        this.parameters = parameters;
        this.threshold =
                parameters.get("local-repair." + kind.shareOf(), Share.class).percent();
        this.worst = kind.terms().size() - 1;
        for (Zone zone : survey.zones()) {
            if (part.holds(zone)) {
                zones.add(zone);
            }
        }
    }

    /** All that is worked: the whole floor, or its lanes alone. */
    static DamageSpread of(FloorSurvey survey, DamageKind kind, Parameters parameters) {
        return new DamageSpread(survey, kind, parameters, survey.isLanesAlone() ? Part.LANES : Part.WHOLE);
    }

    /** What a floor machine reaches: all but edges and stairs. A floor of nothing else counts as a whole. */
    static DamageSpread ofField(FloorSurvey survey, DamageKind kind, Parameters parameters) {
        if (survey.isLanesAlone()) {
            return of(survey, kind, parameters);
        }
        return new DamageSpread(survey, kind, parameters, isAllHandWork(survey) ? Part.WHOLE : Part.FIELD);
    }

    /** Edges and stairs, where they were surveyed as zones of their own and are not the whole floor. */
    static Optional<DamageSpread> ofEdges(FloorSurvey survey, DamageKind kind, Parameters parameters) {
        double share = shareOfHandWork(survey);
        return share > SHARE_OF_NOTHING && share <= 100 - SHARE_OF_NOTHING && !survey.isLanesAlone()
                ? Optional.of(new DamageSpread(survey, kind, parameters, Part.EDGES))
                : Optional.empty();
    }

    /** Where people walk; empty where no such zone was surveyed apart. */
    static Optional<DamageSpread> ofLanes(FloorSurvey survey, DamageKind kind, Parameters parameters) {
        return Optional.of(new DamageSpread(survey, kind, parameters, Part.LANES))
                .filter(lanes -> !lanes.zones.isEmpty());
    }

    /** The field off the lanes; empty where no such zone was surveyed. */
    static Optional<DamageSpread> offLanes(FloorSurvey survey, DamageKind kind, Parameters parameters) {
        return Optional.of(new DamageSpread(survey, kind, parameters, Part.OFF_LANES))
                .filter(beside -> !beside.zones.isEmpty());
    }

    /** True for a floor of nothing but edges and stairs, which no floor machine reaches. */
    static boolean isAllHandWork(FloorSurvey survey) {
        return shareOfHandWork(survey) > 100 - SHARE_OF_NOTHING;
    }

    private static double shareOfHandWork(FloorSurvey survey) {
        double share = 0;
        for (Zone zone : survey.zones()) {
            if (handWorked(zone)) {
                share += zone.share().percent();
            }
        }
        return share;
    }

    private static boolean handWorked(Zone zone) {
        return zone.kind() == ZoneKind.EDGE || zone.kind() == ZoneKind.STAIR;
    }

    /** Classes that may govern. */
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
        return zones.stream()
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

    /** Percent of the floor that the part takes up; what nobody surveyed belongs to the field. */
    private double share() {
        return switch (part) {
            case WHOLE -> 100;
            case FIELD -> 100 - shareOfHandWork(survey);
            case LANES, OFF_LANES, EDGES ->
                zones.stream().mapToDouble(zone -> zone.share().percent()).sum();
        };
    }

    /** Share of the part, in percent, that has each class; unknown read as none or as the worst everywhere. */
    private double[] shares(boolean unknownIsBad) {
        double[] shares = new double[worst + 1];
        double surveyed = 0;
        double whole = share();
        for (Zone zone : zones) {
            double zoneShare = zone.share().percent() * 100 / whole;
            surveyed += zoneShare;
            Damage damage = zone.damages().get(kind);
            if (damage == null) {
                shares[unknownIsBad ? worst : 0] += zoneShare;
                continue;
            }
            int severity = damage.severity(parameters);
            double affected = damage.share().map(Share::percent).orElse(unknownIsBad ? 100.0 : TRACE);
            shares[severity] += severity == 0 ? zoneShare : zoneShare * affected / 100;
        }
        double unsurveyed = 100 - surveyed;
        boolean unsurveyedCounts = part == Part.WHOLE || part == Part.FIELD;
        if (unsurveyedCounts && unsurveyed > SHARE_OF_NOTHING) {
            shares[unknownIsBad ? worst : 0] += unsurveyed;
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
