/**
 * What a crew breathes, hears and lifts, how slippery a measured floor is, and where slurry may go. Each answer carries
 * the limit that it was compared with, the limit's source and the role that decides. No answer replaces that role. This
 * package knows no survey and no plan; its inputs are its own records.
 */
@NullMarked
package stoneprocess.core.exposure;

import org.jspecify.annotations.NullMarked;
