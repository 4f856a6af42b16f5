package stoneprocess.core.answer;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;

/**
 * How a floor would get a value that was asked for: the smallest changes of its survey. Smallest are the fewest changes,
 * then the fewest class steps; all that tie are listed in the order of the survey form. Of zones that are alike in all but
 * their names the first stands for all, and the first two where two zones have to change.
 *
 * @param topic the topic
 * @param subject what it is decided for
 * @param wanted key of the value, as the question named it: a value of the domain or a grit, so that no one type fits
 * @param kind what the search came to
 * @param ways the smallest ways, all with as many changes and class steps; one without changes when it is so already,
 *     none when none was found
 * @param rulebase the rules that were asked
 */
public record HowTo(
        Topic<?> topic, Subject subject, String wanted, WayKind kind, List<Way> ways, RulebaseStamp rulebase) {
    /** Version of the JSON form. */
    public static final String FORMAT = "how-to/1";

    /**
     * Checks that kind and ways fit.
     *
     * @throws InvalidInputException when they do not, or when ways differ in their number of changes or steps
     */
    public HowTo {
        Refuse.nulls(HowTo.class, topic, subject, wanted, kind, ways, rulebase);
        ways = List.copyOf(ways);
        int least = kind == WayKind.ALREADY ? 0 : 1;
        int most = kind == WayKind.ALREADY ? 0 : 2;
        boolean fits = kind.isNone() == ways.isEmpty()
                && ways.stream()
                        .allMatch(way ->
                                way.changes().size() >= least && way.changes().size() <= most);
        boolean tie = ways.stream()
                        .map(way -> List.of(way.changes().size(), way.classSteps()))
                        .distinct()
                        .count()
                <= 1;
        if (!fits || !tie) {
            throw new InvalidInputException(
                    "how-to.ways",
                    kind.key() + " with " + ways.size() + " ways",
                    "a way without changes when it is so already, ways of one or two changes that tie when found, else"
                            + " none");
        }
    }
}
