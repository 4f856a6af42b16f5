package stoneprocess.rules.audit;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.rules.internal.meaning.RuleMeaning;

/**
 * One way in which a rule fires: which classes it accepts of each fact that it reads, and what it then says. A rule that
 * says something else of other facts has several ways.
 *
 * @param rule the rule
 * @param accepts by the index of the fact, the classes of which one must be there
 * @param says what it says; the subject of a step stands for any step
 * @param certain false when at least one of its facts is not known; true when all are, or when that makes no difference
 */
record FiringWay(RuleMeaning rule, SortedMap<Integer, BitSet> accepts, Contribution says, boolean certain) {
    FiringWay {
        accepts = Collections.unmodifiableSortedMap(new TreeMap<>(accepts));
    }

    String id() {
        return rule.id();
    }

    boolean isWish() {
        return says.kind() == ContributionKind.WISH;
    }

    /** True when it can fire on a combination of the given classes. */
    boolean meets(Map<Integer, BitSet> classes) {
        return accepts.entrySet().stream()
                .allMatch(entry -> !classes.containsKey(entry.getKey())
                        || entry.getValue().intersects(classes.get(entry.getKey())));
    }

    /** True when it fires on a combination of one class of each fact. */
    boolean firesOn(int[] classes) {
        return accepts.entrySet().stream().allMatch(entry -> entry.getValue().get(classes[entry.getKey()]));
    }

    /** True when this one fires wherever the other does. */
    boolean covers(FiringWay other) {
        return accepts.entrySet().stream().allMatch(entry -> {
            BitSet theirs = other.accepts.get(entry.getKey());
            if (theirs == null) {
                return false;
            }
            BitSet more = (BitSet) theirs.clone();
            more.andNot(entry.getValue());
            return more.isEmpty();
        });
    }

    /** True when the other says the same about the same subject. */
    boolean saysAs(FiringWay other) {
        return says.kind() == other.says.kind()
                && says.subject().equals(other.says.subject())
                && List.copyOf(says.values()).equals(List.copyOf(other.says.values()))
                && certain == other.certain;
    }
}
