/**
 * A recommendation as text for people. Made last, never parsed.
 */
@NullMarked
package stoneprocess.rules.text;

import org.jspecify.annotations.NullMarked;
