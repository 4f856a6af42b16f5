/**
 * Which topics there are, and the policies that close them. Knows no rule engine.
 */
@NullMarked
package stoneprocess.rules.decide;

import org.jspecify.annotations.NullMarked;
