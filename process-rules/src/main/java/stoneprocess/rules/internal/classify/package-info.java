/**
 * From a survey and closed decisions to facts. The table here says where each fact comes from.
 */
@NullMarked
package stoneprocess.rules.internal.classify;

import org.jspecify.annotations.NullMarked;
