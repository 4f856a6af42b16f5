package stoneprocess.core.site;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.estimate.FloorStone;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;

/**
 * What the estimate takes the stone for. Hard stone counts as granite and every other as marble, both at the purchase
 * minimum of their standards.
 *
 * @param floorStone the stone
 * @param mayBeHard whether it was reckoned as hard only because nobody knows that it is not
 */
record JobStone(FloorStone floorStone, boolean mayBeHard) {
    /** Id of the topic that says what the stone is. */
    private static final String TOPIC = "stone";

    static JobStone of(Recommendation recommendation) {
        Set<Hardness> mayBe = EnumSet.noneOf(Hardness.class);
        families(recommendation)
                .forEach(family -> mayBe.addAll(Traits.of(family).hardness()));
        Optional<ScriberTest> mark =
                recommendation.survey().answer(SurveyField.SCRIBER).value();
        if (mayBe.size() > 1 && mark.equals(Optional.of(ScriberTest.SCRATCHED))) {
            mayBe.remove(Hardness.HARD);
        }
        if (mayBe.contains(Hardness.HARD)) {
            return new JobStone(FloorStone.granite(), mayBe.size() > 1 && mark.isEmpty());
        }
        Hardness hardest = mayBe.contains(Hardness.MEDIUM) ? Hardness.MEDIUM : Hardness.SOFT;
        return new JobStone(new FloorStone(hardest, FloorStone.marble().resistance()), false);
    }

    /** The families that the plan's own decision leaves; all where it has none. */
    private static List<Family> families(Recommendation recommendation) {
        return recommendation.outcomes().stream()
                .filter(outcome ->
                        outcome.topic().equals(TOPIC) && outcome.subject().equals(Subject.FLOOR))
                .filter(Decision.class::isInstance)
                .map(Decision.class::cast)
                .findFirst()
                .map(decision -> decision.values().stream()
                        .map(key -> Term.parse(Family.class, key, TOPIC))
                        .toList())
                .orElse(List.of(Family.values()));
    }
}
