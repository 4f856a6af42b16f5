package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Things in an order, each with a name, so that sets of them are sets of numbers and come out in that order.
 *
 * @param <T> the things
 */
final class Numbered<T> {
    private final Map<String, Integer> places = new HashMap<>();
    private final List<T> all;

    /** Numbers things in the order of the map. */
    Numbered(Map<String, T> named) {
        named.keySet().forEach(name -> places.put(name, places.size()));
        this.all = List.copyOf(named.values());
    }

    /** The place of a thing; null when there is none of that name. */
    @Nullable
    Integer place(String name) {
        return places.get(name);
    }

    /** The things at these places, in order. */
    List<T> at(BitSet chosen) {
        List<T> things = new ArrayList<>(chosen.cardinality());
        for (int place = chosen.nextSetBit(0); place >= 0; place = chosen.nextSetBit(place + 1)) {
            things.add(all.get(place));
        }
        return things;
    }
}
