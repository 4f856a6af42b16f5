package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.source.Citation;

/**
 * What a value is held against.
 *
 * @param value the limit with its unit
 * @param source where the limit comes from; the house, when an embedder has retuned it
 * @param decides who decides
 * @param <Q> what is limited
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
