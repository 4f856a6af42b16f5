package stoneprocess.core.gloss;

/**
 * Masses over gloss from 0 to a ceiling, on nodes that lie evenly in the square root of gloss and so closer where floors
 * are dull. A mass between two nodes is shared so that their mean keeps its place, which keeps the order of values.
 */
final class Levels {
    private final double ceiling;
    private final double intervalsPerRoot;
    private final double[] node;
    private final double[] perWidth;
    private final double[] mass;

    Levels(int intervals, double ceiling) {
        this.ceiling = ceiling;
        this.intervalsPerRoot = intervals / StrictMath.sqrt(ceiling);
        this.node = new double[intervals + 1];
        this.perWidth = new double[intervals];
        this.mass = new double[intervals + 1];
        for (int i = 0; i <= intervals; i++) {
            node[i] = at(i);
        }
        for (int i = 0; i < intervals; i++) {
            perWidth[i] = 1 / (node[i + 1] - node[i]);
        }
    }

    int size() {
        return mass.length;
    }

    double mass(int index) {
        return mass[index];
    }

    double gloss(int index) {
        return node[index];
    }

    private double at(double position) {
        double root = position / (mass.length - 1);
        return ceiling * root * root;
    }

    void add(double gloss, double weight) {
        double clipped = Math.max(0, Math.min(ceiling, gloss));
        int below = Math.min(perWidth.length - 1, (int) (StrictMath.sqrt(clipped) * intervalsPerRoot));
        double share = (clipped - node[below]) * perWidth[below];
        share = Math.max(0, Math.min(1, share));
        mass[below] += weight * (1 - share);
        mass[below + 1] += weight * share;
    }

    double total() {
        double sum = 0;
        for (double part : mass) {
            sum += part;
        }
        return sum;
    }

    /** The gloss under which a part of the mass from 0 to 1 lies; a node's mass is spread over its neighbourhood. */
    double quantile(double part) {
        double wanted = part * total();
        double sum = 0;
        for (int i = 0; i < mass.length; i++) {
            if (sum + mass[i] >= wanted && mass[i] > 0) {
                return from(i) + (wanted - sum) / mass[i] * (to(i) - from(i));
            }
            sum += mass[i];
        }
        return ceiling;
    }

    /** The part of the mass, 0 to 1, at a gloss or over it. */
    double partFrom(double gloss) {
        double sum = 0;
        for (int i = 0; i < mass.length; i++) {
            double over = (to(i) - gloss) / (to(i) - from(i));
            sum += mass[i] * Math.max(0, Math.min(1, over));
        }
        return Math.min(1, sum / total());
    }

    private double from(int index) {
        return at(Math.max(0, index - 0.5));
    }

    private double to(int index) {
        return at(Math.min(mass.length - 1, index + 0.5));
    }
}
