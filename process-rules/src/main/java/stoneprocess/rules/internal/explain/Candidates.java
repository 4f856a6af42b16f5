package stoneprocess.rules.internal.explain;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FlatRules;
import stoneprocess.rules.internal.meaning.RuleReach;

/**
 * The changes of a survey that a search tries, one for each class that the rules can tell apart.
 *
 * <ul>
 *   <li>A choice: every other constant; but loose pieces become nothing but sound, since that is what relaying makes them.
 *   <li>A measured value: for each other class that the facts read from it can take while the other answers stay, the
 *       nearest value in it, which is a limit of the scale or lies next to one; for a value that was not known, the value
 *       next to the limit. Where another unknown answer hides the class, both ends of what the field accepts.
 *   <li>Machines and grits: each one more or less, and all of them; where it was not known, all, none, and all but one.
 *   <li>The name of the stone: one name for each other set of families that a name can mean.
 *   <li>Damage: in each zone of the survey each other class, by look, over the share noted before or, where there was
 *       none or it was not known, over the whole zone.
 * </ul>
 *
 * <p>No answer is forgotten, and zones and gloss readings stay as they are. Of zones that are alike in all but their names,
 * the first two stand for all.
 */
final class Candidates {
    private static final List<String> NAMES = Facts.surveyNames();

    private final SurveyedFloor floor;
    private final FloorSurvey survey;
    private final FlatRules stoneRules;
    private final Map<String, List<Change>> byName = new HashMap<>();

    /** Of zones that are alike the first two: no search changes more. */
    private final List<Zone> zones = new ArrayList<>();

    /** By the name of the second of two zones that are alike, the name of the first. */
    private final Map<String, String> twins = new HashMap<>();

    Candidates(SurveyedFloor floor, RuleReach reach) {
        this.floor = floor;
        this.survey = floor.survey();
        this.stoneRules = reach.upTo(Topics.STONE);
        Map<List<Object>, List<Zone>> alike = new HashMap<>();
        for (Zone zone : survey.zones()) {
            List<Zone> same = alike.computeIfAbsent(looks(zone), looks -> new ArrayList<>());
            same.add(zone);
            if (same.size() <= 2) {
                zones.add(zone);
            }
            if (same.size() == 2) {
                twins.put(zone.name(), same.get(0).name());
            }
        }
    }

    /** All of a zone but its name. */
    private List<Object> looks(Zone zone) {
        List<Object> looks = new ArrayList<>(List.of(zone.kind(), zone.share(), zone.damages()));
        for (GlossReading reading : survey.readings()) {
            if (reading.zone().equals(zone.name())) {
                looks.addAll(List.of(reading.geometry(), reading.gloss(), reading.state()));
            }
        }
        return looks;
    }

    /** True for a change in the second of two zones that are alike, which only counts beside one in the first. */
    boolean isTwin(Change change) {
        return change instanceof Change.OfDamage damage && twins.containsKey(damage.zone());
    }

    /** False for a change in the second of two zones that are alike without one in the first. */
    boolean inOrder(Change first, Change second) {
        return !isTwin(second)
                || first instanceof Change.OfDamage damage
                        && damage.zone().equals(twins.get(((Change.OfDamage) second).zone()));
    }

    /** Names of all fields and kinds of damage, in the order of the survey form. */
    static List<String> names() {
        return NAMES;
    }

    /** The changes of one field or kind of damage; none for another name. */
    List<Change> of(String name) {
        return byName.computeIfAbsent(name, this::make);
    }

    /** The changes of several, in the order of the survey form. */
    List<Change> of(Set<String> names) {
        return NAMES.stream()
                .filter(names::contains)
                .flatMap(name -> of(name).stream())
                .toList();
    }

    private List<Change> make(String name) {
        Optional<DamageKind> damage = Facts.damage(name);
        if (damage.isPresent()) {
            return zones.stream().flatMap(zone -> damages(zone, damage.get())).toList();
        }
        return NAMES.contains(name) ? answers(SurveyField.named(name)) : List.of();
    }

    private List<Change> answers(SurveyField<?> field) {
        Optional<Object> from = survey.answer(field).value().map(value -> value);
        FieldKind kind = field.kind();
        if (kind instanceof FieldKind.Choice choice) {
            return choices(field, from, choice.type().getEnumConstants());
        }
        if (kind instanceof FieldKind.Measure measure) {
            return measured(field, measure, from);
        }
        if (kind instanceof FieldKind.Choices choices) {
            return members(field, from, Arrays.asList((Object[]) choices.type().getEnumConstants()));
        }
        if (kind instanceof FieldKind.Grades) {
            return members(field, from, new ArrayList<>(floor.sequence().grades()));
        }
        return names(field, from);
    }

    private static List<Change> choices(SurveyField<?> field, Optional<Object> from, Enum<?>[] constants) {
        List<Change> changes = new ArrayList<>();
        for (Enum<?> to : constants) {
            boolean stillBad = isLoose(from) && to != Sounding.SOUND;
            if (!from.equals(Optional.of(to)) && !stillBad) {
                int steps = from.map(before -> Math.abs(((Enum<?>) before).ordinal() - to.ordinal()))
                        .orElse(1);
                changes.add(new Change.OfAnswer(field, from, to, steps));
            }
        }
        return changes;
    }

    private static boolean isLoose(Optional<Object> from) {
        return from.equals(Optional.of(Sounding.LOOSE)) || from.equals(Optional.of(Sounding.FEW_LOOSE));
    }

    private static List<Change> names(SurveyField<?> field, Optional<Object> from) {
        StoneCatalogue catalogue = StoneCatalogue.standard();
        Set<Set<Family>> seen = new HashSet<>();
        from.ifPresent(
                name -> seen.add(catalogue.get((String) name, field.name()).families()));
        List<Change> changes = new ArrayList<>();
        for (Stone stone : catalogue.all()) {
            if (seen.add(stone.families())) {
                changes.add(new Change.OfAnswer(field, from, stone.name(), 1));
            }
        }
        return changes;
    }

    private static List<Change> members(SurveyField<?> field, Optional<Object> from, List<Object> all) {
        List<Change> changes = new ArrayList<>();
        if (from.isEmpty()) {
            changes.add(new Change.OfAnswer(field, from, typed(field, all), 1));
            changes.add(new Change.OfAnswer(field, from, typed(field, List.of()), 1));
            for (Object absent : all) {
                List<Object> rest =
                        all.stream().filter(member -> !member.equals(absent)).toList();
                changes.add(new Change.OfAnswer(field, from, typed(field, rest), 1));
            }
            return changes;
        }
        Collection<?> before = (Collection<?>) from.get();
        for (Object member : all) {
            changes.add(new Change.OfMember(field, member, !before.contains(member)));
        }
        int missing =
                (int) all.stream().filter(member -> !before.contains(member)).count();
        if (missing > 1) {
            changes.add(new Change.OfAnswer(field, from, typed(field, all), missing));
        }
        return changes;
    }

    private static Object typed(SurveyField<?> field, List<Object> members) {
        return field.kind() instanceof FieldKind.Choices ? new LinkedHashSet<>(members) : members;
    }

    private Stream<Change> damages(Zone zone, DamageKind kind) {
        Optional<Damage> from = zone.damage(kind).value();
        Optional<Integer> before = from.map(damage -> damage.severity(floor.parameters()));
        List<Change> changes = new ArrayList<>();
        for (int severity = 0; severity < kind.terms().size(); severity++) {
            if (before.equals(Optional.of(severity))) {
                continue;
            }
            Damage to = severity == 0
                    ? Damage.none(kind)
                    : new Damage(kind, Optional.of(kind.terms().get(severity)), Optional.empty(), share(from));
            int after = severity;
            int steps = before.map(rank -> Math.abs(rank - after)).orElse(1);
            changes.add(new Change.OfDamage(zone.name(), kind, from, to, steps));
        }
        return changes.stream();
    }

    private Optional<Share> share(Optional<Damage> from) {
        return from.filter(damage -> damage.severity(floor.parameters()) > 0)
                .map(Damage::share)
                .orElse(Optional.of(new Share(100)));
    }

    private List<Change> measured(SurveyField<?> field, FieldKind.Measure measure, Optional<Object> from) {
        boolean isRead =
                Facts.types().stream().anyMatch(type -> Facts.reads(type).contains(field.name()));
        if (!isRead || !survey.mayAnswer(field)) {
            return List.of();
        }
        List<List<Quantity>> classes = new ArrayList<>();
        List<List<Object>> signatures = new ArrayList<>();
        for (Quantity point : points(field, measure, from)) {
            List<Object> signature = signature(field, point, from);
            int last = classes.size() - 1;
            if (last < 0 || !signatures.get(last).equals(signature)) {
                classes.add(new ArrayList<>());
                signatures.add(signature);
                last++;
            }
            classes.get(last).add(point);
        }
        List<Object> now =
                from.map(value -> signature(field, (Quantity) value, from)).orElseGet(() -> seen(field, survey));
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < classes.size(); i++) {
            if (!signatures.get(i).equals(now)) {
                int index = i;
                int steps = from.map(value -> Math.abs(index - holding(classes, (Quantity) value)))
                        .orElse(1);
                changes.add(new Change.OfAnswer(field, from, nearest(classes.get(i), i, from), steps));
            }
        }
        return changes.isEmpty() ? ends(field, measure, from) : changes;
    }

    private static Quantity nearest(List<Quantity> members, int index, Optional<Object> from) {
        if (from.isEmpty()) {
            return index == 0 ? members.get(members.size() - 1) : members.get(0);
        }
        boolean above = members.get(0).compareTo((Quantity) from.get()) > 0;
        return above ? members.get(0) : members.get(members.size() - 1);
    }

    private static int holding(List<List<Quantity>> classes, Quantity value) {
        for (int i = 0; i < classes.size(); i++) {
            if (classes.get(i).contains(value)) {
                return i;
            }
        }
        throw new IllegalStateException(value.print() + " lies in no class");
    }

    private static List<Change> ends(SurveyField<?> field, FieldKind.Measure measure, Optional<Object> from) {
        return Stream.of(measure.limits().low(), measure.limits().high())
                .map(end -> quantity(BigDecimal.valueOf(end), measure))
                .filter(end -> !from.equals(Optional.of(end)))
                .map(end -> (Change) new Change.OfAnswer(field, from, end, 1))
                .toList();
    }

    /** The ends of what the field accepts, the value that it has, and what lies at and next to each limit. */
    private TreeSet<Quantity> points(SurveyField<?> field, FieldKind.Measure measure, Optional<Object> from) {
        int decimals = measure.dimension().decimals();
        BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
        TreeSet<Quantity> points = new TreeSet<>();
        points.add(quantity(BigDecimal.valueOf(measure.limits().low()), measure));
        points.add(quantity(BigDecimal.valueOf(measure.limits().high()), measure));
        from.ifPresent(value -> points.add((Quantity) value));
        for (double limit : Facts.limits(field, survey, floor.parameters())) {
            BigDecimal below = BigDecimal.valueOf(limit).setScale(decimals, RoundingMode.FLOOR);
            for (int i = -1; i <= 2; i++) {
                BigDecimal point = below.add(step.multiply(BigDecimal.valueOf(i)));
                if (measure.limits().contains(point.doubleValue())) {
                    points.add(quantity(point, measure));
                }
            }
        }
        return points;
    }

    private static Quantity quantity(BigDecimal value, FieldKind.Measure measure) {
        return Quantity.of(value, measure.dimension().unit());
    }

    /** The facts that are read from the field when it has a value. */
    private List<Object> signature(SurveyField<?> field, Quantity value, Optional<Object> from) {
        if (from.equals(Optional.of(value))) {
            return seen(field, survey);
        }
        return seen(field, new Change.OfAnswer(field, from, value, 1).in(survey));
    }

    private List<Object> seen(SurveyField<?> field, FloorSurvey of) {
        return floor.facts(stoneRules, of, type -> Facts.reads(type).contains(field.name()));
    }
}
