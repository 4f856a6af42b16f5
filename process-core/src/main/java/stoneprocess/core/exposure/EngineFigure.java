package stoneprocess.core.exposure;

import java.util.List;

/** A figure about carbon monoxide indoors. It always carries the cautions, and has no way to say that all is well. */
public sealed interface EngineFigure permits CarbonMonoxideBuildUp, NeededAir, Purge {
    /** All cautions, always. Source: NIOSH 96-118. */
    default List<EngineCaution> cautions() {
        return EngineCaution.ALL;
    }
}
