package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.term.Term;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.Identification;
import stoneprocess.rules.feature.StoneTraits;

/**
 * A line that gives exactly one fact in every run.
 *
 * @param feature how the fact is built
 * @param classify reads the possible classes from the situation
 * @param origin what it comes from
 * @param severalAreKnown true when several classes together are a known answer
 */
record SingleFact<E extends Enum<E> & Term, F extends Feature<E>>(
        FeatureRecord<E, F> feature, Function<Situation, Set<E>> classify, Origin origin, boolean severalAreKnown)
        implements FactLine {
    static <E extends Enum<E> & Term, F extends Feature<E>> SingleFact<E, F> of(
            Class<F> type, Function<Situation, Set<E>> classify, Origin origin) {
        return new SingleFact<>(FeatureRecord.of(type, Set.class), classify, origin, false);
    }

    @Override
    public Class<F> type() {
        return feature.type();
    }

    @Override
    public List<F> facts(Situation situation) {
        return List.of(fact(situation));
    }

    @Override
    public F again(Object fact, Situation situation) {
        return fact(situation);
    }

    private F fact(Situation situation) {
        return feature.make(classify.apply(situation));
    }

    @Override
    public List<Object> space() {
        List<Object> space = new ArrayList<>();
        for (E known : feature.classes().getEnumConstants()) {
            space.add(feature.make(EnumSet.of(known)));
        }
        space.add(feature.make(EnumSet.allOf(feature.classes())));
        return List.copyOf(space);
    }

    @Override
    public MatchedFact matched(Object fact) {
        Feature<?> matched = (Feature<?>) fact;
        return new MatchedFact(
                type().getSimpleName(), Term.keys(matched.mayBe()), isKnown(matched), origin.fields(), origin.topics());
    }

    private boolean isKnown(Feature<?> fact) {
        if (fact instanceof StoneTraits.Identified identified) {
            // That a test is missing is itself something that nobody knows yet.
            return identified.known() == Identification.TWO_TESTS;
        }
        int possible = fact.mayBe().size();
        return possible == 1 || severalAreKnown && possible < feature.classes().getEnumConstants().length;
    }
}
