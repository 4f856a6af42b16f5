package stoneprocess.core.tool;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
    private static final GritSequence STANDARD = load();

    private final List<AbrasiveGrade> grades;

    private GritSequence(List<AbrasiveGrade> grades) {
        this.grades = grades;
    }

    /** Metal 16 to 200, transition 30 to 200, resin 50 to 6000. Common practice of the trade. */
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
        List<AbrasiveGrade> sorted = new ArrayList<>(grades);
        sorted.sort(AbrasiveGrade.IN_ORDER);
        for (int i = 1; i < sorted.size(); i++) {
            if (AbrasiveGrade.IN_ORDER.compare(sorted.get(i - 1), sorted.get(i)) == 0) {
                throw new InvalidInputException("sequence", sorted.get(i).key(), "each number once in a bond");
            }
        }
        return new GritSequence(List.copyOf(sorted));
    }

    private static GritSequence load() {
        return of(Tsv.read(GritSequence.class, "grades.tsv").stream()
                .map(row -> new AbrasiveGrade(
                        Term.parse(Bond.class, row.get("bond"), "bond"),
                        (int) row.number("number"),
                        Range.of(
                                Length.of(row.number("finest_um"), Unit.MICROMETRE),
                                Length.of(row.number("coarsest_um"), Unit.MICROMETRE))))
                .toList());
    }

    public List<AbrasiveGrade> grades() {
        return grades;
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
     * The grade with the given key, such as {@code resin-800}.
     *
     * @throws InvalidInputException naming the field and the grades of this sequence
     */
    public AbrasiveGrade get(String key, String field) {
        return grades.stream()
                .filter(grade -> grade.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        field,
                        key,
                        "a grade of the sequence in use: "
                                + String.join(
                                        ", ",
                                        grades.stream().map(AbrasiveGrade::key).toList())));
    }

    /**
     * The grade with the given name.
     *
     * @throws InvalidInputException naming the field and the grades of this sequence
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
