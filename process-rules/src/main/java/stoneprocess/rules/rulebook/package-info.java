/**
 * The rules' cards as pages.
 */
@NullMarked
package stoneprocess.rules.rulebook;

import org.jspecify.annotations.NullMarked;
