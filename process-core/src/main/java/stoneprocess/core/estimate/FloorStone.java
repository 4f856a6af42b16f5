package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.stone.Hardness;

/**
 * What is cut.
 *
 * @param hardness class of hardness; medium stone is looked up with the figures for marble, hard stone with granite
 * @param resistance how well it resists abrasion
 */
public record FloorStone(Hardness hardness, AbrasionResistance resistance) {
    public FloorStone {
        Refuse.nulls(FloorStone.class, hardness, resistance);
    }

    /** Marble at the purchase minimum of ASTM C503. */
    public static FloorStone marble() {
        return new FloorStone(Hardness.MEDIUM, AbrasionResistance.purchaseMinimum("marble", "standard"));
    }

    /** Granite at the purchase minimum of ASTM C615. */
    public static FloorStone granite() {
        return new FloorStone(Hardness.HARD, AbrasionResistance.purchaseMinimum("granite", "standard"));
    }
}
