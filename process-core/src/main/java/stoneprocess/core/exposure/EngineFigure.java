package stoneprocess.core.exposure;

import java.util.List;

/** A figure about carbon monoxide indoors. It always carries the cautions and cannot say that the air is safe. */
public sealed interface EngineFigure permits CarbonMonoxideBuildUp, NeededAir, Purge {
    /** All cautions. Source: NIOSH 96-118. */
    default List<EngineCaution> cautions() {
        return EngineCaution.ALL;
    }
}
