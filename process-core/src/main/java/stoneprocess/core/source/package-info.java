/**
 * Where a rule or a figure comes from: citations, their grade, and the card that every rule carries.
 */
@NullMarked
package stoneprocess.core.source;

import org.jspecify.annotations.NullMarked;
