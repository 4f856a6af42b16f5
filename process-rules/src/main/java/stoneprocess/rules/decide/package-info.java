/**
 * How topics close: by a policy over what rules state, or by a formula. Knows no rule engine.
 */
@NullMarked
package stoneprocess.rules.decide;

import org.jspecify.annotations.NullMarked;
