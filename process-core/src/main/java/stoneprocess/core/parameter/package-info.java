/**
 * Every number that the rules depend on, and the scales that turn a number into a class.
 */
@NullMarked
package stoneprocess.core.parameter;

import org.jspecify.annotations.NullMarked;
