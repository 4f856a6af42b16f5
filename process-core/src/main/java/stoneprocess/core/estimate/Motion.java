package stoneprocess.core.estimate;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.term.Term;

/** How the pads of a machine move over the stone. Walking speed is left out: it is a tenth of the sliding or less. */
public sealed interface Motion {
    /** Sliding speed averaged over the face of the pads and over time. */
    Speed meanSlidingSpeed();

    /**
     * One disc that turns about its middle, with pads on a full or ring-shaped face.
     *
     * @param rotation turns of the disc against the floor
     * @param inner inner diameter of the ring that the pads cover; zero for a full face
     * @param outer outer diameter, more than the inner
     */
    record Disc(Rotation rotation, Length inner, Length outer) implements Motion {
        public Disc {
            Refuse.nulls(Disc.class, rotation, inner, outer);
            requireRing(inner, outer);
        }

        /** Mean over the ring's area: 2/3 w (R^3 - r^3) / (R^2 - r^2), w = 2 pi n. Plain geometry. */
        @Override
        public Speed meanSlidingSpeed() {
            double r = inner.millimetres() / 2000;
            double big = outer.millimetres() / 2000;
            double lever = 2.0 / 3 * (big * big * big - r * r * r) / (big * big - r * r);
            return new Speed(2 * StrictMath.PI * rotation.kept() * lever);
        }
    }

    /** Which way the heads turn, seen from the carrier that holds them. */
    enum Turning implements Term {
        SAME_WAY,
        OPPOSITE_WAY
    }

    /**
     * Heads that turn about their own middles while a carrier turns them about the machine's middle.
     *
     * @param head turns of a head against the carrier
     * @param carrier turns of the carrier against the floor
     * @param turning whether heads and carrier turn the same way
     * @param inner inner diameter of the ring that the pads cover on a head; zero for a full face
     * @param outer outer diameter, more than the inner
     * @param centres diameter of the circle on which the heads' middles run
     */
    record Planetary(Rotation head, Rotation carrier, Turning turning, Length inner, Length outer, Length centres)
            implements Motion {
        private static final int RINGS = 24;
        private static final int ANGLES = 64;

        public Planetary {
            Refuse.nulls(Planetary.class, head, carrier, turning, inner, outer, centres);
            requireRing(inner, outer);
        }

        /**
         * Mean over the ring and over the angle a between the two levers of sqrt((W A)^2 + (w q)^2 + 2 W A w q cos a):
         * W and A the carrier's speed and lever, w the head's speed against the floor (head plus or minus carrier), q
         * the lever on the head. Plain geometry, by the midpoint rule to better than 0.1 %.
         */
        @Override
        public Speed meanSlidingSpeed() {
            double turns =
                    turning == Turning.SAME_WAY ? head.kept() + carrier.kept() : Math.abs(head.kept() - carrier.kept());
            double w = 2 * StrictMath.PI * turns;
            double round = 2 * StrictMath.PI * carrier.kept() * centres.millimetres() / 2000;
            double r = inner.millimetres() / 2000;
            double big = outer.millimetres() / 2000;
            double sum = 0;
            for (int ring = 0; ring < RINGS; ring++) {
                double part = (ring + 0.5) / RINGS;
                double own = w * StrictMath.sqrt(r * r + part * (big * big - r * r));
                for (int angle = 0; angle < ANGLES; angle++) {
                    double cos = StrictMath.cos(StrictMath.PI * (angle + 0.5) / ANGLES);
                    sum += StrictMath.sqrt(Math.max(0, round * round + own * own + 2 * round * own * cos));
                }
            }
            return new Speed(sum / (RINGS * ANGLES));
        }
    }

    private static void requireRing(Length inner, Length outer) {
        if (inner.compareTo(outer) >= 0) {
            throw new InvalidInputException("motion.outer", outer.print(), "more than the inner diameter");
        }
    }
}
