package stoneprocess.rules.testkit.law;

import java.util.SplittableRandom;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.space.SurveyGenerator;

/** Drawn surveys for properties: from nearly everything known to half of it. */
final class Surveys {
    private Surveys() {}

    static Arbitrary<FloorSurvey> drawn() {
        return Combinators.combine(
                        Arbitraries.of(100, 95, 80, 50), Arbitraries.longs().withoutEdgeCases())
                .as((known, seed) -> draw(known, seed));
    }

    static FloorSurvey draw(double known, long seed) {
        return SurveyGenerator.of(new Share(known)).draw(new SplittableRandom(seed));
    }
}
