/**
 * How deep a grade cuts in a pass, how deep it scratches, and how many passes a depth takes. What a floor has to lose and
 * how long the passes take are not told here.
 */
@NullMarked
package stoneprocess.core.removal;

import org.jspecify.annotations.NullMarked;
