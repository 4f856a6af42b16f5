package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The 90 % intervals on floors of a world that the forecast does not know. */
class ForecastOtherWorldTest {
    @Test
    void intervals_hold_floors_of_another_world_in_80_of_100() {
        ForecastWorlds.Coverage coverage =
                ForecastWorlds.coverage(ForecastWorlds.OTHER, 523, "another curve and heavier scatter");
        assertThat(coverage.all()).isGreaterThanOrEqualTo(80.0);
        assertThat(coverage.byOccasions()).allSatisfy(share -> assertThat(share).isGreaterThanOrEqualTo(80.0));
    }
}
