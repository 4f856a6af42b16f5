/**
 * The answer: verdict, tracks and steps, warnings, questions, counter-offers. Keys and arguments, no sentences.
 */
@NullMarked
package stoneprocess.core.plan;

import org.jspecify.annotations.NullMarked;
