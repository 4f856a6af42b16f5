package stoneprocess.core.gloss;

/**
 * Masses over gloss from 0 to a ceiling, on nodes that lie evenly in the square root of gloss and so closer where floors
 * are dull. A mass between two nodes is shared so that their mean keeps its place, which keeps the order of values.
 */
final class Levels {
    private final double ceiling;
    private final double[] mass;

    Levels(int intervals, double ceiling) {
        this.mass = new double[intervals + 1];
        this.ceiling = ceiling;
    }

    int size() {
        return mass.length;
    }

    double mass(int node) {
        return mass[node];
    }

    double gloss(int node) {
        return at(node);
    }

    private double at(double position) {
        double root = position / (mass.length - 1);
        return ceiling * root * root;
    }

    void add(double gloss, double weight) {
        double clipped = Math.max(0, Math.min(ceiling, gloss));
        int below = Math.min(mass.length - 2, (int) (StrictMath.sqrt(clipped / ceiling) * (mass.length - 1)));
        double share = (clipped - gloss(below)) / (gloss(below + 1) - gloss(below));
        share = Math.max(0, Math.min(1, share));
        mass[below] += weight * (1 - share);
        mass[below + 1] += weight * share;
    }

    double total() {
        double sum = 0;
        for (double one : mass) {
            sum += one;
        }
        return sum;
    }

    /** The gloss under which a part of the mass from 0 to 1 lies; a node's mass is spread over its neighbourhood. */
    double quantile(double part) {
        double wanted = part * total();
        double sum = 0;
        for (int node = 0; node < mass.length; node++) {
            if (sum + mass[node] >= wanted && mass[node] > 0) {
                return from(node) + (wanted - sum) / mass[node] * (to(node) - from(node));
            }
            sum += mass[node];
        }
        return ceiling;
    }

    /** The part of the mass, 0 to 1, at a gloss or over it. */
    double partFrom(double gloss) {
        double sum = 0;
        for (int node = 0; node < mass.length; node++) {
            double over = (to(node) - gloss) / (to(node) - from(node));
            sum += mass[node] * Math.max(0, Math.min(1, over));
        }
        return Math.min(1, sum / total());
    }

    private double from(int node) {
        return at(Math.max(0, node - 0.5));
    }

    private double to(int node) {
        return at(Math.min(mass.length - 1, node + 0.5));
    }
}
