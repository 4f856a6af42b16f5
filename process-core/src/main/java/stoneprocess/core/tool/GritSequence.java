package stoneprocess.core.tool;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.term.Term;

/**
 * The grades that a crew works with, metal before transition before resin, coarse to fine within a bond. An embedder
 * replaces the standard sequence with {@link #of}. Numbers are compared inside one sequence only.
 */
public final class GritSequence {
    private static final String USUAL = "usual";

    /** A grade on hand stands for those whose number is within this ratio of its own; common practice, no source. */
    private static final double STANDS_FOR = 1.5;

    private static final GritSequence STANDARD = load();

    private final List<AbrasiveGrade> grades;
    private final List<AbrasiveGrade> ofOtherLadders;
    private final Map<String, AbrasiveGrade> byKey;

    private GritSequence(List<AbrasiveGrade> grades, List<AbrasiveGrade> ofOtherLadders) {
        this.grades = grades;
        this.ofOtherLadders = ofOtherLadders;
        this.byKey = Stream.concat(grades.stream(), ofOtherLadders.stream())
                .collect(Collectors.toUnmodifiableMap(AbrasiveGrade::key, Function.identity(), (own, other) -> own));
    }

    /**
     * Metal 16 to 200, transition 30 to 200, resin 50 to 6000. It knows beside them the numbers of other ladders, metal 40
     * to 150 and resin 60 to 2000, which are worked where a crew has them on hand. Common practice of the trade.
     */
    public static GritSequence standard() {
        return STANDARD;
    }

    /**
     * A sequence of the given grades, in any order.
     *
     * @throws InvalidInputException when it is empty or a bond has a number twice
     */
    public static GritSequence of(Collection<AbrasiveGrade> grades) {
        if (grades.isEmpty()) {
            throw new InvalidInputException("sequence", "empty", "at least one grade");
        }
        return new GritSequence(sorted(grades), List.of());
    }

    private static List<AbrasiveGrade> sorted(Collection<AbrasiveGrade> grades) {
        List<AbrasiveGrade> sorted = new ArrayList<>(grades);
        sorted.sort(AbrasiveGrade.IN_ORDER);
        for (int i = 1; i < sorted.size(); i++) {
            if (AbrasiveGrade.IN_ORDER.compare(sorted.get(i - 1), sorted.get(i)) == 0) {
                throw new InvalidInputException("sequence", sorted.get(i).key(), "each number once in a bond");
            }
        }
        return List.copyOf(sorted);
    }

    private static GritSequence load() {
        Map<Boolean, List<AbrasiveGrade>> byLadder = Tsv.read(GritSequence.class, "grades.tsv").stream()
                .collect(Collectors.partitioningBy(
                        row -> row.get("ladder").equals(USUAL),
                        Collectors.mapping(GritSequence::grade, Collectors.toList())));
        return new GritSequence(sorted(byLadder.get(true)), sorted(byLadder.get(false)));
    }

    private static AbrasiveGrade grade(Tsv.Row row) {
        return new AbrasiveGrade(
                Term.parse(Bond.class, row.get("bond"), "bond"),
                (int) row.number("number"),
                Range.of(
                        Length.of(row.number("finest_um"), Unit.MICROMETRE),
                        Length.of(row.number("coarsest_um"), Unit.MICROMETRE)));
    }

    /**
     * This sequence as a crew works with it that has the given grades on hand. Those of another ladder join it, and the
     * grades not on hand that one of them stands for, of the same bond and a number at most half as large again, leave it:
     * who owns 60, 120 and 220 is not sent for 50, 100 and 200. Grades that this sequence does not know are passed over.
     */
    public GritSequence with(Collection<AbrasiveGrade> onHand) {
        List<AbrasiveGrade> joining = onHand.stream()
                .filter(grade -> ofOtherLadders.contains(grade) && !grades.contains(grade))
                .toList();
        if (joining.isEmpty()) {
            return this;
        }
        List<AbrasiveGrade> worked = new ArrayList<>(joining);
        grades.stream()
                .filter(grade -> onHand.contains(grade)
                        || joining.stream()
                                .noneMatch(owned -> owned.bond() == grade.bond()
                                        && ratio(owned.number(), grade.number()) <= STANDS_FOR))
                .forEach(worked::add);
        return new GritSequence(sorted(worked), ofOtherLadders);
    }

    /** True for a grade of this sequence and for one of the other ladders that it knows, of the same grain. */
    public boolean knows(AbrasiveGrade grade) {
        return grades.contains(grade) || ofOtherLadders.contains(grade);
    }

    /** The keys of all grades that {@link #get} finds, as an error tells them. */
    public String known() {
        return keys(grades) + (ofOtherLadders.isEmpty() ? "" : "; of other ladders " + keys(ofOtherLadders));
    }

    private static String keys(List<AbrasiveGrade> grades) {
        return grades.stream().map(AbrasiveGrade::key).collect(Collectors.joining(", "));
    }

    public List<AbrasiveGrade> grades() {
        return grades;
    }

    /** The grades beside these that it knows, of ladders that other crews work with; none of a sequence of the caller's own. */
    public List<AbrasiveGrade> ofOtherLadders() {
        return ofOtherLadders;
    }

    /** The grades of one bond, coarse to fine. */
    public List<AbrasiveGrade> grades(Bond bond) {
        return grades.stream().filter(grade -> grade.bond() == bond).toList();
    }

    /**
     * The grade of a bond whose number is nearest to the one asked for, by ratio; the coarser one of two as near. Empty
     * when the sequence has no grade of that bond.
     *
     * @throws InvalidInputException for a number below 1
     */
    public Optional<AbrasiveGrade> nearest(Bond bond, int number) {
        if (number < 1) {
            throw new InvalidInputException("number", Integer.toString(number), "a grit number of 1 or more");
        }
        return grades(bond).stream().min(Comparator.comparingDouble(grade -> ratio(grade.number(), number)));
    }

    private static double ratio(int one, int other) {
        return (double) Math.max(one, other) / Math.min(one, other);
    }

    /**
     * The grade with the given key, such as {@code resin-800}: one of this sequence, or of the other ladders that it knows.
     *
     * @throws InvalidInputException naming the field and the grades that are known
     */
    public AbrasiveGrade get(String key, String field) {
        return Optional.ofNullable(byKey.get(Objects.requireNonNull(key, "key")))
                .orElseThrow(() -> new InvalidInputException(field, key, "a grade of the sequence in use: " + known()));
    }

    /**
     * The grade with the given name.
     *
     * @throws InvalidInputException naming the field and the grades that are known
     */
    public AbrasiveGrade get(Grit grit, String field) {
        return get(grit.key(), field);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GritSequence that && grades.equals(that.grades);
    }

    @Override
    public int hashCode() {
        return grades.hashCode();
    }

    @Override
    public String toString() {
        return grades.stream().map(AbrasiveGrade::key).toList().toString();
    }
}
