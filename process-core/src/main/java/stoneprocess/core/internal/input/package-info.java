/**
 * What somebody wrote: names that are printed, numbers that are reckoned with. Nothing that knows the trade belongs here.
 */
@NullMarked
package stoneprocess.core.internal.input;

import org.jspecify.annotations.NullMarked;
