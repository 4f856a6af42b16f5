package stoneprocess.core.gloss;

import stoneprocess.core.term.Term;

/** Angle at which a gloss meter reads, measured from the upright (ISO 2813, ASTM D523). */
public enum Geometry implements Term {
    DEG_20(20),
    DEG_60(60),
    DEG_85(85);

    private final int degrees;

    Geometry(int degrees) {
        this.degrees = degrees;
    }

    public int degrees() {
        return degrees;
    }

    @Override
    public String key() {
        return Integer.toString(degrees);
    }
}
