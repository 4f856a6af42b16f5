package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Share;

/** How dust is controlled. */
public sealed interface DustControl {
    /** The tool's own water delivery feeds the cutting face without a break. */
    record WaterFed() implements DustControl {}

    /** Water thrown, sprayed or mopped onto the floor by hand. */
    record BucketWater() implements DustControl {}

    /** Dry grinding without dust control. */
    record Nothing() implements DustControl {}

    /**
     * Dry grinding with a dust collector. Give false or empty for what is not known.
     *
     * @param shroud the tool wears the shroud and collection system made for it
     * @param airflow air that the collector draws at the tool
     * @param makersAirflow air that the maker of a floor grinder prescribes
     * @param filter share of the dust that the filter retains, up to 100 %
     * @param filterCleaning the collector cleans its filter or, for a hand grinder, has a cyclone before it
     */
    record Collector(
            boolean shroud, Airflow airflow, Optional<Airflow> makersAirflow, Share filter, boolean filterCleaning)
            implements DustControl {
        /**
         * Checks the ranges.
         *
         * @throws InvalidInputException for a filter of more than 100 % or a maker's airflow of zero
         */
        public Collector {
            Refuse.nulls(Collector.class, airflow, makersAirflow, filter);
            if (makersAirflow.isPresent() && makersAirflow.get().cubicMetresPerHour() <= 0) {
                throw new InvalidInputException(
                        "collector.makers-airflow", makersAirflow.get().print(), "more than 0 m3/h");
            }
            if (filter.percent() > 100) {
                throw new InvalidInputException("collector.filter", filter.print(), "0 to 100 %");
            }
        }
    }
}
