package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.exposure.SlipPotential;
import stoneprocess.core.survey.AgeClass;
import stoneprocess.core.survey.CementSurface;
import stoneprocess.core.survey.Cleaner;
import stoneprocess.core.survey.CleaningTrial;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.CrackHarm;
import stoneprocess.core.survey.DampSource;
import stoneprocess.core.survey.EtchClass;
import stoneprocess.core.survey.FillAgeClass;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Holes;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.LastWorked;
import stoneprocess.core.survey.LippageClass;
import stoneprocess.core.survey.OriginalFinish;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.StripLevel;
import stoneprocess.core.survey.TreatedAgo;
import stoneprocess.core.survey.WavinessClass;
import stoneprocess.core.survey.WearClass;

/** What happened to the floor. */
public final class Condition {
    private Condition() {}

    /** What lies on the surface. */
    public record Coated(Set<Coating> mayBe) implements Feature<Coating> {
        public Coated {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The finish it has now. */
    public record PresentFinish(Set<Finish> mayBe) implements Feature<Finish> {
        public PresentFinish {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether cleaning alone was tried. */
    public record CleaningTried(Set<CleaningTrial> mayBe) implements Feature<CleaningTrial> {
        public CleaningTried {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How it was treated last. */
    public record LastTreated(Set<LastTreatment> mayBe) implements Feature<LastTreatment> {
        public LastTreated {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** At which tool and grit a job was left off. */
    public record LeftOffAt(Set<LastWorked> mayBe) implements Feature<LastWorked> {
        public LeftOffAt {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How the floor was finished when it was laid. */
    public record OriginallyFinished(Set<OriginalFinish> mayBe) implements Feature<OriginalFinish> {
        public OriginallyFinished {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What it is cleaned with. */
    public record CleanedWith(Set<Cleaner> mayBe) implements Feature<Cleaner> {
        public CleanedWith {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How long ago that was. */
    public record LastTreatedAgo(Set<TreatedAgo> mayBe) implements Feature<TreatedAgo> {
        public LastTreatedAgo {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Scratches of the field that cover more than local repairs would. */
    public record Scratches(Set<ScratchClass> mayBe) implements Feature<ScratchClass> {
        public Scratches {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Scratches of edges and stairs that cover more than local repairs would; none where they were not surveyed apart. */
    public record EdgeScratches(Set<ScratchClass> mayBe) implements Feature<ScratchClass> {
        public EdgeScratches {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Worse scratches in a few places. */
    public record LocalScratches(Set<ScratchClass> mayBe) implements Feature<ScratchClass> {
        public LocalScratches {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Dullness without lines. */
    public record Wear(Set<WearClass> mayBe) implements Feature<WearClass> {
        public Wear {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Etches of the field that cover more than local repairs would. */
    public record Etches(Set<EtchClass> mayBe) implements Feature<EtchClass> {
        public Etches {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Etches of edges and stairs that cover more than local repairs would; none where they were not surveyed apart. */
    public record EdgeEtches(Set<EtchClass> mayBe) implements Feature<EtchClass> {
        public EdgeEtches {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Worse etches in a few places. */
    public record LocalEtches(Set<EtchClass> mayBe) implements Feature<EtchClass> {
        public LocalEtches {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Lippage of more joints than local repairs would ease. */
    public record Lippage(Set<LippageClass> mayBe) implements Feature<LippageClass> {
        public Lippage {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Higher lippage at a few joints. */
    public record LocalLippage(Set<LippageClass> mayBe) implements Feature<LippageClass> {
        public LocalLippage {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Departure from a straightedge. */
    public record Waviness(Set<WavinessClass> mayBe) implements Feature<WavinessClass> {
        public Waviness {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Cracks, chips and holes. */
    public record Cracks(Set<Presence> mayBe) implements Feature<Presence> {
        public Cracks {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Oil stains. */
    public record OilStains(Set<Presence> mayBe) implements Feature<Presence> {
        public OilStains {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Organic stains. */
    public record OrganicStains(Set<Presence> mayBe) implements Feature<Presence> {
        public OrganicStains {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Rust stains. */
    public record RustStains(Set<Presence> mayBe) implements Feature<Presence> {
        public RustStains {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Salts. */
    public record Salts(Set<Presence> mayBe) implements Feature<Presence> {
        public Salts {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Flaking and spalling. */
    public record Flaking(Set<Presence> mayBe) implements Feature<Presence> {
        public Flaking {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What the dullest zone reads at 60 degrees, as a class of finish. */
    public record GlossRead(Set<Finish> mayBe) implements Feature<Finish> {
        public GlossRead {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The finish as it is called against what the brightest zone reads. */
    public record StatedFinish(Set<FinishMatch> mayBe) implements Feature<FinishMatch> {
        public StatedFinish {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The readings against the ceiling of the stone. */
    public record CeilingRead(Set<CeilingMatch> mayBe) implements Feature<CeilingMatch> {
        public CeilingRead {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether scratches, etching or wear make the lanes worse than the field beside them. */
    public record LanesWorn(Set<LaneContrast> mayBe) implements Feature<LaneContrast> {
        public LanesWorn {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The lanes against the field beside them, by scratches and etches. */
    public record Lanes(Set<LaneContrast> mayBe) implements Feature<LaneContrast> {
        public Lanes {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How the surface of concrete or terrazzo was left or made. */
    public record CementFace(Set<CementSurface> mayBe) implements Feature<CementSurface> {
        public CementFace {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The highest lip anywhere, however rare. */
    public record HighestLip(Set<LippageClass> mayBe) implements Feature<LippageClass> {
        public HighestLip {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The deepest hollow or wave anywhere, however rare. */
    public record DeepestWave(Set<WavinessClass> mayBe) implements Feature<WavinessClass> {
        public DeepestWave {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether anybody has slipped or may slip on it as it is. */
    public record Slippery(Set<Presence> mayBe) implements Feature<Presence> {
        public Slippery {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How divider strips lie. */
    public record StripHeight(Set<StripLevel> mayBe) implements Feature<StripLevel> {
        public StripHeight {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether cracks do harm. */
    public record CracksHarm(Set<CrackHarm> mayBe) implements Feature<CrackHarm> {
        public CracksHarm {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What is missing from the surface apart from cracks. */
    public record HolesFound(Set<Holes> mayBe) implements Feature<Holes> {
        public HolesFound {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How far the floor has hardened since it was laid. */
    public record LaidAgo(Set<AgeClass> mayBe) implements Feature<AgeClass> {
        public LaidAgo {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How far the newest grout or fill has cured. */
    public record FilledAgo(Set<FillAgeClass> mayBe) implements Feature<FillAgeClass> {
        public FilledAgo {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Where water in the floor comes from. */
    public record DampFrom(Set<DampSource> mayBe) implements Feature<DampSource> {
        public DampFrom {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How likely people are to slip by the wet pendulum value that was measured. */
    public record SlipMeasured(Set<SlipPotential> mayBe) implements Feature<SlipPotential> {
        public SlipMeasured {
            mayBe = Classes.copy(mayBe);
        }
    }
}
