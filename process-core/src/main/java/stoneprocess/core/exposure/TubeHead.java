package stoneprocess.core.exposure;

import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.source.Citation;

/**
 * The water column of an absorption tube and the wind that presses rain as hard.
 *
 * @param head height of the water above the middle of the tested face
 * @param wind wind that stands for it
 * @param source the test method
 * @param decides who decides what an uptake means
 */
public record TubeHead(Length head, Speed wind, Citation source, Role decides) {}
