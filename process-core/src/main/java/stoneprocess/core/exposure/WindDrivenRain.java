package stoneprocess.core.exposure;

import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.source.Sources;

/**
 * Head of an absorption tube (RILEM II.4) as wind-driven rain: the pressure of the water column, rho_w g h, equals the
 * stagnation pressure of the wind, rho_a v^2 / 2, so v = sqrt(2 rho_w g h / rho_a).
 */
public final class WindDrivenRain {
    /** Standard gravity in m/s2 (3rd General Conference on Weights and Measures, 1901). */
    private static final double GRAVITY = 9.80665;

    /** Density of water at 20 degrees Celsius in kg/m3. */
    private static final double WATER = 998.2;

    /** Density of dry air at 20 degrees Celsius and 101.325 kPa in kg/m3. */
    private static final double AIR = 1.204;

    private WindDrivenRain() {}

    /**
     * The wind that a head stands for.
     *
     * @param head from 0 to 1 m of water
     * @throws InvalidInputException above 1 m
     */
    public static TubeHead ofHead(Length head) {
        if (head.millimetres() > 1000) {
            throw new InvalidInputException("tube.head", head.print(), "0 to 1000 mm");
        }
        double pressure = WATER * GRAVITY * head.millimetres() / 1000;
        return tubeHead(head, Speed.of(StrictMath.sqrt(2 * pressure / AIR), Unit.METRE_PER_SECOND));
    }

    /**
     * The head that a wind stands for: the inverse of {@link #ofHead}.
     *
     * @param wind from 0 to 100 m/s
     * @throws InvalidInputException above 100 m/s
     */
    public static TubeHead ofWind(Speed wind) {
        double metresPerSecond = wind.metresPerMinute() / 60;
        if (metresPerSecond > 100) {
            throw new InvalidInputException("tube.wind", wind.print(), "0 to 6000 m/min, which is 100 m/s");
        }
        double pressure = AIR * metresPerSecond * metresPerSecond / 2;
        return tubeHead(new Length(pressure / (WATER * GRAVITY) * 1000), wind);
    }

    private static TubeHead tubeHead(Length head, Speed wind) {
        return new TubeHead(head, wind, Sources.standard().get("RILEM-II.4"), Role.LABORATORY);
    }
}
