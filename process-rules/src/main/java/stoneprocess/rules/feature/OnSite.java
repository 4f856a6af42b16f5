package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.PolishingAgent;

/** What the job log shows at the hold point that the work has reached. */
public final class OnSite {
    private OnSite() {}

    /** How far the job has come. */
    public record JobState(Set<JobStage> mayBe) implements Feature<JobStage> {
        public JobState {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Scratches that show, the worst of the zones. */
    public record LinesSeen(Set<ScratchLook> mayBe) implements Feature<ScratchLook> {
        public LinesSeen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** A film on the surface. */
    public record FilmSeen(Set<Presence> mayBe) implements Feature<Presence> {
        public FilmSeen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The state of the surface at the look. */
    public record FaceSeen(Set<FaceState> mayBe) implements Feature<FaceState> {
        public FaceSeen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The face of the pads. */
    public record PadFace(Set<PadLook> mayBe) implements Feature<PadLook> {
        public PadFace {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Edges beside the field, by eye. */
    public record EdgesSeen(Set<EdgeLook> mayBe) implements Feature<EdgeLook> {
        public EdgesSeen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much was looked at. */
    public record ZonesSeen(Set<ZoneCoverage> mayBe) implements Feature<ZoneCoverage> {
        public ZonesSeen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How far the edges have come. */
    public record EdgesWorked(Set<EdgeWork> mayBe) implements Feature<EdgeWork> {
        public EdgesWorked {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Passes beside the plan. */
    public record PassesDone(Set<PassCount> mayBe) implements Feature<PassCount> {
        public PassesDone {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Machine and weight beside the plan. */
    public record SetUp(Set<SetUpUse> mayBe) implements Feature<SetUpUse> {
        public SetUp {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How often the job went back. */
    public record GoneBack(Set<ReturnCount> mayBe) implements Feature<ReturnCount> {
        public GoneBack {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What the latest readings gained. */
    public record GlossGain(Set<GainSeen> mayBe) implements Feature<GainSeen> {
        public GlossGain {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The latest gain beside those before. */
    public record LatestGain(Set<GainOrder> mayBe) implements Feature<GainOrder> {
        public LatestGain {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The angle that was read at. */
    public record ReadAt(Set<AngleFit> mayBe) implements Feature<AngleFit> {
        public ReadAt {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether and how the finish is reached. */
    public record Outlook(Set<OutlookClass> mayBe) implements Feature<OutlookClass> {
        public Outlook {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether the start was too fine. */
    public record StartedAt(Set<StartFit> mayBe) implements Feature<StartFit> {
        public StartedAt {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether more passes would still help. */
    public record FurtherPasses(Set<PassesHelp> mayBe) implements Feature<PassesHelp> {
        public FurtherPasses {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The test area. */
    public record TestAreaTried(Set<TrialState> mayBe) implements Feature<TrialState> {
        public TestAreaTried {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The readings beside those of the test area. */
    public record BesideTestArea(Set<Compared> mayBe) implements Feature<Compared> {
        public BesideTestArea {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether one grit back is open. */
    public record OneBack(Set<WayBack> mayBe) implements Feature<WayBack> {
        public OneBack {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether two grits back are open. */
    public record TwoBack(Set<WayBack> mayBe) implements Feature<WayBack> {
        public TwoBack {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether a coarser start than the plan's is open. */
    public record CoarserStart(Set<WayBack> mayBe) implements Feature<WayBack> {
        public CoarserStart {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Bond of the grit in work. */
    public record BondInWork(Set<Bond> mayBe) implements Feature<Bond> {
        public BondInWork {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Fineness of the grit in work. */
    public record GritInWork(Set<GritClass> mayBe) implements Feature<GritClass> {
        public GritInWork {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** A reading that is higher than the stone can show. */
    public record OverRead(Set<Presence> mayBe) implements Feature<Presence> {
        public OverRead {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Where the grit in work stands on its track. */
    public record GradeOrder(Set<StepOrder> mayBe) implements Feature<StepOrder> {
        public GradeOrder {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether every planned grit was worked. */
    public record GradesDone(Set<GradeRun> mayBe) implements Feature<GradeRun> {
        public GradesDone {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Scratches that showed at the end of the grit before. */
    public record LinesBefore(Set<ScratchLook> mayBe) implements Feature<ScratchLook> {
        public LinesBefore {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether the floor is in use. */
    public record UseOfFloor(Set<FloorUse> mayBe) implements Feature<FloorUse> {
        public UseOfFloor {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The polishing agent of the plan. */
    public record PlannedAgent(Set<PolishingAgent> mayBe) implements Feature<PolishingAgent> {
        public PlannedAgent {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether the first grit again is open. */
    public record BackToStart(Set<WayBack> mayBe) implements Feature<WayBack> {
        public BackToStart {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What is left of the causes. */
    public record CausesLeft(Set<CausesFound> mayBe) implements Feature<CausesFound> {
        public CausesLeft {
            mayBe = Classes.copy(mayBe);
        }
    }

    /**
     * Whether pads of a bond ran on the floor. There is one fact for each bond.
     *
     * @param bond which
     * @param mayBe the classes
     */
    public record BondRun(Bond bond, Set<Presence> mayBe) implements OneOfMany<Presence> {
        public BondRun {
            Refuse.nulls(BondRun.class, bond, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return bond;
        }
    }

    /**
     * Whether an event stands. There is one fact for each kind.
     *
     * @param kind which
     * @param mayBe the classes
     */
    public record EventStands(EventKind kind, Set<Presence> mayBe) implements OneOfMany<Presence> {
        public EventStands {
            Refuse.nulls(EventStands.class, kind, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return kind;
        }
    }

    /**
     * Whether a sign was seen. There is one fact for each sign.
     *
     * @param sign which
     * @param mayBe the classes
     */
    public record SignSeen(Sign sign, Set<Presence> mayBe) implements OneOfMany<Presence> {
        public SignSeen {
            Refuse.nulls(SignSeen.class, sign, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return sign;
        }
    }

    /**
     * How a cause stands. There is one fact for each.
     *
     * @param fault which
     * @param mayBe the classes
     */
    public record Suspected(Fault fault, Set<Standing> mayBe) implements OneOfMany<Standing> {
        public Suspected {
            Refuse.nulls(Suspected.class, fault, mayBe);
            mayBe = Classes.copy(mayBe);
        }

        @Override
        public Term which() {
            return fault;
        }
    }
}
