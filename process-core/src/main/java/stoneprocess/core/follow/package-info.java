/**
 * Answers to a job log: the next move, and the causes of a fault. Keys and arguments, no sentences.
 */
@NullMarked
package stoneprocess.core.follow;

import org.jspecify.annotations.NullMarked;
