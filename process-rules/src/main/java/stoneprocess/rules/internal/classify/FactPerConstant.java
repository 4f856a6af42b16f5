package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.term.Term;
import stoneprocess.rules.feature.OneOfMany;

/**
 * A line that gives one fact for each constant of an enum, such as each class of machine.
 *
 * @param feature how the facts are built
 * @param constants the enum of what they are about
 * @param classify reads the possible classes of one of them from the situation
 * @param origin what they come from
 */
record FactPerConstant<K extends Enum<K> & Term, E extends Enum<E> & Term, F extends OneOfMany<E>>(
        FeatureRecord<E, F> feature, Class<K> constants, BiFunction<Situation, K, Set<E>> classify, Origin origin)
        implements FactLine {
    static <K extends Enum<K> & Term, E extends Enum<E> & Term, F extends OneOfMany<E>> FactPerConstant<K, E, F> of(
            Class<F> type, Class<K> constants, BiFunction<Situation, K, Set<E>> classify, Origin origin) {
        return new FactPerConstant<>(FeatureRecord.of(type, constants, Set.class), constants, classify, origin);
    }

    /** The name of a fact of which there is one for each constant. */
    static String name(Class<? extends OneOfMany<?>> type, Term which) {
        return type.getSimpleName() + ":" + which.key();
    }

    @Override
    public Class<F> type() {
        return feature.type();
    }

    @Override
    public List<F> facts(Situation situation) {
        List<F> facts = new ArrayList<>();
        for (K constant : constants.getEnumConstants()) {
            facts.add(fact(constant, situation));
        }
        return facts;
    }

    @Override
    public F again(Object fact, Situation situation) {
        return fact(constants.cast(type().cast(fact).which()), situation);
    }

    private F fact(K constant, Situation situation) {
        return feature.make(constant, classify.apply(situation, constant));
    }

    @Override
    public List<Object> space() {
        List<Object> space = new ArrayList<>();
        for (K constant : constants.getEnumConstants()) {
            for (E known : feature.classes().getEnumConstants()) {
                space.add(feature.make(constant, EnumSet.of(known)));
            }
            space.add(feature.make(constant, EnumSet.allOf(feature.classes())));
        }
        return List.copyOf(space);
    }

    @Override
    public MatchedFact matched(Object fact) {
        F matched = type().cast(fact);
        return new MatchedFact(
                name(type(), matched.which()),
                Term.keys(matched.mayBe()),
                matched.mayBe().size() == 1,
                origin.fields(),
                origin.topics());
    }
}
