/**
 * What is known about a floor, its site, the equipment on hand and the owner's wish. No advice lives here.
 */
@NullMarked
package stoneprocess.core.survey;

import org.jspecify.annotations.NullMarked;
