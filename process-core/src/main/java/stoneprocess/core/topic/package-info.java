/**
 * What is decided: the table of topics with stage, subject and policy, the values that each topic may take, what a rule
 * may say about one, and the card that every rule carries. What comes of deciding stands in {@code decision},
 * {@code plan} and {@code follow}.
 */
@NullMarked
package stoneprocess.core.topic;

import org.jspecify.annotations.NullMarked;
