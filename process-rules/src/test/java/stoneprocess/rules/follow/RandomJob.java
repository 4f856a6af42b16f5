package stoneprocess.rules.follow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Floors;

/** A job drawn at random: work along a plan with grades left out, passes saved and returns, and notes of every kind. */
public final class RandomJob {
    private static final List<Recommendation> PLANS = plans();

    private final int seed;
    private final boolean lined;
    private final Recommendation plan;
    private final List<Entry> entries = new ArrayList<>();
    private final Random random;
    private int clock = 8 * 60;

    /**
     * @param lined whether scratches of every kind show about as often as none
     */
    public RandomJob(int seed, boolean lined) {
        this.seed = seed;
        this.lined = lined;
        this.random = new Random(seed);
        this.plan = PLANS.get(random.nextInt(PLANS.size()));
        draw();
    }

    public int seed() {
        return seed;
    }

    public Recommendation plan() {
        return plan;
    }

    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    @Override
    public String toString() {
        return "job " + seed + " with " + entries.size() + " entries";
    }

    static boolean isEdge(Zone zone) {
        return zone.kind() == ZoneKind.EDGE || zone.kind() == ZoneKind.STAIR;
    }

    private static List<Recommendation> plans() {
        Damage lines = Floors.scratched(ScratchClass.FELT_BY_NAIL, 50);
        Zone field = Floors.zone("field", 80, Map.of(DamageKind.SCRATCHES, lines));
        Zone edge = Floors.zone("edge", 20, Map.of(DamageKind.SCRATCHES, lines));
        List<Zone> zones = List.of(field, new Zone("edge", ZoneKind.EDGE, edge.share(), edge.damages()));
        List<Zone> lanes = List.of(field, Floors.zone("lane", 20, Map.of(DamageKind.SCRATCHES, lines)));
        return Stream.of(
                        Floors.calciteMarble(lines).set(SurveyField.GOAL, Goal.POLISH),
                        Floors.calciteMarble(lines)
                                .set(SurveyField.GOAL, Goal.SATIN)
                                .zones(zones),
                        Floors.calciteMarble(lines)
                                .set(SurveyField.GOAL, Goal.HONE)
                                .zones(lanes),
                        Floors.damaged(Floors.scratched(ScratchClass.SEEN, 60)).set(SurveyField.GOAL, Goal.POLISH),
                        Floors.damaged(lines)
                                .set(SurveyField.GOAL, Goal.POLISH)
                                .set(SurveyField.THICKNESS, Length.of(7, Unit.MILLIMETRE)),
                        Floors.damaged(Floors.scratched(ScratchClass.DEEP, 60)).set(SurveyField.GOAL, Goal.HONE),
                        Floors.unremarkable().set(SurveyField.GOAL, Goal.JUST_BETTER))
                .map(floor -> Advisor.standard().recommend(floor.build()))
                .filter(plan -> plan.plan().isPresent())
                .toList();
    }

    private Moment later() {
        clock += 10;
        return new Moment(1, clock);
    }

    private Moment now() {
        return new Moment(1, clock);
    }

    private void draw() {
        List<Track> tracks = plan.plan().orElseThrow().tracks();
        List<PlannedStep> steps = tracks.stream()
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .flatMap(track -> track.steps().stream())
                .toList();
        boolean edges = tracks.stream().anyMatch(track -> track.kind() == TrackKind.EDGE);
        if (random.nextInt(3) > 0) {
            boolean cleared = random.nextInt(4) > 0;
            entries.add(new Entry.Tried(
                    later(),
                    steps.get(0).grade(),
                    cleared ? TrialResult.CLEARED : TrialResult.values()[random.nextInt(3)],
                    cleared && random.nextInt(4) > 0));
        }
        int worked = random.nextInt(2) == 0 ? steps.size() : random.nextInt(steps.size() + 1);
        for (int i = 0; i < worked; i++) {
            if (random.nextInt(12) == 0) {
                continue;
            }
            work(steps.get(i), edges);
            if (i > 0 && random.nextInt(12) == 0) {
                work(steps.get(i - 1), edges);
            }
        }
        if (random.nextInt(10) == 0) {
            EventKind kind = EventKind.values()[random.nextInt(EventKind.values().length)];
            entries.add(new Entry.Happened(
                    now(), kind, zone().name(), EventState.values()[random.nextInt(EventState.values().length)]));
        }
    }

    private Zone zone() {
        List<Zone> zones = plan.survey().zones();
        return zones.get(random.nextInt(zones.size()));
    }

    private void work(PlannedStep step, boolean edges) {
        if (edges && random.nextInt(15) > 0) {
            entries.add(new Entry.Worked(later(), TrackKind.EDGE, step.grade(), 8, Optional.empty(), Optional.empty()));
        }
        int passes = Math.max(1, step.passes().low() + random.nextInt(6) - 1);
        entries.add(new Entry.Worked(
                later(),
                TrackKind.OPEN_FIELD,
                step.grade(),
                random.nextInt(20) == 0 ? 3 * passes : passes,
                random.nextInt(3) == 0 ? Optional.empty() : Optional.of(step.machine()),
                random.nextInt(3) == 0
                        ? Optional.empty()
                        : Optional.of(step.addedMass().low())));
        later();
        for (Zone zone : plan.survey().zones()) {
            if (random.nextInt(10) > 0) {
                look(zone);
            }
        }
        if (step.grade().number() >= 800 && random.nextInt(8) == 0) {
            for (Direction direction : Direction.values()) {
                entries.add(new Entry.Read(
                        now(),
                        new Reading(
                                "middle",
                                zone().name(),
                                direction,
                                Geometry.DEG_60,
                                new Gloss(3 + 60 * random.nextDouble()),
                                FaceState.CLEAN_DRY)));
            }
        }
    }

    private void look(Zone zone) {
        entries.add(new Entry.Looked(
                now(),
                zone.name(),
                usually(FaceState.CLEAN_DRY, FaceState.values()).orElse(FaceState.WET),
                lined ? any(ScratchLook.values()) : usually(ScratchLook.NONE, ScratchLook.values()),
                usually(Presence.NONE, Presence.values()),
                usually(PadLook.OPEN, PadLook.values()),
                usually(EdgeLook.AS_FIELD, EdgeLook.values()),
                random.nextInt(8) > 0
                        ? Optional.of(Set.of())
                        : any(Sign.values()).map(EnumSet::of)));
    }

    private <T> Optional<T> usually(T good, T[] values) {
        return random.nextInt(8) > 0 ? Optional.of(good) : any(values);
    }

    private <T> Optional<T> any(T[] values) {
        int drawn = random.nextInt(values.length + 1);
        return drawn == values.length ? Optional.empty() : Optional.of(values[drawn]);
    }
}
