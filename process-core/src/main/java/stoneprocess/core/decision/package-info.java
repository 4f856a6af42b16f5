/**
 * How a topic was closed: the record of what won and what lost, each with its rule and the facts that matched.
 */
@NullMarked
package stoneprocess.core.decision;

import org.jspecify.annotations.NullMarked;
