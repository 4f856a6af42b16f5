package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.stone.MetalBondUse;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Powder;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Verdict;

/** Closed decisions that later stages read. */
public final class Decided {
    private Decided() {}

    /** Whether the work may go ahead. */
    public record Permission(Set<Verdict> mayBe) implements Feature<Verdict> {
        public Permission {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether metal bond may be used on this floor. */
    public record MetalBond(Set<MetalBondUse> mayBe) implements Feature<MetalBondUse> {
        public MetalBond {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The finish that is aimed at. */
    public record FinishDecided(Set<Finish> mayBe) implements Feature<Finish> {
        public FinishDecided {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The coarsest first cut of all tracks. */
    public record StartCut(Set<Cut> mayBe) implements Feature<Cut> {
        public StartCut {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What local repairs do to the marks. */
    public record LocalMarks(Set<RepairResult> mayBe) implements Feature<RepairResult> {
        public LocalMarks {
            mayBe = Classes.copy(mayBe);
        }
    }

    /**
     * Whether the plan uses a kind of powder. There is one fact for each kind.
     *
     * @param powder the kind of powder
     * @param mayBe present or none
     */
    public record PowderUse(Powder powder, Set<Presence> mayBe) implements OneOfMany<Presence> {
        public PowderUse {
            Refuse.nulls(PowderUse.class, powder, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return powder;
        }
    }

    /** Which floor machine takes the fewest hours over the grits of the open field. */
    public record QuickerMachine(Set<MachinePace> mayBe) implements Feature<MachinePace> {
        public QuickerMachine {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether cutting and rests alone fit before the deadline. */
    public record DeadlineKept(Set<DeadlineFit> mayBe) implements Feature<DeadlineFit> {
        public DeadlineKept {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Protection. */
    public record Sealing(Set<Sealer> mayBe) implements Feature<Sealer> {
        public Sealing {
            mayBe = Classes.copy(mayBe);
        }
    }
}
