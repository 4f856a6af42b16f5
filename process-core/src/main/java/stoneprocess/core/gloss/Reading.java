package stoneprocess.core.gloss;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.quantity.Gloss;

/**
 * One reading of a gloss meter.
 *
 * @param place the spot within the zone, 1 to 60 characters, not blank
 * @param zone the part of the floor, 1 to 60 characters, not blank
 * @param direction which way the meter lay
 * @param geometry angle of the meter
 * @param gloss what it showed, from 0 to the reading of a perfect mirror at that angle; more is refused
 * @param state the state of the surface
 */
public record Reading(String place, String zone, Direction direction, Geometry geometry, Gloss gloss, FaceState state) {
    private static final int LONGEST = 60;

    public Reading {
        Refuse.nulls(Reading.class, place, zone, direction, geometry, gloss, state);
        Printable.require("place", place, LONGEST, "a name");
        Printable.require("zone", zone, LONGEST, "a name");
        Fresnel.requireReading(gloss, geometry);
    }
}
