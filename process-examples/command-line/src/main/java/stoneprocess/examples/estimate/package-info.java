/** Amounts and ranges as a command line has them. */
@NullMarked
package stoneprocess.examples.estimate;

import org.jspecify.annotations.NullMarked;
