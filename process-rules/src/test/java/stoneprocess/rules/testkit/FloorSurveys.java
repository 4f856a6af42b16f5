package stoneprocess.rules.testkit;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Shrinkable;
import net.jqwik.api.ShrinkingDistance;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.Smallest;
import stoneprocess.rules.space.SurveyGenerator;
import stoneprocess.rules.space.Unremarkable;

/**
 * Drawn surveys, from nearly everything known to half of it. They shrink by forgetting what does not matter, and towards
 * an unremarkable floor where something has to be known.
 */
public final class FloorSurveys {
    private static final List<Integer> KNOWN = List.of(100, 95, 80, 50);
    private static final FloorSurvey FLOOR = Unremarkable.floor().build();
    private static final int ZONE = 1000;

    private FloorSurveys() {}

    /** Surveys of all kinds that are accepted. */
    public static Arbitrary<FloorSurvey> any(Parameters parameters, GritSequence sequence) {
        return Arbitraries.oneOf(Stream.of(SurveyKind.values())
                .map(kind -> of(kind, parameters, sequence))
                .toList());
    }

    /**
     * Surveys of one kind.
     *
     * @param parameters the numbers that part the classes: those of the rulebase
     * @param sequence where grades on hand come from: that of the advisor's options
     */
    public static Arbitrary<FloorSurvey> of(SurveyKind kind, Parameters parameters, GritSequence sequence) {
        return Arbitraries.fromGenerator(random -> {
            int known = KNOWN.get(random.nextInt(KNOWN.size()));
            SurveyGenerator generator = SurveyGenerator.of(new Share(known), sequence);
            return new Smaller(kind.draw(generator, parameters, new SplittableRandom(random.nextLong())));
        });
    }

    /** Surveys with one thing in them that cannot be. */
    public static Arbitrary<InvalidSurveys.Attempt> invalid() {
        return Arbitraries.longs()
                .withoutEdgeCases()
                .map(seed -> InvalidSurveys.draw(FLOOR, new SplittableRandom(seed)));
    }

    private record Smaller(FloorSurvey value) implements Shrinkable<FloorSurvey> {
        @Override
        public Stream<Shrinkable<FloorSurvey>> shrink() {
            return Smallest.less(value).map(Smaller::new);
        }

        /** What is known counts once, and once more where it is remarkable. */
        @Override
        public ShrinkingDistance distance() {
            long distance = Forgetting.known(value).size() + value.readings().size();
            for (SurveyField<?> field : SurveyField.all()) {
                boolean known = value.answer(field).isKnown();
                if (known && !value.answer(field).equals(FLOOR.answer(field))) {
                    distance++;
                }
            }
            for (Zone zone : value.zones()) {
                distance += ZONE + zone.damages().size();
                for (DamageKind kind : zone.damages().keySet()) {
                    if (!zone.damage(kind).value().orElseThrow().look().equals(Optional.of(kind.none()))) {
                        distance++;
                    }
                }
            }
            return ShrinkingDistance.of(distance);
        }
    }
}
