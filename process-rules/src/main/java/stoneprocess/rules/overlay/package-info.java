/**
 * What a house changes in the shipped rulebase before it is built: rules switched off, numbers retuned.
 */
@NullMarked
package stoneprocess.rules.overlay;

import org.jspecify.annotations.NullMarked;
