package stoneprocess.core.gloss;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;

/**
 * Readings of one angle on a clean, dry surface. What is wet, soiled or of another angle is set aside and stays visible.
 *
 * @param geometry angle of the readings that are used
 * @param used the readings that are used, in the order given; may be empty
 * @param setAside the others with the reason, in the order given
 */
public record ReadingSet(Geometry geometry, List<Reading> used, List<SetAside> setAside) {
    public ReadingSet {
        Refuse.nulls(ReadingSet.class, geometry, used, setAside);
        used = List.copyOf(used);
        setAside = List.copyOf(setAside);
    }

    /**
     * Sorts readings into those that can be compared and those that cannot.
     *
     * @param readings any readings of one stage of the work
     * @param geometry angle to keep
     */
    public static ReadingSet of(List<Reading> readings, Geometry geometry) {
        List<Reading> used = new ArrayList<>();
        List<SetAside> setAside = new ArrayList<>();
        for (Reading reading : readings) {
            if (reading.state() == FaceState.WET) {
                setAside.add(new SetAside(reading, SetAside.Reason.WET));
            } else if (reading.state() == FaceState.SOILED) {
                setAside.add(new SetAside(reading, SetAside.Reason.SOILED));
            } else if (reading.geometry() != geometry) {
                setAside.add(new SetAside(reading, SetAside.Reason.OTHER_GEOMETRY));
            } else {
                used.add(reading);
            }
        }
        return new ReadingSet(geometry, used, setAside);
    }

    /** The values of the readings that are used, in the order given. */
    public List<Gloss> values() {
        return used.stream().map(Reading::gloss).toList();
    }

    /** The values that are used, by zone, in the order in which zones first occur. */
    public Map<String, List<Gloss>> valuesByZone() {
        Map<String, List<Gloss>> byZone = new LinkedHashMap<>();
        used.forEach(reading -> byZone.computeIfAbsent(reading.zone(), zone -> new ArrayList<>())
                .add(reading.gloss()));
        return byZone;
    }
}
