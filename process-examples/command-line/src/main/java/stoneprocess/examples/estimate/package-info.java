/** The files of prices and of a crew's own times. */
@NullMarked
package stoneprocess.examples.estimate;

import org.jspecify.annotations.NullMarked;
