package stoneprocess.core.site;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;

/**
 * The gloss to reach at 60 degrees.
 *
 * @param gloss the gloss, over 0 GU
 * @param finish the finish whose lower limit it is; empty when it was given as a gloss
 */
public record GlossTarget(Gloss gloss, Optional<Finish> finish) {
    public GlossTarget {
        Refuse.nulls(GlossTarget.class, gloss, finish);
    }

    /**
     * What a plan aims at: the gloss of a sample that is to be matched, else the lower limit of the finish.
     *
     * @return empty for a hone, which has no lower limit, for concrete, whose finish is named by its last grit, and where no
     *     finish is decided
     */
    public static Optional<GlossTarget> of(Recommendation recommendation) {
        return sample(recommendation)
                .map(gloss -> new GlossTarget(gloss, Optional.empty()))
                .or(() -> recommendation
                        .plan()
                        .flatMap(Plan::finish)
                        .filter(finish -> finish != Finish.HONE && !isNamedByGrit(recommendation))
                        .map(finish -> new GlossTarget(
                                recommendation.parameters().get("finish." + finish.key(), Gloss.class),
                                Optional.of(finish))));
    }

    /** Whether the floor is concrete, whose finish goes by the last grit; its chart of gloss was read on a burnished face. */
    public static boolean isNamedByGrit(Recommendation recommendation) {
        return KnownStone.of(recommendation).concrete();
    }

    private static Optional<Gloss> sample(Recommendation recommendation) {
        boolean matches =
                recommendation.survey().answer(SurveyField.GOAL).value().equals(Optional.of(Goal.MATCH_SAMPLE));
        return recommendation
                .survey()
                .answer(SurveyField.GOAL_GLOSS)
                .value()
                .filter(gloss -> matches && gloss.gloss() > 0);
    }
}
