package stoneprocess.core.exposure;

/**
 * Multipliers of the revised lifting equation, each dimensionless from 0 to 1 (NIOSH 94-110).
 *
 * @param horizontal 25 cm over the reach
 * @param vertical 1 less 0.003 for every centimetre of hand height above or below 75 cm
 * @param distance 0.82 plus 4.5 cm over the travel
 * @param asymmetry 1 less 0.0032 for every degree of turn
 * @param frequency from the manual's table, by lifts a minute, duration and height
 * @param coupling by grip and height
 */
public record LiftMultipliers(
        double horizontal, double vertical, double distance, double asymmetry, double frequency, double coupling) {
    /** Their product, from 0 to 1. */
    public double product() {
        return horizontal * vertical * distance * asymmetry * frequency * coupling;
    }
}
