package stoneprocess.core.gloss;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;

/**
 * How much of the damage that the floor had before the work a start takes off, with all grits that follow it. What a start
 * leaves, no finer grit reaches: it stays under the gloss.
 *
 * @param depth how deep the damage lies, from and to, as the plan reckons it
 * @param planned what the plan's passes take off, over 0; the check of its first grit sees that the damage is gone
 * @param takenOff what the passes from this start on take off
 */
public record OldDamage(Range<Length> depth, Length planned, Length takenOff) {
    private static final int DEPTHS = 3;

    public OldDamage {
        Refuse.nulls(OldDamage.class, depth, planned, takenOff);
        if (planned.millimetres() == 0) {
            throw new InvalidInputException("planned", planned.print(), "a depth over 0");
        }
    }

    /** Whether the start takes off what the plan does, or more. */
    public boolean asPlanned() {
        return takenOff.compareTo(planned) >= 0;
    }

    /** The depth that stays; 0 for a start that is no finer than the plan's. */
    public Range<Length> left() {
        return Range.of(left(depth.low()), left(depth.high()));
    }

    private Length left(Length deep) {
        return new Length(asPlanned() ? 0 : Math.max(0, deep.millimetres() - takenOff.millimetres()));
    }

    /** What it takes off as a part of what the plan does. */
    double part() {
        return takenOff.millimetres() / planned.millimetres();
    }

    /**
     * Depths that stand for the damage as the plan reckons it, as parts of what the plan takes off, none over 1; a single one
     * where the start takes all of it off.
     */
    List<Double> depths() {
        if (asPlanned()) {
            return List.of(1.0);
        }
        List<Double> depths = new ArrayList<>();
        double low = depth.low().millimetres();
        double high = depth.high().millimetres();
        for (int i = 0; i < DEPTHS; i++) {
            depths.add(Math.min(1, (low + (high - low) * (i + 0.5) / DEPTHS) / planned.millimetres()));
        }
        return depths;
    }
}
