/**
 * The facade: {@link stoneprocess.rules.Advisor} answers a survey with a recommendation, by the rules of a
 * {@link stoneprocess.rules.Rulebase}.
 */
@NullMarked
package stoneprocess.rules;

import org.jspecify.annotations.NullMarked;
