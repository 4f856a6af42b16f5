/**
 * Abrasives, bonds, grit sequences and machine classes, without any maker's names, colours or codes.
 */
@NullMarked
package stoneprocess.core.tool;

import org.jspecify.annotations.NullMarked;
