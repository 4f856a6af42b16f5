package stoneprocess.core.gloss;

import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Gloss;

/** At which angle to read. The first reading is always taken at {@link #FIRST}. */
public final class GeometryAdvice {
    /** The angle to begin with (ASTM D523). */
    public static final Geometry FIRST = Geometry.DEG_60;

    private GeometryAdvice() {}

    /**
     * The angle that tells most: 20 degrees over {@code gloss-angle.high} (70 GU), 85 degrees under
     * {@code gloss-angle.low} (10 GU), else 60 degrees (ASTM D523). Both limits themselves stay at 60 degrees.
     *
     * @param at60 what the floor reads at 60 degrees, any gloss
     * @param parameters the two limits
     */
    public static Geometry best(Gloss at60, Parameters parameters) {
        if (at60.compareTo(parameters.get("gloss-angle.high", Gloss.class)) > 0) {
            return Geometry.DEG_20;
        }
        if (at60.compareTo(parameters.get("gloss-angle.low", Gloss.class)) < 0) {
            return Geometry.DEG_85;
        }
        return Geometry.DEG_60;
    }
}
