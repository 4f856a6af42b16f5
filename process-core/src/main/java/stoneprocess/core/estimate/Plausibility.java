package stoneprocess.core.estimate;

import java.util.Objects;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.source.Citation;

/**
 * An estimate beside a public-works figure. The figures are second-hand and tell the order of size only: the band runs
 * from the figure over {@code estimate.machine-day.factor} to the figure times it.
 *
 * @param like the kind of job compared with
 * @param estimated area a machine-day by the estimate
 * @param band from and to
 * @param source where the figure comes from
 */
public record Plausibility(PublicWork like, Spread<Area> estimated, Range<Area> band, Citation source) {
    public Plausibility {
        Refuse.nulls(Plausibility.class, like, estimated, band, source);
    }

    /** Compares an estimate with the public-works figure for such a job; that the job is such a one, the caller knows. */
    public static Plausibility of(Estimate estimate, PublicWork like, Parameters parameters) {
        Numbers numbers = new Numbers(Objects.requireNonNull(parameters, "parameters"));
        double factor = Math.max(1, numbers.share("estimate.machine-day.factor"));
        double[] ends = like.ends(numbers);
        String name = like == PublicWork.FLOOR_GRINDING ? like.parameter() + ".low" : like.parameter();
        return new Plausibility(
                like,
                estimate.areaPerMachineDay(),
                Range.of(new Area(ends[0] / factor), new Area(ends[1] * factor)),
                parameters.parameter(name).source());
    }

    /** Whether the likely area lies in the band. */
    public boolean plausible() {
        return band.contains(estimated.likely());
    }
}
