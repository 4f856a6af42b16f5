package stoneprocess.core.site;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;

/**
 * How many readings are worth taking in a zone, and what they can show.
 *
 * @param zone name of the zone
 * @param number how many readings in all: as many as the wanted half width needs, but no more than {@code
 *     gloss-readings.most}
 * @param shows half width of the mean that so many give, or those that were taken if they are more
 * @param known whether that is within the wanted half width; else the mean cannot be known so closely, since single
 *     readings scatter too far
 * @param deviation how much single readings scatter
 * @param taken readings that were taken
 * @param ownScatter whether they show that scatter; one reading shows none, so that the usual scatter counts
 */
public record ReadingsNeeded(
        String zone, int number, Gloss shows, boolean known, Gloss deviation, int taken, boolean ownScatter) {
    public ReadingsNeeded {
        Refuse.nulls(ReadingsNeeded.class, zone, shows, deviation);
    }
}
