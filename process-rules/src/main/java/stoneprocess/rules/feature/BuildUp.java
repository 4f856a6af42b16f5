package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.survey.Backing;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.Damp;
import stoneprocess.core.survey.DividerStrips;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Heated;
import stoneprocess.core.survey.JointSpan;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.PieceSize;
import stoneprocess.core.survey.Sounding;

/** How the floor is built. */
public final class BuildUp {
    private BuildUp() {}

    /** What is glued to its back. */
    public record BackedBy(Set<Backing> mayBe) implements Feature<Backing> {
        public BackedBy {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What it lies on. */
    public record LaidOn(Set<Bed> mayBe) implements Feature<Bed> {
        public LaidOn {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether it is heated. */
    public record FloorHeating(Set<Heated> mayBe) implements Feature<Heated> {
        public FloorHeating {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What tapping and treading say. */
    public record TapSound(Set<Sounding> mayBe) implements Feature<Sounding> {
        public TapSound {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Suspect layers and residues. */
    public record LayerBelow(Set<HazardousLayer> mayBe) implements Feature<HazardousLayer> {
        public LayerBelow {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Moisture against the dry reference. */
    public record Moisture(Set<Damp> mayBe) implements Feature<Damp> {
        public Moisture {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The joints. */
    public record JointState(Set<Joints> mayBe) implements Feature<Joints> {
        public JointState {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What divider strips are made of. */
    public record StripMaterial(Set<DividerStrips> mayBe) implements Feature<DividerStrips> {
        public StripMaterial {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How large the pieces are. */
    public record PiecesMeasured(Set<PieceSize> mayBe) implements Feature<PieceSize> {
        public PiecesMeasured {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How wide the joints are. */
    public record JointsMeasured(Set<JointSpan> mayBe) implements Feature<JointSpan> {
        public JointsMeasured {
            mayBe = Classes.copy(mayBe);
        }
    }
}
