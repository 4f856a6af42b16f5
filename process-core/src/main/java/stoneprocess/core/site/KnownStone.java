package stoneprocess.core.site;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.DividerStrips;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;

/**
 * What is known of a floor's stone: the families that it may be, narrowed by what the survey tells beyond them. Rules,
 * forecasts and estimates all read it here.
 *
 * @param families what the stone may be, at least one
 * @param scriber what a steel scriber did to it; empty when nobody tried
 */
public record KnownStone(Set<Family> families, Optional<ScriberTest> scriber) {
    /** Families whose face comes from a factory. */
    private static final Set<Family> MACHINE_MADE = Set.of(
            Family.ENGINEERED_QUARTZ,
            Family.ENGINEERED_MARBLE,
            Family.PORCELAIN,
            Family.BRICK,
            Family.ENCAUSTIC_CEMENT);

    /**
     * Copies the families.
     *
     * @throws InvalidInputException when there is none
     */
    public KnownStone {
        Refuse.nulls(KnownStone.class, families, scriber);
        Objects.requireNonNull(scriber, "scriber");
        if (families.isEmpty()) {
            throw new InvalidInputException("families", "none", "at least one family");
        }
        families = Collections.unmodifiableSet(EnumSet.copyOf(families));
    }

    /**
     * The stone of a survey.
     *
     * @param decided the families that the topic {@link Topics#STONE} leaves; none, when it was not decided, stands for
     *     any family
     */
    public static KnownStone of(FloorSurvey survey, List<Family> decided) {
        return new KnownStone(
                decided.isEmpty() ? EnumSet.allOf(Family.class) : EnumSet.copyOf(decided),
                survey.answer(SurveyField.SCRIBER).value());
    }

    /** The stone of a plan. */
    public static KnownStone of(Recommendation recommendation) {
        return of(recommendation.survey(), recommendation.values(Topics.STONE, Subject.FLOOR));
    }

    /**
     * How hard the stone may be. The families tell; where they leave more than one class, the scriber does. It tells
     * nothing where the stone may be sandstone: the point breaks hard grains out of a weak binder or rides over them, so
     * that its mark is of the binder and never of the grains that wear the tool. Common practice, no source. A mark that
     * none of the families can have tells nothing either.
     */
    public Set<Hardness> hardness() {
        Set<Hardness> byKind = Traits.across(families, Hardness.class, Traits::hardness);
        if (scriber.isEmpty() || families.contains(Family.SANDSTONE)) {
            return byKind;
        }
        boolean scratched = scriber.get() == ScriberTest.SCRATCHED;
        EnumSet<Hardness> narrowed = EnumSet.copyOf(byKind);
        narrowed.removeIf(hardness -> (hardness == Hardness.HARD) == scratched);
        return narrowed.isEmpty() ? byKind : Collections.unmodifiableSet(narrowed);
    }

    /** Whether it is sure that hard grains sit in a weak binder, which cuts fast however hard they are. */
    public boolean weakBinder() {
        return families.equals(Set.of(Family.SANDSTONE));
    }

    /** Whether it is sure that the floor is concrete. */
    public boolean concrete() {
        return families.equals(Set.of(Family.CONCRETE));
    }

    /** Whether it is sure that the floor was poured and has no pieces: a slab, resin terrazzo, terrazzo between strips. */
    public boolean isPoured(FloorSurvey survey) {
        boolean strips = survey.answer(SurveyField.STRIPS)
                .value()
                .filter(material -> material != DividerStrips.NONE)
                .isPresent();
        Set<Family> poured = EnumSet.of(Family.CONCRETE, Family.RESIN_TERRAZZO);
        if (strips) {
            poured.add(Family.CEMENT_TERRAZZO);
        }
        return poured.containsAll(families);
    }

    /** Whether it is sure that cement binds the floor, so that it hardens with age. */
    public boolean cementBound() {
        return EnumSet.of(Body.CEMENT, Body.CONCRETE).containsAll(Traits.across(families, Body.class, Traits::body));
    }

    /** Whether it is sure that the surface was made in a factory. */
    public boolean machineMade() {
        return MACHINE_MADE.containsAll(families);
    }

    /** Whether the surface may have been made in a factory. */
    public boolean mayBeMachineMade() {
        return families.stream().anyMatch(MACHINE_MADE::contains);
    }

    /** How it gives way to diamonds: the slowest to cut among what it may be. */
    public CuttingClass cutting() {
        return weakBinder() ? CuttingClass.WEAK_BINDER : CuttingClass.of(Collections.max(hardness()));
    }

    /** Whether it is reckoned as hard only because nobody knows that it is not. */
    public boolean reckonedHardInDoubt() {
        return cutting() == CuttingClass.HARD && hardness().size() > 1;
    }

    /** The ceiling of each family that has one, in the order of the families. */
    public Map<Family, GlossCeiling> ceilings() {
        Map<Family, GlossCeiling> ceilings = new EnumMap<>(Family.class);
        families.forEach(family -> GlossCeiling.of(family).ifPresent(ceiling -> ceilings.put(family, ceiling)));
        return ceilings;
    }

    /** The families that have no ceiling of their own. */
    public Set<Family> withoutCeiling() {
        EnumSet<Family> without = EnumSet.copyOf(families);
        without.removeAll(ceilings().keySet());
        return without;
    }

    /** The ceiling that no reading of this floor can pass, whatever family it is. */
    public GlossCeiling highestCeiling() {
        return withoutCeiling().isEmpty()
                ? byGlossAt60().reduce((low, high) -> high).orElseThrow()
                : GlossCeiling.ofAnyStone();
    }

    /** The lowest ceiling that it may have: what a forecast may count on. */
    public GlossCeiling lowestCeiling() {
        return byGlossAt60().findFirst().orElseGet(GlossCeiling::ofAnyStone);
    }

    private Stream<GlossCeiling> byGlossAt60() {
        return ceilings().values().stream().sorted(Comparator.comparing(GlossCeiling::at60));
    }

    static Set<Family> inOrder(Set<Family> families) {
        EnumSet<Family> copy = EnumSet.noneOf(Family.class);
        copy.addAll(families);
        return Collections.unmodifiableSet(copy);
    }
}
