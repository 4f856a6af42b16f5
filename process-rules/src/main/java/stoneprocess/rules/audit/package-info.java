/**
 * Checks of the rulebase: one rule at a time, one topic at a time, and laws that every recommendation keeps. Nothing in
 * the library depends on this room.
 */
@NullMarked
package stoneprocess.rules.audit;

import org.jspecify.annotations.NullMarked;
