package stoneprocess.rules.space;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.internal.classify.Facts;

/**
 * Draws valid surveys from the table of fields. Everything random comes from the generator that the caller passes in,
 * so that the same seed gives the same survey. Immutable and safe to share between threads.
 *
 * <p>Drawn evenly, hardly any floor could be worked on: some answer among fifty would stop it. Each survey therefore
 * draws how calm it is, and a choice takes its first, mildest class that much more often. Likewise the name and the
 * tests of the stone mostly fit one family; in some surveys they are drawn without regard to each other and may
 * contradict.
 */
public final class SurveyGenerator {
    private static final List<ZoneKind> FLOOR =
            Stream.of(ZoneKind.values()).filter(ZoneKind::isFloor).toList();
    private static final double NAME_AND_TESTS_FIT = 0.85;
    private static final double ALL_GRADES_ON_HAND = 0.5;
    private static final double LOWEST_OF_A_LOGARITHM = 0.01;

    private final double known;
    private final GritSequence sequence;

    private SurveyGenerator(double known, GritSequence sequence) {
        this.known = known;
        this.sequence = sequence;
    }

    /**
     * A generator over the usual sequence.
     *
     * @param known how often a field, and a kind of damage in a zone, is answered, 0 to 100 %
     * @throws InvalidInputException for more than 100 %
     */
    public static SurveyGenerator of(Share known) {
        return of(known, GritSequence.standard());
    }

    /** A generator whose grits on hand come from the given sequence. */
    public static SurveyGenerator of(Share known, GritSequence sequence) {
        if (known.percent() > 100) {
            throw new InvalidInputException("known", known.print(), "a share from 0 to 100 %");
        }
        return new SurveyGenerator(known.percent() / 100, Objects.requireNonNull(sequence, "sequence"));
    }

    /** Where the grits on hand come from. */
    public GritSequence sequence() {
        return sequence;
    }

    /** A survey with one to three zones that cover the floor or leave a part of it out. */
    public FloorSurvey draw(SplittableRandom random) {
        double calm = 1 - 0.6 * random.nextDouble() * random.nextDouble();
        Map<SurveyField<?>, Object> answers = new LinkedHashMap<>();
        for (SurveyField<?> field : SurveyField.all()) {
            answer(answers, field, calm, random);
        }
        if (random.nextDouble() < NAME_AND_TESTS_FIT) {
            fitStone(answers, random);
        }
        List<Zone> zones = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        int left = 100;
        for (int i = 1; i <= count && left > 0; i++) {
            boolean fills = i == count && random.nextBoolean();
            int share = fills ? left : 1 + random.nextInt(left);
            left -= share;
            zones.add(zone("zone " + i, new Share(share), calm, random));
        }
        FloorSurvey.Builder builder = FloorSurvey.builder("drawn").zones(zones);
        for (Zone zone : zones) {
            if (random.nextDouble() < known / 2) {
                builder.reading(reading(zone, random));
            }
        }
        return survey(builder, answers);
    }

    /**
     * The same survey with some answers drawn anew, which may also be forgotten or become known.
     *
     * @param survey the survey; its zones stay, what was found in them may change
     * @param names which answers, as in {@link Forgetting#names()}
     */
    public FloorSurvey redraw(FloorSurvey survey, Collection<String> names, SplittableRandom random) {
        double calm = random.nextDouble();
        FloorSurvey.Builder builder = survey.toBuilder();
        Map<SurveyField<?>, Object> answers = new LinkedHashMap<>();
        for (SurveyField<?> field : SurveyField.all()) {
            if (names.contains(field.name())) {
                builder.unknown(field);
                answer(answers, field, calm, random);
            } else {
                survey.answer(field).value().ifPresent(value -> answers.put(field, value));
            }
        }
        List<Zone> zones = new ArrayList<>();
        for (Zone zone : survey.zones()) {
            Zone redrawn = zone;
            for (DamageKind kind : DamageKind.values()) {
                if (names.contains(Facts.damage(kind))) {
                    redrawn = damage(kind, calm, random).map(redrawn::with).orElse(redrawn.without(kind));
                }
            }
            zones.add(redrawn);
        }
        return survey(builder.zones(zones), answers);
    }

    /** Leaves unknown what cannot hold together with the other answers. */
    private static FloorSurvey survey(FloorSurvey.Builder builder, Map<SurveyField<?>, Object> answers) {
        if (answers.get(SurveyField.SETTING) == Setting.OUTDOORS) {
            answers.remove(SurveyField.ROOM_VOLUME);
            builder.unknown(SurveyField.ROOM_VOLUME);
        }
        boolean softAndFizzing = answers.get(SurveyField.SCRIBER) == ScriberTest.SCRATCHED
                && answers.get(SurveyField.ACID_DROP) == AcidDrop.FIZZ_ON_SOLID;
        if (softAndFizzing && answers.get(SurveyField.FACE) == Face.GLAZED) {
            answers.remove(SurveyField.FACE);
            builder.unknown(SurveyField.FACE);
        }
        answers.forEach(builder::put);
        return builder.build();
    }

    private void answer(
            Map<SurveyField<?>, Object> answers, SurveyField<?> field, double calm, SplittableRandom random) {
        if (random.nextDouble() < known) {
            answers.put(field, value(field.kind(), calm, random));
        }
    }

    private Object value(FieldKind kind, double calm, SplittableRandom random) {
        if (kind instanceof FieldKind.Choice choice) {
            return choose(List.of(choice.type().getEnumConstants()), calm, random);
        }
        if (kind instanceof FieldKind.Choices choices) {
            Set<Object> some = new LinkedHashSet<>();
            for (Object constant : choices.type().getEnumConstants()) {
                if (random.nextDouble() < 0.7) {
                    some.add(constant);
                }
            }
            return some;
        }
        if (kind instanceof FieldKind.Measure measure) {
            return measure(measure, random);
        }
        if (kind instanceof FieldKind.StoneName) {
            return pick(StoneCatalogue.standard().all(), random).name();
        }
        if (random.nextDouble() < ALL_GRADES_ON_HAND) {
            return sequence.grades();
        }
        List<AbrasiveGrade> some = new ArrayList<>();
        for (AbrasiveGrade grade : sequence.grades()) {
            if (random.nextDouble() < 0.8) {
                some.add(grade);
            }
        }
        return some;
    }

    /** Half of the draws spread evenly over the range, half over its orders of magnitude. */
    private static Quantity measure(FieldKind.Measure measure, SplittableRandom random) {
        double low = measure.limits().low();
        double high = measure.limits().high();
        double part = random.nextDouble();
        double value = low + (high - low) * part;
        if (random.nextBoolean()) {
            double from = StrictMath.log(Math.max(low, LOWEST_OF_A_LOGARITHM));
            value = StrictMath.exp(from + (StrictMath.log(high) - from) * part);
        }
        double inside = Math.min(high, Math.max(low, value));
        return Quantity.of(BigDecimal.valueOf(inside), measure.dimension().unit());
    }

    /** Sets the name and the tests that are known to what one family would show. */
    private static void fitStone(Map<SurveyField<?>, Object> answers, SplittableRandom random) {
        Stone stone = pick(StoneCatalogue.standard().all(), random);
        Family family = pick(stone.families().stream().sorted().toList(), random);
        Traits traits = Traits.of(family);
        AcidReaction acid = pick(traits.acid().stream().sorted().toList(), random);
        Hardness hardness = pick(traits.hardness().stream().sorted().toList(), random);
        answers.computeIfPresent(SurveyField.STONE_NAME, (field, drawn) -> stone.name());
        answers.computeIfPresent(SurveyField.ACID_DROP, (field, drawn) -> StoneTests.acidDrop(acid));
        answers.computeIfPresent(SurveyField.SCRIBER, (field, drawn) -> StoneTests.scriber(hardness));
        if (family != Family.PORCELAIN && family != Family.BRICK) {
            answers.computeIfPresent(SurveyField.FACE, (field, drawn) -> drawn == Face.GLAZED ? Face.FLAT : drawn);
        }
    }

    private Zone zone(String name, Share share, double calm, SplittableRandom random) {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        for (DamageKind kind : DamageKind.values()) {
            damage(kind, calm, random).ifPresent(damage -> damages.put(kind, damage));
        }
        return new Zone(name, pick(FLOOR, random), share, damages);
    }

    /** A reading at 60 degrees, mostly of a clean, dry surface. */
    private static GlossReading reading(Zone zone, SplittableRandom random) {
        SurfaceState state = random.nextDouble() < 0.8 ? SurfaceState.CLEAN_DRY : SurfaceState.WET;
        return new GlossReading(zone.name(), Geometry.DEG_60, new Gloss(100 * random.nextDouble()), state);
    }

    /** What is found of a kind of damage: none, a look, a depth or both, with or without its share. */
    private Optional<Damage> damage(DamageKind kind, double calm, SplittableRandom random) {
        if (random.nextDouble() >= known) {
            return Optional.empty();
        }
        Term look = choose(kind.terms(), calm, random);
        if (look.equals(kind.none())) {
            return Optional.of(Damage.none(kind));
        }
        boolean feltOrHigher = kind.depthScale().isPresent() && look != ScratchClass.SEEN;
        Optional<Length> depth = feltOrHigher && random.nextBoolean()
                ? Optional.of(new Length(StrictMath.exp(-3 + 5 * random.nextDouble())))
                : Optional.empty();
        Optional<Term> seen = depth.isPresent() && random.nextBoolean() ? Optional.empty() : Optional.of(look);
        double part = random.nextBoolean() ? 100 * random.nextDouble() : 8 * random.nextDouble();
        Optional<Share> share = random.nextDouble() < known ? Optional.of(new Share(part)) : Optional.empty();
        return Optional.of(new Damage(kind, seen, depth, share));
    }

    private static <T> T choose(List<T> classes, double calm, SplittableRandom random) {
        return random.nextDouble() < calm ? classes.get(0) : pick(classes, random);
    }

    private static <T> T pick(List<T> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }
}
