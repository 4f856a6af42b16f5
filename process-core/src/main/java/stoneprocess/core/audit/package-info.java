/**
 * What an audit of a rulebase found.
 */
@NullMarked
package stoneprocess.core.audit;

import org.jspecify.annotations.NullMarked;
