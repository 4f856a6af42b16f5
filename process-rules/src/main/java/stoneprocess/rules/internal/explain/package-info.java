/**
 * How answers are found: from the decision records of a recommendation, the facts of its floor and the conditions of the
 * rules. Makes no sentences.
 */
@NullMarked
package stoneprocess.rules.internal.explain;

import org.jspecify.annotations.NullMarked;
