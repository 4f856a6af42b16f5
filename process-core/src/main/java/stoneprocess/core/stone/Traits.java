package stoneprocess.core.stone;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;
import stoneprocess.core.term.Term;

/**
 * What a family is like. A trait that differs from stone to stone within the family lists every class that occurs; none
 * is empty.
 *
 * @param family the family
 * @param mohsLow lower end of the hardness on the Mohs scale (1 talc to 10 diamond)
 * @param mohsHigh upper end of the hardness on the Mohs scale
 * @param hardness how hard it is to cut
 * @param acid how it answers acid
 * @param finish the highest finish it takes
 * @param water how much water it stands
 * @param fibres whether it may hold fibrous minerals
 * @param silica how much crystalline silica it holds
 * @param body what holds it together
 * @param metal whether metal bond may cut it
 * @param source where the distinguishing traits come from; a line of the table without one is common practice
 */
public record Traits(
        Family family,
        double mohsLow,
        double mohsHigh,
        Set<Hardness> hardness,
        Set<AcidReaction> acid,
        Set<FinishReach> finish,
        Set<WaterTolerance> water,
        Set<FibreRisk> fibres,
        Set<SilicaContent> silica,
        Set<Body> body,
        Set<MetalBondUse> metal,
        Citation source) {

    private static final Map<Family, Traits> ALL = load();

    public Traits {
        Refuse.nulls(Traits.class, family, hardness, acid, finish, water, fibres, silica, body, metal, source);
        if (!(mohsLow >= 1 && mohsLow <= mohsHigh && mohsHigh <= 10)) {
            throw new InvalidInputException(
                    family.key() + ".mohs", mohsLow + " to " + mohsHigh, "an interval within 1 to 10");
        }
        hardness = copy(family, hardness, "hardness");
        acid = copy(family, acid, "acid");
        finish = copy(family, finish, "finish");
        water = copy(family, water, "water");
        fibres = copy(family, fibres, "fibres");
        silica = copy(family, silica, "silica");
        body = copy(family, body, "body");
        metal = copy(family, metal, "metal");
    }

    private static <E extends Enum<E>> Set<E> copy(Family family, Set<E> classes, String trait) {
        if (classes.isEmpty()) {
            throw new InvalidInputException(family.key() + "." + trait, "none", "at least one class");
        }
        return Collections.unmodifiableSet(EnumSet.copyOf(classes));
    }

    /** The traits of a family. */
    public static Traits of(Family family) {
        return ALL.get(Objects.requireNonNull(family, "family"));
    }

    /** The classes of a trait that occur in any of the given families. */
    public static <E extends Enum<E>> Set<E> across(
            Set<Family> families, Class<E> type, Function<Traits, Set<E>> trait) {
        EnumSet<E> classes = EnumSet.noneOf(Objects.requireNonNull(type, "type"));
        families.forEach(family -> classes.addAll(trait.apply(of(family))));
        return Collections.unmodifiableSet(classes);
    }

    /** The families in which a class of a trait occurs. */
    public static <E extends Enum<E>> Set<Family> familiesWith(E wanted, Function<Traits, Set<E>> trait) {
        EnumSet<Family> families = EnumSet.noneOf(Family.class);
        ALL.forEach((family, traits) -> {
            if (trait.apply(traits).contains(Objects.requireNonNull(wanted, "wanted"))) {
                families.add(family);
            }
        });
        return Collections.unmodifiableSet(families);
    }

    private static Map<Family, Traits> load() {
        Map<Family, Traits> all = new EnumMap<>(Family.class);
        for (Tsv.Row row : Tsv.read(Traits.class, "families.tsv")) {
            Family family = Term.parse(Family.class, row.get("family"), "family");
            all.put(
                    family,
                    new Traits(
                            family,
                            row.number("mohs_low"),
                            row.number("mohs_high"),
                            classes(row, "hardness", Hardness.class),
                            classes(row, "acid", AcidReaction.class),
                            classes(row, "finish", FinishReach.class),
                            classes(row, "water", WaterTolerance.class),
                            classes(row, "fibres", FibreRisk.class),
                            classes(row, "silica", SilicaContent.class),
                            classes(row, "body", Body.class),
                            classes(row, "metal", MetalBondUse.class),
                            Sources.standard().get(row.get("source"))));
        }
        for (Family family : Family.values()) {
            if (!all.containsKey(family)) {
                throw new IllegalStateException("families.tsv has no line for " + family.key());
            }
        }
        return all;
    }

    private static <E extends Enum<E> & Term> Set<E> classes(Tsv.Row row, String column, Class<E> type) {
        EnumSet<E> classes = EnumSet.noneOf(type);
        row.list(column).forEach(key -> classes.add(Term.parse(type, key, column)));
        return classes;
    }
}
