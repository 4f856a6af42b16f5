/**
 * Gloss: what a stone can read by its minerals, what readings tell, and what further passes will bring. Knows no survey
 * and no plan: inputs are numbers and records of its own. Gloss is never inferred from a stylus.
 */
@NullMarked
package stoneprocess.core.gloss;

import org.jspecify.annotations.NullMarked;
