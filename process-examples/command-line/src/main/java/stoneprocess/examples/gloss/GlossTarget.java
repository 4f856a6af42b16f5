package stoneprocess.examples.gloss;

import java.util.Optional;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.survey.Finish;

/**
 * The gloss to reach at 60 degrees.
 *
 * @param gloss the gloss
 * @param finish the finish whose lower limit it is; empty when it was given as a gloss
 */
public record GlossTarget(Gloss gloss, Optional<Finish> finish) {}
