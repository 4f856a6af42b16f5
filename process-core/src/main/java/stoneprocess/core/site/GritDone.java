package stoneprocess.core.site;

import java.util.List;
import stoneprocess.core.gloss.Fresnel;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

/**
 * A hold point between two grits.
 *
 * @param grit resin grit number, 1 or more
 * @param passes passes of that grit done by then, 0 or more
 * @param reads what the zone then read at 60 degrees, clean and dry, up to the reading of a mirror; may be empty
 */
public record GritDone(int grit, int passes, List<Gloss> reads) {
    public GritDone {
        Refuse.nulls(GritDone.class, reads);
        if (grit < 1) {
            throw new InvalidInputException("grit", Integer.toString(grit), "a resin grit number of 1 or more");
        }
        if (passes < 0) {
            throw new InvalidInputException("passes", Integer.toString(passes), "0 or more passes");
        }
        reads = List.copyOf(reads);
        reads.forEach(gloss -> Fresnel.requireReading(gloss, Geometry.DEG_60));
    }
}
