package stoneprocess.core.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.ChangedBy;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * One fact of a survey made another: the answer to a field, one machine or grit more or less on hand, or one kind of
 * damage in one zone. Immutable and safe to share between threads.
 */
public sealed interface Change {
    /**
     * Another answer to a field.
     *
     * @param field the field
     * @param from the answer before; empty where it was not known, so that the change is something found out
     * @param to the answer after, of the field's type
     * @param classSteps how many classes lie between the two, 1 or more: places in the order of a choice, classes of
     *     the scale of a measured value, members of a set or list that come or go; 1 for a name, and wherever it was
     *     not known before
     */
    record OfAnswer(SurveyField<?> field, Optional<Object> from, Object to, int classSteps) implements Change {
        /**
         * Checks the answers.
         *
         * @throws InvalidInputException for an answer that the field does not accept, for steps under 1, and where both
         *     answers are the same
         */
        public OfAnswer {
            Refuse.nulls(OfAnswer.class, field, from, to);
            from = from.map(field::check);
            to = field.check(to);
            if (from.equals(Optional.of(to))) {
                throw new InvalidInputException(field.name(), print(to), "another answer than before");
            }
            requireSteps(field.name(), classSteps);
        }

        @Override
        public String name() {
            return field.name();
        }

        @Override
        public String place() {
            return field.name();
        }

        @Override
        public ChangedBy changedBy() {
            return field.changedBy();
        }

        @Override
        public boolean isFoundOut() {
            return from.isEmpty();
        }

        @Override
        public FloorSurvey in(FloorSurvey survey) {
            requireBefore(place(), from, survey.answer(field).value());
            return survey.toBuilder().put(field, to).build();
        }
    }

    /**
     * One machine or one grit more or less on hand.
     *
     * @param field a field that takes a set or a list
     * @param member the machine or grit, of the type of the field's members
     * @param added true when it is on hand after the change and was not before; false the other way round
     */
    record OfMember(SurveyField<?> field, Object member, boolean added) implements Change {
        /**
         * Checks the member.
         *
         * @throws InvalidInputException for a field that takes no set or list, and for a member that it does not accept
         */
        public OfMember {
            Refuse.nulls(OfMember.class, field, member);
            if (!(field.kind() instanceof FieldKind.Choices || field.kind() instanceof FieldKind.Grades)) {
                throw new InvalidInputException("field", field.name(), "a field that takes a set or a list");
            }
            requireMember(field, member);
        }

        @Override
        public String name() {
            return field.name();
        }

        @Override
        public String place() {
            return field.name() + "/" + print(member);
        }

        @Override
        public ChangedBy changedBy() {
            return field.changedBy();
        }

        @Override
        public int classSteps() {
            return 1;
        }

        @Override
        public boolean isFoundOut() {
            return false;
        }

        @Override
        public FloorSurvey in(FloorSurvey survey) {
            Collection<?> before = survey.answer(field)
                    .value()
                    .map(Collection.class::cast)
                    .orElseThrow(() -> new InvalidInputException(place(), "unknown", "a known answer before"));
            if (before.contains(member) == added) {
                throw new InvalidInputException(
                        place(), added ? "on hand" : "not on hand", "the other of on hand and not on hand before");
            }
            List<Object> after = new ArrayList<>(before);
            if (added) {
                after.add(member);
            } else {
                after.remove(member);
            }
            Object typed = field.kind() instanceof FieldKind.Choices ? new java.util.LinkedHashSet<>(after) : after;
            return survey.toBuilder().put(field, typed).build();
        }

        private static void requireMember(SurveyField<?> field, Object member) {
            field.check(field.kind() instanceof FieldKind.Choices ? java.util.Set.of(member) : List.of(member));
        }
    }

    /**
     * One kind of damage in one zone made another.
     *
     * @param zone name of the zone
     * @param kind the kind of damage
     * @param from what was found before; empty where it was not known
     * @param to what there is after, of the same kind
     * @param classSteps how many classes lie between the two, 1 or more; 1 where it was not known before
     */
    record OfDamage(String zone, DamageKind kind, Optional<Damage> from, Damage to, int classSteps) implements Change {
        /**
         * Checks the damage.
         *
         * @throws InvalidInputException for damage of another kind, for steps under 1, and where nothing changes
         */
        public OfDamage {
            Refuse.nulls(OfDamage.class, zone, kind, from, to);
            from.ifPresent(damage -> requireKind(kind, damage));
            requireKind(kind, to);
            requireSteps("damages." + kind.key(), classSteps);
            if (from.equals(Optional.of(to))) {
                throw new InvalidInputException("damages." + kind.key(), zone, "other damage than before");
            }
        }

        @Override
        public String name() {
            return "damages." + kind.key();
        }

        @Override
        public String place() {
            return zone + "/" + name();
        }

        @Override
        public ChangedBy changedBy() {
            return ChangedBy.NOBODY;
        }

        @Override
        public boolean isFoundOut() {
            return from.isEmpty();
        }

        @Override
        public FloorSurvey in(FloorSurvey survey) {
            Zone before = survey.zones().stream()
                    .filter(candidate -> candidate.name().equals(zone))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInputException("zone", zone, "the name of a zone of the survey"));
            requireBefore(place(), from, before.damage(kind).value());
            return survey.toBuilder().replace(before, before.with(to)).build();
        }

        private static void requireKind(DamageKind kind, Damage damage) {
            if (damage.kind() != kind) {
                throw new InvalidInputException(
                        "damages." + kind.key(), damage.kind().key(), "damage of its own kind");
            }
        }
    }

    /** Name of the field, or {@code damages.} and a kind of damage, as questions have it. */
    String name();

    /** What changes: the name, with the machine or grit behind it, or the zone before it. Of two changes of one way no
     * two have the same place. */
    String place();

    /** How many classes lie between before and after, 1 or more. */
    int classSteps();

    /** Who can bring it about; nobody for what a floor is. */
    ChangedBy changedBy();

    /** True when it was not known before, so that the change is something found out. */
    boolean isFoundOut();

    /**
     * The survey with this change.
     *
     * @throws InvalidInputException when the survey's answer is not the one before the change, and when the change
     *     cannot hold together with the other answers
     */
    FloorSurvey in(FloorSurvey survey);

    /**
     * The survey with several changes, made in the order given.
     *
     * @throws InvalidInputException as {@link #in}, and when two changes have the same place
     */
    static FloorSurvey all(FloorSurvey survey, List<Change> changes) {
        FloorSurvey changed = Objects.requireNonNull(survey, "survey");
        for (int i = 0; i < changes.size(); i++) {
            String place = changes.get(i).place();
            if (changes.subList(0, i).stream().anyMatch(other -> other.place().equals(place))) {
                throw new InvalidInputException("changes", place, "each place once");
            }
            changed = changes.get(i).in(changed);
        }
        return changed;
    }

    private static void requireSteps(String name, int steps) {
        if (steps < 1) {
            throw new InvalidInputException(name + ".class-steps", Integer.toString(steps), "1 or more");
        }
    }

    private static void requireBefore(String place, Optional<?> expected, Optional<?> found) {
        if (!expected.equals(found)) {
            throw new InvalidInputException(
                    place,
                    found.map(Change::print).orElse("unknown"),
                    "the answer before the change, "
                            + expected.map(Change::print).orElse("unknown"));
        }
    }

    private static String print(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity.print();
        }
        if (value instanceof Term term) {
            return term.key();
        }
        if (value instanceof AbrasiveGrade grade) {
            return grade.key();
        }
        if (value instanceof Collection<?> members) {
            return String.join(", ", members.stream().map(Change::print).toList());
        }
        return String.valueOf(value);
    }
}
