package stoneprocess.rules.internal.meaning;

import java.util.List;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TrackKind;

/**
 * One of the things that a rule can say, and when. Most rules have one; a rule that copies from a fact, such as the
 * families of a name, has one for each thing that it says.
 *
 * @param rule id of the rule
 * @param says what it says; what it says of a step is said of any that meets the conditions
 * @param conditions what has to hold, in the order of the rule
 */
public record Saying(String rule, Contribution says, List<ConditionMeaning> conditions) {
    /** Stands for whichever step meets the conditions. */
    public static final Subject ANY_STEP = new Subject.OfStep(TrackKind.OPEN_FIELD, "any");

    public Saying {
        conditions = List.copyOf(conditions);
    }

    /** What it says, about {@link #ANY_STEP} where it speaks of a step. */
    public Contribution saysOfAnyStep() {
        return ofAnyStep(says);
    }

    static Contribution ofAnyStep(Contribution says) {
        return says.subject() instanceof Subject.OfStep
                ? new Contribution(says.kind(), says.topic(), ANY_STEP, says.values())
                : says;
    }
}
