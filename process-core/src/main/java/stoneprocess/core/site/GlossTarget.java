package stoneprocess.core.site;

import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;

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
     * What the diamonds of a plan aim at: the gloss of a sample that is to be matched, else the lower limit of the finish.
     * Where powder stands in place of the finer diamonds, they make a satin, and no published figure tells what powder adds.
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
                        .map(finish -> powderFollowsSatin(recommendation) ? Finish.SATIN : finish)
                        .map(finish -> new GlossTarget(
                                recommendation.parameters().get("finish." + finish.key(), Gloss.class),
                                Optional.of(finish))));
    }

    /** Whether the floor is concrete, whose finish goes by the last grit; its chart of gloss was read on a burnished face. */
    public static boolean isNamedByGrit(Recommendation recommendation) {
        return KnownStone.of(recommendation).concrete();
    }

    private static boolean powderFollowsSatin(Recommendation recommendation) {
        boolean powder = recommendation
                .plan()
                .filter(plan -> plan.polishingAgent() != PolishingAgent.NONE)
                .isPresent();
        return powder
                && recommendation.values(Topics.LAST_GRIT, Subject.FLOOR).stream()
                        .anyMatch(grit -> grit.compareTo(LastGrit.G800) <= 0);
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
