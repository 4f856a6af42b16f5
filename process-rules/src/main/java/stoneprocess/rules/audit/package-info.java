/**
 * Audits a rulebase without judging its answers: rules that disagree, repeat or never matter, cards and numbers that
 * nothing bears out. Nothing in the library depends on this room; laws of recommendations stand in the test kit.
 */
@NullMarked
package stoneprocess.rules.audit;

import org.jspecify.annotations.NullMarked;
