/**
 * Sheets: what a crew breathes, hears and lifts, what a job takes and costs, what a floor reads and could read. Each is a
 * document, made of what {@code core} computed; nothing is computed here.
 */
@NullMarked
package stoneprocess.rules.text.sheet;

import org.jspecify.annotations.NullMarked;
