package stoneprocess.core.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.DamageKind;

/**
 * Shares that a surveyor tells in other words: the area of a zone, the rest of the floor, a number of pieces or spots. They are
 * read as shares and printed as such. A piece counts as a tenth of a square metre, a tile of about 30 by 30 cm; a spot, be it
 * a ring, a stain or a scratch, as a fiftieth, about 14 by 14 cm (common practice, no source).
 */
final class ZoneShares {
    private static final String SHARE = "share";
    private static final String AREA = "area";
    private static final String COUNT = "count";
    private static final double AREA_OF_A_PIECE = 0.1;
    private static final double AREA_OF_A_SPOT = 0.02;

    /** What is counted by the spot; all else by the piece. */
    private static final Set<String> SPOTS = Stream.of(
                    DamageKind.SCRATCHES,
                    DamageKind.ETCHES,
                    DamageKind.OIL_STAINS,
                    DamageKind.ORGANIC_STAINS,
                    DamageKind.RUST_STAINS)
            .map(DamageKind::key)
            .collect(Collectors.toUnmodifiableSet());

    private static final double WHOLE = 100;

    /** Shares are stated to a hundredth of a percent. */
    private static final double SMALLEST = 0.01;

    private ZoneShares() {}

    /** What a zone takes beside what is printed of it. */
    @SuppressWarnings("unchecked")
    static void describe(Definitions definitions) {
        Map<String, Object> zone = (Map<String, Object>) definitions.byName().get("zone");
        Map<String, Object> area = Shape.object(
                "description", "In place of a share, where site.area is known; one zone without either is the rest.");
        area.putAll(Amount.of(Dimension.AREA).alone().schema(definitions));
        ((Map<String, Object>) zone.get("properties")).put(AREA, area);
        zone.put("required", List.of("name", "kind"));
    }

    /** How a number of pieces or spots is described. */
    static Map<String, Object> countSchema(Definitions definitions) {
        Map<String, Object> count = Shape.object(
                "description",
                "Pieces or spots in place of a share, where site.area is known; a piece counts as 0.1 m2, an etch, stain or scratch as 0.02 m2.");
        count.putAll(Amount.of(Dimension.COUNT).alone().schema(definitions));
        return count;
    }

    /** The zones with a share wherever one can be worked out; an area or count that nothing can be worked out of is refused. */
    static Node told(Node zones, Node survey) {
        Optional<Double> floor =
                survey.optional("site").flatMap(site -> site.known(AREA)).map(ZoneShares::squareMetres);
        List<Map<String, Object>> told = new ArrayList<>();
        double surveyed = 0;
        for (Node zone : zones.array()) {
            Map<String, Object> fields = new LinkedHashMap<>(zone.object());
            zone.known(AREA).ifPresent(area -> {
                if (fields.containsKey(SHARE)) {
                    throw area.refused("an area or a share, not both");
                }
                fields.put(SHARE, percent(squareMetres(area) / known(floor, area) * WHOLE, area));
            });
            fields.remove(AREA);
            surveyed += percent(fields.get(SHARE));
            told.add(fields);
        }
        List<Map<String, Object>> open =
                told.stream().filter(ZoneShares::isOpen).toList();
        double rest = WHOLE - surveyed;
        if (open.size() == 1 && rest > 0) {
            open.get(0).put(SHARE, percent(rest, zones));
        } else if (!open.isEmpty()) {
            throw InvalidInputException.saying(
                    zones.path() + "[" + told.indexOf(open.get(0)) + "]." + SHARE,
                    "nothing",
                    "a share, such as {\"value\": 40, \"unit\": \"%\"}, or an area in all zones but one, which is the rest of"
                            + " the floor; where nobody knows how large they are, describe the floor as one zone",
                    "the size of the zone is missing");
        }
        for (int i = 0; i < told.size(); i++) {
            counted(told.get(i), new Node(zones.path() + "[" + i + "]", told.get(i), zones.scope()), floor);
        }
        return new Node(zones.path(), told, zones.scope());
    }

    private static boolean isOpen(Map<String, Object> zone) {
        return zone.get(SHARE) == null || Node.UNKNOWN.equals(zone.get(SHARE));
    }

    private static void counted(Map<String, Object> fields, Node zone, Optional<Double> floor) {
        zone.optional("damages")
                .filter(damages -> damages.value() instanceof Map)
                .ifPresent(damages -> {
                    Map<String, Object> found = new LinkedHashMap<>(damages.object());
                    found.replaceAll((kind, damage) -> damage instanceof Map<?, ?> map && map.containsKey(COUNT)
                            ? counted(
                                    new Node(Node.pathOf(damages.path(), kind), damage, damages.scope()),
                                    fields,
                                    floor,
                                    SPOTS.contains(kind) ? AREA_OF_A_SPOT : AREA_OF_A_PIECE)
                            : damage);
                    fields.put("damages", found);
                });
    }

    private static Map<String, Object> counted(
            Node damage, Map<String, Object> zone, Optional<Double> floor, double each) {
        Node count = damage.get(COUNT);
        double pieces = number(count, Dimension.COUNT);
        double area = known(floor, count) * percent(zone.get(SHARE)) / WHOLE;
        Map<String, Object> fields = new LinkedHashMap<>(damage.object());
        if (fields.containsKey(SHARE) || area == 0) {
            throw new InvalidInputException(
                    count.path(),
                    BigDecimal.valueOf(pieces).stripTrailingZeros().toPlainString(),
                    "a count or a share, not both, and a count only in a zone whose share is known");
        }
        fields.remove(COUNT);
        fields.put(SHARE, percent(Math.min(WHOLE, pieces * each / area * WHOLE), count));
        return fields;
    }

    private static double known(Optional<Double> floor, Node told) {
        return floor.orElseThrow(() -> told.refused(
                "a share, such as {\"value\": 5, \"unit\": \"%\"}; areas and counts need the size of the floor,"
                        + " site.area, which is not told"));
    }

    private static double squareMetres(Node area) {
        return number(area, Dimension.AREA);
    }

    private static double number(Node node, Dimension dimension) {
        return ((Quantity) Amount.of(dimension).alone().read(node)).kept();
    }

    /** The percent of a share as it stands; 0 where it is none, which its own check tells. */
    private static double percent(Object share) {
        return share instanceof Map<?, ?> map && map.get("value") instanceof BigDecimal value ? value.doubleValue() : 0;
    }

    private static Map<String, Object> percent(double share, Node told) {
        if (share > WHOLE) {
            throw InvalidInputException.saying(
                    told.path(), "an area", "no more than site.area", "the zone is larger than the floor");
        }
        BigDecimal rounded = new BigDecimal(Math.max(SMALLEST, share)).round(new MathContext(4));
        return Map.of("value", rounded, "unit", "%");
    }
}
