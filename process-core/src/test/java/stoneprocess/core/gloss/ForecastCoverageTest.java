package stoneprocess.core.gloss;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The 90 % intervals on floors of the stated priors. */
class ForecastCoverageTest {
    @Test
    void intervals_hold_floors_of_the_stated_priors_in_87_to_93_of_100() {
        assertThat(ForecastWorlds.coverage(ForecastWorlds.AS_STATED, 2813, "stated priors")
                        .all())
                .isBetween(87.0, 93.0);
    }
}
