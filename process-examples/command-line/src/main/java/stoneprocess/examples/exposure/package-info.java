/**
 * Answers about what a crew breathes, hears and lifts, about slip, slurry and circuits, as sheets of plain text: the
 * answer, what was given, the result, the limit with its source, what the figures rest on, cautions, who decides.
 * Nothing is computed here.
 */
@NullMarked
package stoneprocess.examples.exposure;

import org.jspecify.annotations.NullMarked;
