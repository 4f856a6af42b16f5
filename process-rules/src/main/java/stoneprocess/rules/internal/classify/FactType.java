package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.Identification;
import stoneprocess.rules.feature.StoneTraits;

/**
 * One line of the table of facts.
 *
 * @param type the fact's type in the rules
 * @param classes its classes
 * @param make makes the fact from its possible classes
 * @param classify reads the possible classes from the situation
 * @param after the stage whose decisions it needs; empty when the survey suffices
 * @param fields names of the survey fields or damage kinds that it is read from
 * @param topics topics that it is concluded from
 * @param topicIds their ids
 * @param severalAreKnown true when several classes together are a known answer
 */
record FactType<E extends Enum<E> & Term>(
        Class<?> type,
        Class<E> classes,
        Function<Set<E>, Feature<E>> make,
        Function<Situation, Set<E>> classify,
        Optional<Stage> after,
        List<String> fields,
        List<Topic<?>> topics,
        List<String> topicIds,
        boolean severalAreKnown) {
    FactType(
            Class<?> type,
            Class<E> classes,
            Function<Set<E>, Feature<E>> make,
            Function<Situation, Set<E>> classify,
            Optional<Stage> after,
            List<String> fields,
            List<Topic<?>> topics,
            boolean severalAreKnown) {
        this(
                type,
                classes,
                make,
                classify,
                after,
                fields,
                topics,
                topics.stream().map(Topic::id).toList(),
                severalAreKnown);
    }

    Feature<E> fact(Situation situation) {
        return make.apply(classify.apply(situation));
    }

    /** One fact for each class, and the one that nobody knows. */
    List<Object> space() {
        List<Object> space = new ArrayList<>();
        for (E constant : classes.getEnumConstants()) {
            space.add(make.apply(EnumSet.of(constant)));
        }
        space.add(make.apply(EnumSet.allOf(classes)));
        return space;
    }

    boolean known(Feature<?> fact) {
        if (fact instanceof StoneTraits.Identified identified) {
            // That a test is missing is itself something that nobody knows yet.
            return identified.known() == Identification.TWO_TESTS;
        }
        int possible = fact.mayBe().size();
        return possible == 1 || severalAreKnown && possible < classes.getEnumConstants().length;
    }
}
