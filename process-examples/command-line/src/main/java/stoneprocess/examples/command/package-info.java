/** One class for each command, and what they share. */
@NullMarked
package stoneprocess.examples.command;

import org.jspecify.annotations.NullMarked;
