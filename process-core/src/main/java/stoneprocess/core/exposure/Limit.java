package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.source.Citation;

/**
 * A limit with its source and who decides on it.
 *
 * @param value the limit
 * @param source where the limit comes from; the house where an overlay has retuned it
 * @param decides the role that decides
 * @param <Q> the quantity that is limited
 */
public record Limit<Q extends Quantity>(Q value, Citation source, Role decides) {
    public Limit {
        Refuse.nulls(Limit.class, value, source, decides);
    }

    static <Q extends Quantity> Limit<Q> of(Parameters parameters, String name, Class<Q> type, Role decides) {
        Parameter parameter = parameters.parameter(name);
        return new Limit<>(type.cast(parameter.value()), parameter.source(), decides);
    }

    /** Id of the source, as listed in {@code sources.tsv}. */
    public String sourceId() {
        return source.id();
    }
}
