package stoneprocess.core.decision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/**
 * A topic closed with a value. The record is the explanation: it keeps what won, what was outweighed and what was
 * vetoed.
 *
 * @param <V> the topic's values
 * @param topic what was decided
 * @param subject what it was decided for
 * @param values one value for most policies, several where several stand
 * @param won the needs and wishes that ask for the outcome, and the vetoes that shaped it
 * @param outweighed wishes that another wish or a more cautious value outweighed
 * @param vetoed wishes that a need or a veto excluded
 * @param inputs what went into a computed outcome; none where rules decided
 */
public record Decision<V>(
        Topic<V> topic,
        Subject subject,
        List<V> values,
        List<Reason> won,
        List<Reason> outweighed,
        List<Reason> vetoed,
        List<Input> inputs)
        implements Outcome {
    public Decision {
        Refuse.nulls(Decision.class, topic, subject, values, won, outweighed, vetoed, inputs);
        values = List.copyOf(values);
        won = List.copyOf(won);
        outweighed = List.copyOf(outweighed);
        vetoed = List.copyOf(vetoed);
        inputs = List.copyOf(inputs);
    }

    @Override
    public List<Reason> reasons() {
        if (outweighed.isEmpty() && vetoed.isEmpty()) {
            return won;
        }
        List<Reason> all = new ArrayList<>(won.size() + outweighed.size() + vetoed.size());
        all.addAll(won);
        all.addAll(outweighed);
        all.addAll(vetoed);
        return Collections.unmodifiableList(all);
    }

    /** The values' stable keys, as JSON and texts name them. */
    public List<String> keys() {
        return topic.keys(values);
    }

    /** The only value of a decision that has one. */
    public V value() {
        if (values.size() != 1) {
            throw new InvalidInputException(
                    topic.id() + " of " + subject.key(), values.size() + " values", "one value");
        }
        return values.get(0);
    }

    /** The key of the only value of a decision that has one. */
    public String key() {
        return topic.keys(List.of(value())).get(0);
    }
}
