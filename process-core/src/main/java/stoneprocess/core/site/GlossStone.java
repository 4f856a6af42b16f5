package stoneprocess.core.site;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SurveyField;

/** What readings and forecasts of a planned floor need to know of its stone and of what is aimed at. */
public final class GlossStone {
    private final Recommendation recommendation;
    private final Set<Family> families;

    /**
     * @param recommendation the plan
     * @param families what the stone may be, at least one family
     */
    public GlossStone(Recommendation recommendation, Collection<Family> families) {
        this.recommendation = recommendation;
        this.families = EnumSet.copyOf(families);
    }

    /** The ceiling of each family that has one, in the order of the families. */
    public Map<Family, GlossCeiling> ceilings() {
        Map<Family, GlossCeiling> ceilings = new EnumMap<>(Family.class);
        families.forEach(family -> GlossCeiling.of(family).ifPresent(ceiling -> ceilings.put(family, ceiling)));
        return ceilings;
    }

    /** The families that have no ceiling of their own. */
    public Set<Family> withoutCeiling() {
        EnumSet<Family> without = EnumSet.noneOf(Family.class);
        without.addAll(families);
        without.removeAll(ceilings().keySet());
        return without;
    }

    /** The ceiling that no reading of this floor can pass, whatever family it is. */
    public GlossCeiling highest() {
        return withoutCeiling().isEmpty()
                ? byGlossAt60().reduce((low, high) -> high).orElseThrow()
                : GlossCeiling.ofAnyStone();
    }

    /** The lowest ceiling that it may have: what a forecast may count on. */
    public GlossCeiling lowest() {
        return byGlossAt60().findFirst().orElseGet(GlossCeiling::ofAnyStone);
    }

    private Stream<GlossCeiling> byGlossAt60() {
        return ceilings().values().stream().sorted(Comparator.comparing(GlossCeiling::at60));
    }

    /** How hard the stone may be: the families' classes, narrowed by the scriber where that leaves one. */
    public Set<Hardness> hardness() {
        EnumSet<Hardness> classes = EnumSet.noneOf(Hardness.class);
        families.forEach(family -> classes.addAll(Traits.of(family).hardness()));
        Optional<ScriberTest> scriber =
                recommendation.survey().answer(SurveyField.SCRIBER).value();
        if (classes.size() > 1 && scriber.isPresent()) {
            Set<Hardness> hard = EnumSet.of(Hardness.HARD);
            if (scriber.get() == ScriberTest.SCRATCHED) {
                classes.removeAll(hard);
            } else if (classes.contains(Hardness.HARD)) {
                classes.retainAll(hard);
            }
        }
        return classes;
    }

    /**
     * The gloss at 60 degrees of a sample that is to be matched.
     *
     * @return empty when no sample is to be matched or its gloss is not known or zero
     */
    public Optional<Gloss> sample() {
        return recommendation
                .survey()
                .answer(SurveyField.GOAL)
                .value()
                .filter(goal -> goal == Goal.MATCH_SAMPLE)
                .flatMap(goal ->
                        recommendation.survey().answer(SurveyField.GOAL_GLOSS).value())
                .filter(gloss -> gloss.gloss() > 0);
    }

    /** The finish whose lower limit is to be reached; empty for a hone, which has none, and where none is decided. */
    public Optional<Finish> finish() {
        return recommendation.plan().flatMap(Plan::finish).filter(finish -> finish != Finish.HONE);
    }

    /** The gloss to reach at 60 degrees: the sample's, else the lower limit of the finish; empty as {@link #finish}. */
    public Optional<Gloss> target() {
        return sample().or(() ->
                finish().map(finish -> recommendation.parameters().get("finish." + finish.key(), Gloss.class)));
    }
}
