/**
 * What a floor can be made of. Figures for new stone are purchase limits, never facts about a floor.
 */
@NullMarked
package stoneprocess.core.stone;

import org.jspecify.annotations.NullMarked;
