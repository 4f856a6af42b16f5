/**
 * Turns a plan into a job that can be estimated. Adds no number of its own: areas and waits come from the plan, the
 * rest from the parameters that the plan was made with or from the caller.
 */
@NullMarked
package stoneprocess.core.job;

import org.jspecify.annotations.NullMarked;
