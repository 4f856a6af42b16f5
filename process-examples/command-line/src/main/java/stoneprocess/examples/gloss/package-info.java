/** The sheet of the gloss command: the text made of {@link stoneprocess.core.site.FloorGloss}. */
@NullMarked
package stoneprocess.examples.gloss;

import org.jspecify.annotations.NullMarked;
