/**
 * Answers about a recommendation: why, why not, what differs between two, what would have to change, and what is worth
 * finding out. Keys and arguments, no sentences.
 */
@NullMarked
package stoneprocess.core.answer;

import org.jspecify.annotations.NullMarked;
