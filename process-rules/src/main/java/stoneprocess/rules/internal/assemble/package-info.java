/**
 * From closed topics to a recommendation.
 */
@NullMarked
package stoneprocess.rules.internal.assemble;

import org.jspecify.annotations.NullMarked;
