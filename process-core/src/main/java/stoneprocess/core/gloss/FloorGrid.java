package stoneprocess.core.gloss;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The floors that are still possible, each with the levels that it may have. Follows the work stage by stage: each stage
 * draws the grit's own deviation, weighs it by the readings and hands the level on. Immutable.
 */
final class FloorGrid {
    private static final int OWN = 31;
    private static final double OWN_STEP = 0.2;
    private static final double[] OWN_WEIGHTS = FloorModel.normal(OWN, OWN_STEP);
    private static final int NODES = 40;
    private static final int UNKNOWN_START = 12;

    /** A floor whose weight is below this part of the whole no longer matters. */
    private static final double NEGLIGIBLE_FLOOR = 1e-5;

    /** A point whose weight is below this part of its floor's no longer matters. */
    private static final double NEGLIGIBLE_POINT = 1e-5;

    private final FloorModel model;

    /** What the start takes off, as a part of what the plan does. */
    private final double takenOff;

    private final List<Track> tracks;

    /**
     * A possible floor with its way within the grit in work.
     *
     * @param floor the floor
     * @param start level at the start of the grit, for each point
     * @param limit level that the grit approaches, for each point
     * @param weight weight of each point
     * @param total sum of the weights
     */
    private record Track(FloorModel.Floor floor, double[] start, double[] limit, double[] weight, double total) {
        Track(FloorModel.Floor floor, double[] start, double[] limit, double[] weight) {
            this(floor, start, limit, weight, sum(weight));
        }

        private static double sum(double[] weights) {
            double sum = 0;
            for (double weight : weights) {
                sum += weight;
            }
            return sum;
        }

        double level(int point, double remaining) {
            return SaturationCurve.level(start[point], limit[point], remaining);
        }

        double remaining(double work) {
            return StrictMath.exp(-work / floor.tau());
        }
    }

    private FloorGrid(FloorModel model, double takenOff, List<Track> tracks) {
        this.model = model;
        this.takenOff = takenOff;
        this.tracks = tracks;
    }

    /** The grid before the first pass; without a reading any level up to the ceiling is as likely as any other. */
    static FloorGrid start(FloorModel model, Optional<OldDamage> damage, Optional<LevelReading> reading) {
        double ceiling = model.ceiling().at60().gloss();
        int count = reading.isPresent() ? 4 * NODES : UNKNOWN_START;
        double[] level = new double[count];
        double[] weight = new double[count];
        double sum = 0;
        for (int i = 0; i < count; i++) {
            level[i] = ceiling * (i + 0.5) / count;
            weight[i] = 1;
            if (reading.isPresent()) {
                weight[i] = model.likelihood(reading.get(), level[i]);
            }
            sum += weight[i];
        }
        List<Track> tracks = new ArrayList<>();
        for (FloorModel.Floor floor : model.floors(damage.map(OldDamage::depths).orElse(List.of(1.0)))) {
            double[] own = new double[count];
            for (int i = 0; i < count; i++) {
                own[i] = floor.weight() * weight[i] / sum;
            }
            tracks.add(new Track(floor, level, level, own));
        }
        return new FloorGrid(model, damage.map(OldDamage::part).orElse(1.0), tracks);
    }

    /**
     * The floors as they are after some work with the grit in work, to be started again.
     *
     * @param work passes of the usual single disc
     * @param takesOff what the new start takes off, as a part of what the plan does
     */
    FloorGrid again(double work, double takesOff) {
        List<Track> settled = new ArrayList<>();
        for (Track track : tracks) {
            double remaining = track.remaining(work);
            double[] level = new double[track.weight().length];
            for (int i = 0; i < level.length; i++) {
                level[i] = track.level(i, remaining);
            }
            settled.add(new Track(track.floor(), level, level, track.weight()));
        }
        return new FloorGrid(model, takesOff, Collections.unmodifiableList(settled));
    }

    /**
     * Ends the grit in work and takes up another. A grit that may not dull the floor leaves a level over its limit as it
     * is, whatever the limit; such points are one.
     *
     * @param work passes of the usual single disc done with the grit in work
     * @param grit the grit that follows
     * @param mayFall whether it may dull the floor: it is coarser, or the first
     */
    FloorGrid next(double work, int grit, boolean mayFall) {
        GritPrior prior = model.prior(grit);
        double common = StrictMath.sqrt(model.shared());
        double single = StrictMath.sqrt(1 - model.shared());
        double least = NEGLIGIBLE_FLOOR * total();
        List<Track> next = new ArrayList<>();
        double[] limits = new double[OWN];
        Points points = new Points((NODES + 1) * OWN);
        for (Track track : tracks) {
            double whole = track.total();
            if (whole < least) {
                continue;
            }
            for (int i = 0; i < OWN; i++) {
                double standing = common * track.floor().quality() + single * FloorModel.node(i, OWN, OWN_STEP);
                limits[i] = prior.limit(standing, track.floor().left(takenOff));
            }
            Levels levels = levels(track, work);
            for (int node = 0; node < levels.size(); node++) {
                double start = levels.gloss(node);
                double stays = 0;
                for (int i = 0; i < OWN; i++) {
                    double weight = levels.mass(node) * OWN_WEIGHTS[i];
                    if (weight > NEGLIGIBLE_POINT * whole) {
                        if (mayFall || limits[i] > start) {
                            points.add(start, limits[i], weight);
                        } else {
                            stays += weight;
                        }
                    }
                }
                if (stays > 0) {
                    points.add(start, start, stays);
                }
            }
            points.moveTo(next, track.floor());
        }
        return new FloorGrid(model, takenOff, Collections.unmodifiableList(next));
    }

    private Levels levels(Track track, double work) {
        Levels levels = new Levels(NODES, model.ceiling().at60().gloss());
        double remaining = track.remaining(work);
        for (int i = 0; i < track.weight().length; i++) {
            levels.add(track.level(i, remaining), track.weight()[i]);
        }
        return levels;
    }

    /**
     * Weighs every point by how well it explains a reading within the grit in work. The weights before the reading are
     * brought to a sum of 1, so that readings which contradict each other, however many, leave some floor possible.
     *
     * @param work passes of the usual single disc done with that grit before it was read
     */
    FloorGrid read(LevelReading reading, double work) {
        List<Track> read = new ArrayList<>();
        double before = total();
        for (Track track : tracks) {
            double remaining = track.remaining(work);
            double[] weight = new double[track.weight().length];
            for (int i = 0; i < weight.length; i++) {
                weight[i] = track.weight()[i] / before * model.likelihood(reading, track.level(i, remaining));
            }
            read.add(new Track(track.floor(), track.start(), track.limit(), weight));
        }
        return new FloorGrid(model, takenOff, Collections.unmodifiableList(read));
    }

    /** The levels of all floors after some work with the grit in work, in passes of the usual single disc. */
    Levels after(double work, int intervals) {
        Levels all = new Levels(intervals, model.ceiling().at60().gloss());
        for (Track track : tracks) {
            double remaining = track.remaining(work);
            for (int i = 0; i < track.weight().length; i++) {
                all.add(track.level(i, remaining), track.weight()[i]);
            }
        }
        return all;
    }

    /** Probability, 0 to 1, that old damage alone keeps the floor under a gloss. */
    double oldDamageUnder(double gloss) {
        double sum = 0;
        for (Track track : tracks) {
            double left = track.floor().left(takenOff);
            if (left > 0 && model.ceiling().at60().gloss() * StrictMath.exp(-left) < gloss) {
                sum += track.total();
            }
        }
        return Math.min(1, sum / total());
    }

    private double total() {
        double sum = 0;
        for (Track track : tracks) {
            sum += track.total();
        }
        return sum;
    }

    /** Points of one floor while they are gathered. */
    private static final class Points {
        private final double[] start;
        private final double[] limit;
        private final double[] weight;
        private int count;

        Points(int most) {
            start = new double[most];
            limit = new double[most];
            weight = new double[most];
        }

        void add(double from, double to, double mass) {
            start[count] = from;
            limit[count] = to;
            weight[count++] = mass;
        }

        void moveTo(List<Track> tracks, FloorModel.Floor floor) {
            if (count > 0) {
                tracks.add(new Track(
                        floor, Arrays.copyOf(start, count), Arrays.copyOf(limit, count), Arrays.copyOf(weight, count)));
                count = 0;
            }
        }
    }
}
