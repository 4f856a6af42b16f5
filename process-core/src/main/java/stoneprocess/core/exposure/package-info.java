/**
 * What a crew breathes, hears and lifts, how slippery a measured floor is, and where slurry may go. Each answer carries
 * the limit that it was held against, the limit's source and the role that decides; none of them replaces that role.
 * Knows no survey and no plan: inputs are records of its own.
 */
@NullMarked
package stoneprocess.core.exposure;

import org.jspecify.annotations.NullMarked;
