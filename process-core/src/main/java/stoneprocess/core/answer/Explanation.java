package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * Answers about one recommendation. Many questions to one explanation share what they look up. Not safe to share between
 * threads.
 */
public interface Explanation {
    /** Everything that the recommendation settled, in the order in which it was closed. */
    List<Matter> matters();

    /**
     * The values about which {@link #whyNot} answers, besides figures: those of the domain, or the grits of the
     * sequence, that the outcome does not have.
     *
     * @throws InvalidInputException as in {@link #why}
     */
    List<String> alternatives(Topic<?> topic, Subject subject);

    /**
     * Why a matter was closed as it was: its reasons, and the outcomes behind its facts, down to what the survey answers.
     *
     * @param topic one of {@link Topics#all()}
     * @param subject what fits the topic's scope
     * @throws InvalidInputException for another topic, for a subject of another scope, and for a matter that the
     *     recommendation did not come to, naming what it did
     */
    Why why(Topic<?> topic, Subject subject);

    /**
     * Why a matter was not closed with a value: what vetoed or outweighed it, or which rules would ask for it and what
     * keeps them silent.
     *
     * @param topic one of {@link Topics#all()}
     * @param subject what fits the topic's scope
     * @param value key of a value of the topic's domain; of a grit of the sequence for paths and test cuts; a whole
     *     number of passes or a number of litres, from 0 to 1 000 000, for these figures
     * @throws InvalidInputException as in {@link #why}, for a value that the topic cannot take, and for one that the
     *     outcome has
     */
    WhyNot whyNot(Topic<?> topic, Subject subject, String value);
}
