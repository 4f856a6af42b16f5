package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FibreRisk;
import stoneprocess.core.stone.FinishReach;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.stone.MetalBondUse;
import stoneprocess.core.stone.SilicaContent;
import stoneprocess.core.stone.WaterTolerance;
import stoneprocess.core.survey.ChipColour;

/** What the stone is concluded to be. Each trait follows from the families that remain possible. */
public final class StoneTraits {
    private StoneTraits() {}

    /** The families that remain possible. */
    public record StoneFamily(Set<Family> mayBe) implements Feature<Family> {
        public StoneFamily {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How firmly the stone is identified. */
    public record Identified(Set<Identification> mayBe) implements Feature<Identification> {
        public Identified {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether acid eats it. */
    public record AcidResponse(Set<AcidReaction> mayBe) implements Feature<AcidReaction> {
        public AcidResponse {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How hard it is to cut. */
    public record CuttingHardness(Set<Hardness> mayBe) implements Feature<Hardness> {
        public CuttingHardness {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The highest finish it takes. */
    public record HighestFinish(Set<FinishReach> mayBe) implements Feature<FinishReach> {
        public HighestFinish {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much water it stands. */
    public record WaterStanding(Set<WaterTolerance> mayBe) implements Feature<WaterTolerance> {
        public WaterStanding {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The colour of its chips; pale where it has none to look at. */
    public record ChipsSeen(Set<ChipColour> mayBe) implements Feature<ChipColour> {
        public ChipsSeen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether it may hold fibrous minerals. */
    public record FibreSuspicion(Set<FibreRisk> mayBe) implements Feature<FibreRisk> {
        public FibreSuspicion {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much crystalline silica it holds. */
    public record SilicaShare(Set<SilicaContent> mayBe) implements Feature<SilicaContent> {
        public SilicaShare {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What holds it together. */
    public record BoundBy(Set<Body> mayBe) implements Feature<Body> {
        public BoundBy {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether metal bond may cut it. */
    public record MetalTolerance(Set<MetalBondUse> mayBe) implements Feature<MetalBondUse> {
        public MetalTolerance {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** With which metal a floor that stands proud is cut down soonest. */
    public record QuickerMetal(Set<MetalPace> mayBe) implements Feature<MetalPace> {
        public QuickerMetal {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much may be taken off. */
    public record RemovalBudget(Set<BudgetClass> mayBe) implements Feature<BudgetClass> {
        public RemovalBudget {
            mayBe = Classes.copy(mayBe);
        }
    }
}
