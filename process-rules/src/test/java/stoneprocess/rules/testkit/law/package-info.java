/**
 * Laws that every recommendation keeps, whatever the rules: each with its prose, its reason and a check that knows the
 * trade and the design, not the rules.
 */
@NullMarked
package stoneprocess.rules.testkit.law;

import org.jspecify.annotations.NullMarked;
