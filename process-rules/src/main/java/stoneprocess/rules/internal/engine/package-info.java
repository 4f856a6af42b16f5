/**
 * The only room that knows Drools.
 */
@NullMarked
package stoneprocess.rules.internal.engine;

import org.jspecify.annotations.NullMarked;
