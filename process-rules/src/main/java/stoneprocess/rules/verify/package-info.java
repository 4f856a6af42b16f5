/**
 * Checks of a rulebase as plain Java, without a test framework.
 */
@NullMarked
package stoneprocess.rules.verify;

import org.jspecify.annotations.NullMarked;
