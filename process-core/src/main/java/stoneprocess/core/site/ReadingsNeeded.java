package stoneprocess.core.site;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;

/**
 * How many readings give a zone's mean within the wanted half width.
 *
 * @param zone name of the zone
 * @param number how many readings in all
 * @param deviation how much single readings scatter
 * @param taken readings that were taken
 * @param ownScatter whether they show that scatter; one reading shows none, so that the usual scatter counts
 */
public record ReadingsNeeded(String zone, int number, Gloss deviation, int taken, boolean ownScatter) {
    public ReadingsNeeded {
        Refuse.nulls(ReadingsNeeded.class, zone, deviation);
    }
}
