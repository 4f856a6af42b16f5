package stoneprocess.rules.follow;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * A second floor, on purpose not the library's model: one depth of scratches, in millimetres, is worn down pass by pass to
 * what the grade leaves, and gloss falls with that depth. What a pass takes goes with the grain to the power of 1.5 and not
 * with the grit number; scratches are a quarter of the grain on every stone; readings scatter evenly, one in twenty by
 * three times as much. All of it invented.
 */
final class RoughFloor implements WorkedFloor {
    private static final double LEFT = 0.25;
    private static final double SEEN = 1.3;
    private static final double HALF_GLOSS = 0.003;

    private final Random random;
    private final double ceiling;
    private final List<AbrasiveGrade> ladder;
    private final double pace;
    private final boolean damageShows;
    private final Map<Integer, Double> ownPace = new HashMap<>();
    private double depth;
    private int last = -1;
    private boolean closed;
    private boolean film;
    private double removed;

    /**
     * @param random what the floor is drawn from
     * @param ceiling gloss of the stone without any scratch
     * @param ladder all resin grades, coarse to fine
     * @param start where the plan starts; the damage is as deep as the next coarser grade's scratches, more or less
     * @param usual passes that the plan gives the first grade, for which the pace is set
     */
    RoughFloor(Random random, double ceiling, List<AbrasiveGrade> ladder, AbrasiveGrade start, double usual) {
        this.random = random;
        this.ceiling = ceiling;
        this.ladder = ladder;
        double before = scratch(Math.max(0, ladder.indexOf(start) - 1));
        this.pace = 1.5 * before / usual / StrictMath.pow(grain(ladder.indexOf(start)), 1.5);
        this.depth = before * StrictMath.exp(0.6 * random.nextGaussian());
        this.damageShows = random.nextDouble() < 0.8;
    }

    private double grain(int rank) {
        AbrasiveGrade grade = ladder.get(rank);
        return (grade.grain().low().millimetres() + grade.grain().high().millimetres()) / 2;
    }

    private double scratch(int rank) {
        return LEFT * grain(rank);
    }

    private double perPass(int rank) {
        return pace
                * StrictMath.pow(grain(rank), 1.5)
                * ownPace.computeIfAbsent(rank, any -> StrictMath.exp(0.35 * random.nextGaussian()));
    }

    @Override
    public boolean clears(AbrasiveGrade grade) {
        int rank = ladder.indexOf(grade);
        return depth - 10 * perPass(rank) <= scratch(rank) || !damageShows;
    }

    @Override
    public void work(AbrasiveGrade grade, int passes, double usual) {
        int rank = ladder.indexOf(grade);
        if (rank != last) {
            closed = random.nextDouble() < 0.1;
            last = rank;
        }
        double taken = passes * perPass(rank) * (closed ? 0.3 : 1);
        depth = Math.max(scratch(rank), depth - taken);
        removed += taken;
        film = random.nextDouble() < 0.1;
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

    @Override
    public ScratchLook look() {
        if (depth <= SEEN * scratch(last)) {
            return ScratchLook.NONE;
        }
        return last > 0 && depth > SEEN * scratch(last - 1) ? ScratchLook.OLDER : ScratchLook.OF_THE_LAST;
    }

    private double gloss() {
        return ceiling / (1 + StrictMath.pow(depth / HALF_GLOSS, 1.2));
    }

    @Override
    public Gloss read() {
        double width = (2 + 0.06 * gloss()) * (random.nextDouble() < 0.05 ? 3 : 1);
        double read = gloss() + width * (2 * random.nextDouble() - 1);
        return new Gloss(Math.max(0, Math.min(ceiling, read)));
    }

    @Override
    public boolean reaches(Gloss target) {
        return gloss() >= target.gloss() && look() == ScratchLook.NONE;
    }

    @Override
    public double removed() {
        return removed;
    }
}
