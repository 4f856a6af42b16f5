package stoneprocess.core.estimate;

import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.term.Term;

/** Whole jobs for which public works reckon with an output a machine-day. */
public enum PublicWork implements Term {
    /** Cement terrazzo, three cuts of 60, 120 and 320 with fills between. */
    CEMENT_TERRAZZO,
    /** Marble slabs, three cuts of 80, 150 and 320. */
    MARBLE_SLABS,
    /** Hard limestone, three cuts. */
    HARD_LIMESTONE,
    /** Floor grinding of 1955, by range. */
    FLOOR_GRINDING;

    String parameter() {
        return "estimate.machine-day." + key();
    }

    /** Low and high ends in square metres. */
    double[] ends(Numbers numbers) {
        if (this == FLOOR_GRINDING) {
            return new double[] {numbers.at(parameter(), Case.LOW), numbers.at(parameter(), Case.HIGH)};
        }
        double single = numbers.parameters().get(parameter(), Quantity.class).kept();
        return new double[] {single, single};
    }
}
