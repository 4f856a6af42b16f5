package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.survey.AggregateShown;
import stoneprocess.core.survey.Extent;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.MixedChoice;
import stoneprocess.core.survey.PolishWith;

/** What the owner wants. */
public final class Wishes {
    private Wishes() {}

    /** The owner's words. */
    public record OwnerGoal(Set<Goal> mayBe) implements Feature<Goal> {
        public OwnerGoal {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The class of finish that is wanted. */
    public record WantedFinish(Set<Finish> mayBe) implements Feature<Finish> {
        public WantedFinish {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether the floor already has it. */
    public record FinishToGo(Set<FinishGap> mayBe) implements Feature<FinishGap> {
        public FinishToGo {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** For which of two stones side by side the work is done. */
    public record StoneChosen(Set<MixedChoice> mayBe) implements Feature<MixedChoice> {
        public StoneChosen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much aggregate is to show. */
    public record AggregateWanted(Set<AggregateShown> mayBe) implements Feature<AggregateShown> {
        public AggregateWanted {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What brings calcite stone to a polish. */
    public record PolishChosen(Set<PolishWith> mayBe) implements Feature<PolishWith> {
        public PolishChosen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much of the floor is worked. */
    public record WorkExtent(Set<Extent> mayBe) implements Feature<Extent> {
        public WorkExtent {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The gloss that is agreed as a figure, as a class of finish. */
    public record GlossAgreed(Set<Finish> mayBe) implements Feature<Finish> {
        public GlossAgreed {
            mayBe = Classes.copy(mayBe);
        }
    }
}
