/**
 * How fast a floor is worked, how long a job takes in hours and days, what it uses up and what that costs. Knows no
 * survey and no plan: inputs are records of its own. Holds no prices; those are the embedder's.
 */
@NullMarked
package stoneprocess.core.estimate;

import org.jspecify.annotations.NullMarked;
