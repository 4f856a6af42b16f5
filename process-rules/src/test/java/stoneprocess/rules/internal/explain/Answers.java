package stoneprocess.rules.internal.explain;

import java.util.List;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/** Answers about one recommendation, true or spoilt. */
interface Answers {
    List<Matter> matters();

    List<String> alternatives(Topic<?> topic, Subject subject);

    Why why(Topic<?> topic, Subject subject);

    WhyNot whyNot(Topic<?> topic, Subject subject, String value);

    static Answers of(Explanation explanation) {
        return new Answers() {
            @Override
            public List<Matter> matters() {
                return explanation.matters();
            }

            @Override
            public List<String> alternatives(Topic<?> topic, Subject subject) {
                return explanation.alternatives(topic, subject);
            }

            @Override
            public Why why(Topic<?> topic, Subject subject) {
                return explanation.why(topic, subject);
            }

            @Override
            public WhyNot whyNot(Topic<?> topic, Subject subject, String value) {
                return explanation.whyNot(topic, subject, value);
            }
        };
    }
}
