package stoneprocess.rules.internal.classify;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;

/** One line of the table of facts: a type of fact, and what the facts of that type come from. */
sealed interface FactLine permits SingleFact, FactPerConstant, StepFacts {
    /** The record that a rule reads. */
    Class<?> type();

    /** What the facts come from. */
    Origin origin();

    /** The facts of a situation; none of a line whose facts the run makes as it goes. */
    List<?> facts(Situation situation);

    /** The same fact read from another situation. */
    Object again(Object fact, Situation situation);

    /** Every fact that differs in what a rule can see of it. */
    List<Object> space();

    /** What a decision record keeps of a fact of this line. */
    MatchedFact matched(Object fact);

    /**
     * What a fact comes from.
     *
     * @param when whether a situation has the fact at all
     * @param after the stage whose decisions it needs; empty when the survey or the job log suffices
     * @param fields names of the survey fields, damage kinds or parts of a job log that an answer to it changes
     * @param behind names of further fields and damage kinds that can make a difference to it
     * @param topics topics that it is concluded from
     */
    record Origin(
            Predicate<Situation> when,
            Optional<Stage> after,
            List<String> fields,
            List<String> behind,
            List<Topic<?>> topics) {
        static Origin fields(String... fields) {
            return new Origin(situation -> true, Optional.empty(), List.of(fields), List.of(), List.of());
        }

        /** Read from a job log; in a program that reads none there is no such fact. */
        static Origin log(String... parts) {
            return fields(parts).when(situation -> situation.log().isPresent());
        }

        /** Concluded from decisions, once the stage of the last of them is over. */
        static Origin decisions(Topic<?>... topics) {
            Stage stage =
                    Stream.of(topics).map(Topic::stage).max(Stage::compareTo).orElseThrow();
            return new Origin(situation -> true, Optional.of(stage), List.of(), List.of(), List.of(topics));
        }

        Origin when(Predicate<Situation> condition) {
            return new Origin(condition, after, fields, behind, topics);
        }

        Origin withFields(String... names) {
            return new Origin(when, after, List.of(names), behind, topics);
        }

        Origin behind(String... names) {
            return new Origin(when, after, fields, List.of(names), topics);
        }

        /** All fields and damage kinds that can make a difference, those behind the topics left out. */
        List<String> reads() {
            return Stream.concat(fields.stream(), behind.stream()).toList();
        }
    }
}
