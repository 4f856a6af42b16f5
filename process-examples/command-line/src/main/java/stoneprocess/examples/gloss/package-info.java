/** The sheet of the gloss command: what a survey and its plan mean to the gloss room, and the text made of it. */
@NullMarked
package stoneprocess.examples.gloss;

import org.jspecify.annotations.NullMarked;
