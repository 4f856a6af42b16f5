/**
 * Checks that every room makes alike. Nothing that knows the trade belongs here.
 */
@NullMarked
package stoneprocess.core.internal.check;

import org.jspecify.annotations.NullMarked;
