package stoneprocess.core.exposure;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Share;

/** How dust is kept down. */
public sealed interface DustControl {
    /** The tool's own water delivery feeds the cutting face without a break. */
    record WaterFed() implements DustControl {}

    /** Water thrown, sprayed or mopped onto the floor by hand. */
    record BucketWater() implements DustControl {}

    /** Dry, with nothing. */
    record Nothing() implements DustControl {}

    /**
     * Dry, with a dust collector. What is not known is given as false or as empty.
     *
     * @param shroud the tool wears the shroud and collection system made for it
     * @param airflow what the collector draws at the tool
     * @param makersAirflow what the maker of a floor grinder asks for
     * @param filter share of dust that the filter holds back, up to 100 %
     * @param filterCleaning it cleans its filter, or for a hand grinder has a cyclone before it
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
