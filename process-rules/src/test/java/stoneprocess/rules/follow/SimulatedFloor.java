package stoneprocess.rules.follow;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import stoneprocess.core.gloss.GlossCeiling;
import stoneprocess.core.gloss.GritPrior;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.site.TrackIntensity;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.MachineClass;

/**
 * A floor that answers to what is done to it. Gloss follows the stated model of progress: each grade has a limit of its
 * own, drawn from its prior, and is approached at a pace of the floor's own; old damage that was not cut out takes away a
 * part of the gloss. A grade clears the scratches of the one before in a number of passes of its own; older ones take it
 * many times as long. Pads close now and then, and films lie on the face. Invented, but for the model.
 */
final class SimulatedFloor implements WorkedFloor {
    private static final Parameters STANDARD = Parameters.standard();
    private static final double PAD_CLOSES = 0.08;
    private static final double FILM_LIES = 0.1;
    private static final double DAMAGE_SHOWS = 0.7;
    private static final double CLOSED_CUTS = 0.2;

    private final Random random;
    private final Hardness hardness;
    private final GlossCeiling ceiling;
    private final List<AbrasiveGrade> ladder;
    private final TrackIntensity intensity;
    private final double quality;
    private final double tau;
    private final double left;
    private final double stock;
    private final int needed;
    private final boolean damageShows;
    private final Map<Integer, Double> limits = new HashMap<>();
    private final Map<Integer, Double> wanted = new HashMap<>();
    private final TreeSet<Integer> scratches = new TreeSet<>();
    private boolean damaged = true;
    private int last = -1;
    private double worked;
    private double level;
    private boolean closed;
    private boolean film;
    private double removed;

    /**
     * @param random what the floor is drawn from
     * @param hardness medium or hard
     * @param ceiling of the stone
     * @param ladder all resin grades, coarse to fine
     * @param intensity how hard the plan's machines press
     * @param start where the plan starts in the ladder; now and then the damage wants one or two grades coarser
     */
    SimulatedFloor(
            Random random,
            Hardness hardness,
            GlossCeiling ceiling,
            List<AbrasiveGrade> ladder,
            TrackIntensity intensity,
            AbrasiveGrade start) {
        this.random = random;
        this.hardness = hardness;
        this.ceiling = ceiling;
        this.ladder = ladder;
        this.intensity = intensity;
        this.quality = random.nextGaussian();
        Range<Count> passes = STANDARD.range("gloss-passes." + hardness.key(), Count.class);
        double low = StrictMath.log(passes.low().number());
        double high = StrictMath.log(passes.high().number());
        this.tau = StrictMath.exp((low + high) / 2 + random.nextGaussian() * (high - low) / 2.563);
        double least = -StrictMath.log(percent("gloss-start.left.high"));
        this.left = least + random.nextDouble() * (-StrictMath.log(percent("gloss-start.left.low")) - least);
        this.stock = 0.6 + 0.4 * random.nextDouble();
        double how = random.nextDouble();
        this.needed = Math.max(0, ladder.indexOf(start) - (how < 0.75 ? 0 : how < 0.93 ? 1 : 2));
        this.damageShows = random.nextDouble() < DAMAGE_SHOWS;
        this.level = 0.1 * ceiling.at60().gloss() * random.nextDouble();
    }

    private static double percent(String name) {
        return STANDARD.get(name, Share.class).percent() / 100;
    }

    /** Whether a grade clears the damage on a test area; what is left does not always show there. */
    @Override
    public boolean clears(AbrasiveGrade grade) {
        return ladder.indexOf(grade) <= needed || !damageShows;
    }

    /** Works some passes of a grade that usually takes {@code usual} of them. */
    @Override
    public void work(AbrasiveGrade grade, int passes, double usual) {
        int rank = ladder.indexOf(grade);
        if (rank != last) {
            if (last >= 0 && last < rank) {
                scratches.add(last);
            }
            scratches.removeIf(older -> older >= rank);
            worked = 0;
            last = rank;
            closed = random.nextDouble() < PAD_CLOSES;
        }
        double cutting = closed ? CLOSED_CUTS * passes : passes;
        worked += cutting;
        double clears = wanted.computeIfAbsent(rank, any -> usual * StrictMath.exp(0.25 * random.nextGaussian() - 0.2));
        scratches.removeIf(older -> worked >= clears * (rank - older == 1 ? 1 : rank - older == 2 ? 2.5 : 6));
        damaged &= !(rank <= needed && worked >= clears || rank == needed + 1 && worked >= 3 * clears);
        double beside = intensity.ofResin(grade.number()).percent() / 100;
        removed += stock
                * beside
                * new Removal(CuttingClass.of(hardness), STANDARD)
                        .takes(passes, grade, MachineClass.SINGLE_DISC, new Mass(22.5))
                        .high()
                        .millimetres();
        double limit = scratches.isEmpty() ? limit(rank) : Math.min(limit(rank), limit(scratches.first()));
        if (damaged) {
            limit = Math.min(limit, ceiling.at60().gloss() * StrictMath.exp(-left));
        }
        level = limit - (limit - level) * StrictMath.exp(-cutting * beside / tau);
        film = random.nextDouble() < FILM_LIES;
    }

    private double limit(int rank) {
        return limits.computeIfAbsent(rank, any -> {
            double shared = percent("gloss-final.shared");
            double standing = StrictMath.sqrt(shared) * quality + StrictMath.sqrt(1 - shared) * random.nextGaussian();
            GritPrior prior = GritPrior.of(hardness, ladder.get(rank).number(), ceiling, STANDARD);
            return ceiling.at60().gloss()
                    * StrictMath.exp(-StrictMath.exp(prior.logMedian() - prior.logDeviation() * standing));
        });
    }

    @Override
    public void dressPad() {
        closed = false;
    }

    @Override
    public void clean() {
        film = false;
    }

    @Override
    public boolean padClosed() {
        return closed;
    }

    @Override
    public boolean filmLies() {
        return film;
    }

    /** What low-angle light shows on the clean, dry face. */
    @Override
    public ScratchLook look() {
        if (damaged && damageShows || !scratches.isEmpty() && scratches.first() < last - 1) {
            return ScratchLook.OLDER;
        }
        return scratches.isEmpty() ? ScratchLook.NONE : ScratchLook.OF_THE_LAST;
    }

    /** A reading at 60 degrees on the clean, dry face, with the scatter that the model states. */
    @Override
    public Gloss read() {
        double single = Math.max(
                STANDARD.get("gloss-reading.least-scatter", Gloss.class).gloss(),
                percent("gloss-reading.scatter") * level);
        double most = ceiling.at60().gloss();
        return new Gloss(Math.max(0, Math.min(most, level + single * random.nextGaussian())));
    }

    /** True when the gloss is there and nothing that shows is left. */
    @Override
    public boolean reaches(Gloss target) {
        return level >= target.gloss() && look() == ScratchLook.NONE;
    }

    /** Stone taken off so far, in millimetres. */
    @Override
    public double removed() {
        return removed;
    }
}
