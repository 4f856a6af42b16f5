/**
 * The job log read against the plan that it follows: where the work stands, what was seen and read there, what is to be
 * said about each entry.
 */
@NullMarked
package stoneprocess.rules.internal.review;

import org.jspecify.annotations.NullMarked;
