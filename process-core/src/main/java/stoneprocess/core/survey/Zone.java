package stoneprocess.core.survey;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;

/**
 * A part of the floor that wears in its own way.
 *
 * @param name the name by which readings refer to it
 * @param kind what sort of part it is
 * @param share share of the floor's area, over 0 to 100 %
 * @param damages what was found; a kind that is not listed is unknown
 */
public record Zone(String name, ZoneKind kind, Share share, Map<DamageKind, Damage> damages) {
    public Zone {
        Refuse.nulls(Zone.class, name, kind, share, damages);
        Printable.require("name", name, 60, "a name");
        if (share.percent() == 0 || share.percent() > 100) {
            throw new InvalidInputException("share", share.print(), "a share over 0 and up to 100 %");
        }
        EnumMap<DamageKind, Damage> copy = new EnumMap<>(DamageKind.class);
        copy.putAll(damages);
        copy.forEach((damageKind, damage) -> {
            if (damage.kind() != damageKind) {
                throw new InvalidInputException(
                        "damages." + damageKind.key(), damage.kind().key(), "its own kind");
            }
        });
        damages = Collections.unmodifiableMap(copy);
    }

    /** What was found of one kind. */
    public Answer<Damage> damage(DamageKind damageKind) {
        Damage damage = damages.get(damageKind);
        return damage == null ? Answer.unknown() : Answer.known(damage);
    }

    /** The zone with this in place of what was noted of its kind. */
    public Zone with(Damage damage) {
        Map<DamageKind, Damage> changed = new EnumMap<>(DamageKind.class);
        changed.putAll(damages);
        changed.put(damage.kind(), damage);
        return new Zone(name, kind, share, changed);
    }

    /** The zone with nothing noted of a kind, so that it is unknown. */
    public Zone without(DamageKind damageKind) {
        Map<DamageKind, Damage> left = new EnumMap<>(DamageKind.class);
        left.putAll(damages);
        left.remove(damageKind);
        return new Zone(name, kind, share, left);
    }
}
