/**
 * Measured values with their units. A dozen plain types; a conversion happens only at the edges.
 */
@NullMarked
package stoneprocess.core.quantity;

import org.jspecify.annotations.NullMarked;
