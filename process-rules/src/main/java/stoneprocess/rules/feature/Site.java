package stoneprocess.rules.feature;

import java.util.Set;
import stoneprocess.core.survey.Access;
import stoneprocess.core.survey.CrewClass;
import stoneprocess.core.survey.DeadlineClass;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.LoadClass;
import stoneprocess.core.survey.LoadConfirmed;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ReopenClass;
import stoneprocess.core.survey.RoomClass;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.ShiftClass;
import stoneprocess.core.survey.SizeClass;
import stoneprocess.core.survey.Slope;
import stoneprocess.core.survey.Structure;
import stoneprocess.core.survey.Traffic;
import stoneprocess.core.survey.WarmthClass;
import stoneprocess.core.survey.WetUse;
import stoneprocess.core.survey.Wheels;
import stoneprocess.core.survey.WorkingHours;
import stoneprocess.core.survey.WorksKind;

/** The place of the work. */
public final class Site {
    private Site() {}

    /** How large the floor is. */
    public record FloorSize(Set<SizeClass> mayBe) implements Feature<SizeClass> {
        public FloorSize {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Indoors or outdoors. */
    public record Place(Set<Setting> mayBe) implements Feature<Setting> {
        public Place {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Other people. */
    public record PeopleAbout(Set<Occupied> mayBe) implements Feature<Occupied> {
        public PeopleAbout {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** A floor drain. */
    public record FloorDrain(Set<Presence> mayBe) implements Feature<Presence> {
        public FloorDrain {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Doors that can stand open. */
    public record DoorsToOpen(Set<Presence> mayBe) implements Feature<Presence> {
        public DoorsToOpen {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** A fan. */
    public record FanOnSite(Set<Presence> mayBe) implements Feature<Presence> {
        public FanOnSite {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much air the room holds. */
    public record RoomSize(Set<RoomClass> mayBe) implements Feature<RoomClass> {
        public RoomSize {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Water on site. */
    public record TapWater(Set<Presence> mayBe) implements Feature<Presence> {
        public TapWater {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Level or sloped; a ramp slopes, whatever else is level. */
    public record Slopes(Set<Slope> mayBe) implements Feature<Slope> {
        public Slopes {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How wet it gets in use. */
    public record UsedWet(Set<WetUse> mayBe) implements Feature<WetUse> {
        public UsedWet {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What the circuit carries. */
    public record PowerSupply(Set<SupplyClass> mayBe) implements Feature<SupplyClass> {
        public PowerSupply {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How a machine reaches it. */
    public record Reached(Set<Access> mayBe) implements Feature<Access> {
        public Reached {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What carries it. */
    public record CarriedBy(Set<Structure> mayBe) implements Feature<Structure> {
        public CarriedBy {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** The load that it is confirmed to carry. */
    public record FloorCarries(Set<LoadClass> mayBe) implements Feature<LoadClass> {
        public FloorCarries {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Who confirmed the load. */
    public record LoadConfirmedBy(Set<LoadConfirmed> mayBe) implements Feature<LoadConfirmed> {
        public LoadConfirmedBy {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether it is protected. */
    public record HistoricFabric(Set<Historic> mayBe) implements Feature<Historic> {
        public HistoricFabric {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Consent in writing of those who answer for historic fabric. */
    public record OfficerConsent(Set<Presence> mayBe) implements Feature<Presence> {
        public OfficerConsent {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much it is walked on. */
    public record FootTraffic(Set<Traffic> mayBe) implements Feature<Traffic> {
        public FootTraffic {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What the work counts as. */
    public record Works(Set<WorksKind> mayBe) implements Feature<WorksKind> {
        public Works {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How many work together. */
    public record CrewSize(Set<CrewClass> mayBe) implements Feature<CrewClass> {
        public CrewSize {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** When the floor has to open again. */
    public record Reopening(Set<ReopenClass> mayBe) implements Feature<ReopenClass> {
        public Reopening {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether treads or landings belong to the floor. */
    public record Treads(Set<Presence> mayBe) implements Feature<Presence> {
        public Treads {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Whether a worktop or a wall is among what was surveyed. */
    public record NoFloor(Set<Presence> mayBe) implements Feature<Presence> {
        public NoFloor {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** What rolls over the floor. */
    public record RollingLoad(Set<Wheels> mayBe) implements Feature<Wheels> {
        public RollingLoad {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Temperature of the floor. */
    public record FloorWarmth(Set<WarmthClass> mayBe) implements Feature<WarmthClass> {
        public FloorWarmth {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Lowest temperature of the air until everything has cured. */
    public record AirWarmth(Set<WarmthClass> mayBe) implements Feature<WarmthClass> {
        public AirWarmth {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** Frost while the floor is wet. */
    public record FrostExpected(Set<Presence> mayBe) implements Feature<Presence> {
        public FrostExpected {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** When the floor has to be handed over. */
    public record Deadline(Set<DeadlineClass> mayBe) implements Feature<DeadlineClass> {
        public Deadline {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How long the crew works in one go. */
    public record ShiftLength(Set<ShiftClass> mayBe) implements Feature<ShiftClass> {
        public ShiftLength {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** When the crew may work. */
    public record HoursOfWork(Set<WorkingHours> mayBe) implements Feature<WorkingHours> {
        public HoursOfWork {
            mayBe = Classes.copy(mayBe);
        }
    }

    /** How much edge there is for the area. */
    public record EdgesMeasured(Set<EdgeLength> mayBe) implements Feature<EdgeLength> {
        public EdgesMeasured {
            mayBe = Classes.copy(mayBe);
        }
    }
}
