package stoneprocess.rules.follow;

import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.tool.AbrasiveGrade;

/** A simulated floor that answers to what is done to it. */
interface WorkedFloor {
    /** Whether a grade clears the damage on a test area; what is left does not always show there. */
    boolean clears(AbrasiveGrade grade);

    /** Works some passes of a grade that usually takes {@code usual} of them. */
    void work(AbrasiveGrade grade, int passes, double usual);

    void dressPad();

    void clean();

    boolean padClosed();

    boolean filmLies();

    /** What low-angle light shows on the clean, dry face. */
    ScratchLook look();

    /** A reading at 60 degrees on the clean, dry face. */
    Gloss read();

    /** True when the gloss is there and nothing that shows is left. */
    boolean reaches(Gloss target);

    /** Stone taken off so far, in millimetres. */
    double removed();
}
