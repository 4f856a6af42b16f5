/**
 * How a decision is put together: need, wish and veto, and the record of what won and what lost.
 */
@NullMarked
package stoneprocess.core.decision;

import org.jspecify.annotations.NullMarked;
