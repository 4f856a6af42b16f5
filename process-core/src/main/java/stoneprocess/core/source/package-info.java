/**
 * Where a rule or a figure comes from: citations and their grade.
 */
@NullMarked
package stoneprocess.core.source;

import org.jspecify.annotations.NullMarked;
