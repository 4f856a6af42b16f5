/**
 * Optics of a smooth stone. Knows no plan: inputs are numbers and records of its own.
 */
@NullMarked
package stoneprocess.core.gloss;

import org.jspecify.annotations.NullMarked;
