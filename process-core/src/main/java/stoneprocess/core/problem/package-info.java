/**
 * The few exception types of the library, under one supertype. Nothing that knows the trade belongs here.
 */
@NullMarked
package stoneprocess.core.problem;

import org.jspecify.annotations.NullMarked;
