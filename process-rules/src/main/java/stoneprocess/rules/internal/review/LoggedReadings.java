package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.AcceptanceCheck;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GeometryAdvice;
import stoneprocess.core.gloss.GlossCheck;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.GlossSuspicion;
import stoneprocess.core.gloss.GritPrior;
import stoneprocess.core.gloss.GritStage;
import stoneprocess.core.gloss.LevelReading;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.ReadingSet;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.site.FloorForecast;
import stoneprocess.core.site.GlossTarget;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.TrackIntensity;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.TrackKind;

/** The gloss readings of the log: which count, and what they tell of each zone. */
final class LoggedReadings {
    /** Modified z-score of an outlier: Iglewicz and Hoaglin, How to Detect and Handle Outliers (1993), 3.3; from memory. */
    private static final double OUTLYING = 3.5;

    /** Median absolute deviation of a normal distribution, in standard deviations. */
    private static final double MAD_TO_DEVIATION = 0.6745;

    /** The readings of one zone between two stretches of work. */
    private record Occasion(int stage, int passes, List<Noted<Entry.Read>> readings) {
        List<Gloss> values() {
            return readings.stream()
                    .map(read -> read.entry().reading().gloss())
                    .sorted()
                    .toList();
        }

        double mean() {
            return values().stream().mapToDouble(Gloss::gloss).average().orElseThrow();
        }
    }

    private final Recommendation plan;
    private final Logbook book;
    private final KnownStone stone;
    private final Map<String, List<Occasion>> byZone = new TreeMap<>();
    private final List<Reading> testArea = new ArrayList<>();
    private final List<ZoneProgress> progress = new ArrayList<>();

    LoggedReadings(Recommendation plan, Logbook book, Notes notes) {
        this.plan = plan;
        this.book = book;
        this.stone = KnownStone.of(plan);
        Map<String, List<Noted<Entry.Read>>> usable = new TreeMap<>();
        for (Noted<Entry.Read> read : book.entries(Entry.Read.class)) {
            if (usable(read, notes)) {
                usable.computeIfAbsent(read.entry().reading().zone(), zone -> new ArrayList<>())
                        .add(read);
            }
        }
        usable.forEach((zone, reads) -> {
            if (zone.equals(JobLog.TEST_AREA)) {
                reads.forEach(read -> testArea.add(read.entry().reading()));
            } else {
                byZone.put(zone, occasions(zone, reads));
            }
        });
        byZone.forEach((zone, occasions) -> judge(zone, occasions, notes));
    }

    private Parameters parameters() {
        return plan.parameters();
    }

    private boolean usable(Noted<Entry.Read> read, Notes notes) {
        Reading reading = read.entry().reading();
        Optional<NoteKind> why = Optional.empty();
        if (reading.state() == FaceState.WET) {
            why = Optional.of(NoteKind.WET_READING);
        } else if (reading.state() == FaceState.SOILED) {
            why = Optional.of(NoteKind.SOILED_READING);
        } else if (book.notSurveyed(reading.zone())) {
            why = Optional.of(NoteKind.ZONE_NOT_SURVEYED);
        } else if (reading.geometry() != Geometry.DEG_60) {
            why = Optional.of(NoteKind.OTHER_GEOMETRY);
        } else if (GlossCheck.of(reading.gloss(), reading.geometry(), stone.highestCeiling(), parameters())
                        .suspicion()
                != GlossSuspicion.NONE) {
            why = Optional.of(NoteKind.OVER_STONE);
        }
        why.ifPresent(kind -> notes.add(read, kind, Effect.SET_ASIDE));
        boolean baseline = why.isEmpty()
                && !reading.zone().equals(JobLog.TEST_AREA)
                && work(reading.zone()).stageAt(read.entry().at()) < 0;
        if (baseline) {
            notes.add(read, NoteKind.BEFORE_WORK, Effect.COUNTED);
        }
        return why.isEmpty();
    }

    private TrackWork work(String zone) {
        return book.work(book.trackOf(zone));
    }

    private List<Occasion> occasions(String zone, List<Noted<Entry.Read>> reads) {
        TrackWork work = work(zone);
        Map<List<Integer>, List<Noted<Entry.Read>>> grouped = new LinkedHashMap<>();
        for (Noted<Entry.Read> read : reads) {
            int stage = work.stageAt(read.entry().at());
            int passes = stage < 0
                    ? 0
                    : work.stages().get(stage).passesBy(read.entry().at());
            grouped.computeIfAbsent(List.of(stage, passes), key -> new ArrayList<>())
                    .add(read);
        }
        List<Occasion> occasions = new ArrayList<>();
        grouped.forEach((key, members) -> occasions.add(new Occasion(key.get(0), key.get(1), members)));
        return occasions;
    }

    /** The readings at the hold point, if the zone was read there. */
    private Optional<Occasion> now(String zone, List<Occasion> occasions) {
        TrackWork work = work(zone);
        Occasion last = occasions.get(occasions.size() - 1);
        boolean atHoldPoint = last.stage() == work.stages().size() - 1
                && last.stage() >= 0
                && last.passes() == work.stages().get(last.stage()).passes();
        return atHoldPoint ? Optional.of(last) : Optional.empty();
    }

    private void judge(String zone, List<Occasion> occasions, Notes notes) {
        Optional<Occasion> atHoldPoint = now(zone, occasions);
        if (atHoldPoint.isEmpty()) {
            occasions.stream()
                    .filter(occasion -> occasion.stage() >= 0)
                    .flatMap(occasion -> occasion.readings().stream())
                    .forEach(read -> notes.add(read, NoteKind.EARLIER_GRADE, Effect.SET_ASIDE));
            return;
        }
        Occasion now = atHoldPoint.get();
        if (now.readings().size() == 1) {
            notes.add(now.readings().get(0), NoteKind.ONE_SPOT_ONLY, Effect.COUNTS_WITH_CARE);
        }
        outliers(now).forEach(read -> notes.add(read, NoteKind.OUTLIER, Effect.COUNTS_WITH_CARE));
        Optional<Gain> gain = occasions.size() < 2
                ? Optional.empty()
                : Optional.of(Gain.of(occasions.get(occasions.size() - 2).values(), now.values(), parameters()));
        Optional<FloorForecast> forecast = forecast(zone, occasions);
        Optional<TargetOutlook> outlook =
                forecast.flatMap(known -> GlossTarget.of(plan).map(target -> known.outlook(target.gloss())));
        Optional<GlossPrediction> further = forecast.map(known -> known.afterMorePasses(morePasses()));
        progress.add(new ZoneProgress(
                zone,
                ZoneStatistics.of(now.values(), parameters().get("gloss-gain.confidence", Share.class)),
                gain,
                GeometryAdvice.best(new Gloss(now.mean()), parameters()),
                outlook,
                further));
    }

    private int morePasses() {
        return (int) parameters().get("follow.more-passes.high", Count.class).number();
    }

    private List<Noted<Entry.Read>> outliers(Occasion occasion) {
        List<Double> sorted = occasion.values().stream().map(Gloss::gloss).toList();
        if (sorted.size()
                < parameters().get("gloss-reading.outlier-from", Count.class).number()) {
            return List.of();
        }
        double middle = median(sorted);
        double spread = median(
                sorted.stream().map(value -> Math.abs(value - middle)).sorted().toList());
        return occasion.readings().stream()
                .filter(read -> MAD_TO_DEVIATION
                                * Math.abs(read.entry().reading().gloss().gloss() - middle)
                        > OUTLYING * spread)
                .filter(read -> spread > 0)
                .toList();
    }

    private static double median(List<Double> sorted) {
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }

    /** A forecast where one is possible by a ceiling of the stone's own, and resin grits are in work. */
    private Optional<FloorForecast> forecast(String zone, List<Occasion> occasions) {
        TrackKind track = book.trackOf(zone);
        List<TrackWork.Stage> stages = work(zone).stages();
        int from = firstOfResin(stages);
        boolean possible = FloorForecast.obstacles(plan, track).isEmpty()
                && stone.withoutCeiling().isEmpty()
                && from < stages.size();
        if (!possible) {
            return Optional.empty();
        }
        List<GritStage> grits = new ArrayList<>();
        for (int i = from; i < stages.size(); i++) {
            Share intensity = new TrackIntensity(plan, track).mean(stages.get(i).entries());
            grits.add(grit(i, stages.get(i), intensity, occasions));
        }
        return Optional.of(
                FloorForecast.of(plan, track, from > 0 ? Optional.empty() : start(track, zone, occasions), grits));
    }

    /** What the log read before the work; else what the survey read. */
    private Optional<LevelReading> start(TrackKind track, String zone, List<Occasion> occasions) {
        return occasions.stream()
                .filter(occasion -> occasion.stage() < 0)
                .findFirst()
                .flatMap(occasion -> level(0, occasion))
                .or(() -> FloorForecast.start(plan, track, zone));
    }

    private int firstOfResin(List<TrackWork.Stage> stages) {
        int from = stages.size();
        while (from > 0
                && stages.get(from - 1).grade().bond() == Bond.RESIN
                && GritPrior.covers(stages.get(from - 1).grade().number(), parameters())) {
            from--;
        }
        return from;
    }

    private GritStage grit(int stage, TrackWork.Stage work, Share intensity, List<Occasion> occasions) {
        return new GritStage(
                work.grade().number(),
                work.passes(),
                intensity,
                occasions.stream()
                        .filter(occasion -> occasion.stage() == stage)
                        .flatMap(occasion -> level(occasion.passes(), occasion).stream())
                        .toList());
    }

    private Optional<LevelReading> level(int passes, Occasion occasion) {
        return FloorForecast.level(plan, passes, occasion.values());
    }

    /** The zones that were read at the hold point, in the order of their names. */
    List<ZoneProgress> progress() {
        return List.copyOf(progress);
    }

    /** Gains of the mean from one occasion to the next, zone by zone, in the order of the work. */
    List<List<Double>> gains() {
        List<List<Double>> gains = new ArrayList<>();
        byZone.forEach((zone, occasions) -> {
            if (now(zone, occasions).isPresent()) {
                List<Double> ofZone = new ArrayList<>();
                for (int i = 1; i < occasions.size(); i++) {
                    ofZone.add(occasions.get(i).mean() - occasions.get(i - 1).mean());
                }
                gains.add(ofZone);
            }
        });
        return gains;
    }

    /** The floor beside its test area; empty when one of them was not read. */
    Optional<AcceptanceCheck> besideTestArea() {
        List<Reading> floor = new ArrayList<>();
        byZone.forEach((zone, occasions) -> now(zone, occasions)
                .ifPresent(now -> now.readings().stream()
                        .map(read -> read.entry().reading())
                        .sorted(Comparator.comparing(Reading::gloss).thenComparing(Reading::toString))
                        .forEach(floor::add)));
        if (floor.isEmpty() || testArea.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(AcceptanceCheck.of(
                ReadingSet.of(floor, Geometry.DEG_60),
                floor.stream().map(Reading::zone).filter(book::isEdge).collect(Collectors.toSet()),
                ReadingSet.of(testArea, Geometry.DEG_60),
                parameters()));
    }
}
