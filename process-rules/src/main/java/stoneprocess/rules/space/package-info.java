/**
 * Surveys made up for checks: drawn at random, or with answers forgotten. Nothing here takes part in a recommendation.
 */
@NullMarked
package stoneprocess.rules.space;

import org.jspecify.annotations.NullMarked;
