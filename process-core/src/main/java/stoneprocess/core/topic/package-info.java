/**
 * What is decided: the table of topics with stage, subject and policy, and the values that each topic may take, and
 * what a rule may say about one: need, wish or veto. What
 * comes of deciding stands in {@code decision}, {@code plan} and {@code follow}.
 */
@NullMarked
package stoneprocess.core.topic;

import org.jspecify.annotations.NullMarked;
