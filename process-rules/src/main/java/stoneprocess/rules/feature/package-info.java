/**
 * The facts that a rule may read: classes, never numbers. House rules are written in these words.
 */
@NullMarked
package stoneprocess.rules.feature;

import org.jspecify.annotations.NullMarked;
