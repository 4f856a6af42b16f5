package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;

/**
 * Depth removed in a time, compared with a stated reference. Preston (1927): dh/dt = k p v. No k is published for
 * diamond on floor stone, so only ratios are given, and k is scaled by the inverse of the abrasion resistance:
 * (p v / Ha) / (p0 v0 / Ha0).
 *
 * @param contact pressure p and sliding speed v
 * @param resistance Ha of the stone cut
 * @param referenceContact p0 and v0
 * @param referenceResistance Ha0
 */
public record RelativeRemoval(
        Contact contact,
        AbrasionResistance resistance,
        Contact referenceContact,
        AbrasionResistance referenceResistance) {
    public RelativeRemoval {
        Refuse.nulls(RelativeRemoval.class, contact, resistance, referenceContact, referenceResistance);
    }

    /** The ratio; 100 % cuts as fast as the reference. */
    public Share share() {
        return new Share(100 * intensity(contact, resistance) / intensity(referenceContact, referenceResistance));
    }

    private static double intensity(Contact contact, AbrasionResistance resistance) {
        return contact.pressure().kept() * contact.sliding().kept() / resistance.ha();
    }
}
