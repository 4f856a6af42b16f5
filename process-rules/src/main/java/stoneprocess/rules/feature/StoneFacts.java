package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.DataSheet;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.SolventRag;
import stoneprocess.core.survey.StoneColour;
import stoneprocess.core.survey.StoneMix;
import stoneprocess.core.survey.WaterDrop;

/** What was seen and tested of the stone. */
public final class StoneFacts {
    private StoneFacts() {}

    /** The families that the floor's name covers. */
    public record NamedAs(Set<Family> mayBe) implements Feature<Family> {
        public NamedAs {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The acid drop. */
    public record AcidTest(Set<AcidDrop> mayBe) implements Feature<AcidDrop> {
        public AcidTest {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The steel scriber. */
    public record ScriberMark(Set<ScriberTest> mayBe) implements Feature<ScriberTest> {
        public ScriberMark {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The water drop. */
    public record WaterTest(Set<WaterDrop> mayBe) implements Feature<WaterDrop> {
        public WaterTest {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The white cloth with solvent. */
    public record SolventTest(Set<SolventRag> mayBe) implements Feature<SolventRag> {
        public SolventTest {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The laboratory on fibrous minerals. */
    public record LaboratorySays(Set<LaboratoryResult> mayBe) implements Feature<LaboratoryResult> {
        public LaboratorySays {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The colour of the ground. */
    public record GroundColour(Set<StoneColour> mayBe) implements Feature<StoneColour> {
        public GroundColour {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The surface as laid. */
    public record LaidFace(Set<Face> mayBe) implements Feature<Face> {
        public LaidFace {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether hard and soft stones lie side by side. */
    public record StonesMixed(Set<StoneMix> mayBe) implements Feature<StoneMix> {
        public StonesMixed {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The data sheet of an agglomerate on silica. */
    public record DataSheetSays(Set<DataSheet> mayBe) implements Feature<DataSheet> {
        public DataSheetSays {
            mayBe = Classes.copy(mayBe);
        }
    }
}
