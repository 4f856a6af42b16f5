package stoneprocess.rules.text;

import java.util.List;
import java.util.Locale;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;

/** Words for topics, for what they are decided for and for their values. */
final class ValueWords {
    private static final int LONGEST_NAME = 40;

    private final Phrases phrases;

    ValueWords(Phrases phrases) {
        this.phrases = phrases;
    }

    String topic(String id) {
        return phrases.get("topic." + id);
    }

    /** The topic and, where it is not decided for the floor, what for. */
    String matter(String topic, Subject subject) {
        return subject.equals(Subject.FLOOR) ? topic(topic) : topic(topic) + ", " + subject(subject);
    }

    String subject(Subject subject) {
        if (subject instanceof Subject.OfTrack track) {
            return track(track.track());
        }
        if (subject instanceof Subject.OfStep step) {
            return phrases.get("value.at")
                    .formatted(track(step.track()), step.grade().replace('-', ' '));
        }
        return subject.key();
    }

    String track(TrackKind track) {
        return phrases.of(track, "name");
    }

    /** A short word for a value: a name of its own, a short phrase, or the words of its key. */
    String value(String topic, String key) {
        return Topics.named(topic).domain().stream()
                .filter(term -> term.key().equals(key))
                .map(term -> value((Term) term))
                .findFirst()
                .orElse(key.replace('-', ' '));
    }

    String value(Term term) {
        String name = Phrases.key(term) + ".name";
        if (Phrases.has(name)) {
            return phrases.get(name);
        }
        String phrase = phrases.of(term);
        boolean sentence = phrase.length() > LONGEST_NAME || phrase.endsWith(".");
        return sentence ? term.key().replace('-', ' ') : midSentence(phrase);
    }

    private static String midSentence(String phrase) {
        boolean abbreviation = phrase.length() > 1 && Character.isUpperCase(phrase.charAt(1));
        return abbreviation ? phrase : phrase.substring(0, 1).toLowerCase(Locale.ROOT) + phrase.substring(1);
    }

    List<String> values(String topic, List<String> keys) {
        return keys.stream().map(key -> value(topic, key)).toList();
    }

    /** What a rule or a reason says of values of a topic. */
    String says(Topic<?> topic, ContributionKind kind, List<? extends Term> said) {
        List<String> words = said.stream().map(this::value).toList();
        String list = String.join(", ", words);
        return switch (kind) {
            case WISH -> phrases.get("rule.wish").formatted(list);
            case VETO ->
                said.isEmpty()
                        ? phrases.get("rule.veto-nothing")
                        : fromOneOn(topic, said)
                                ? phrases.get("rule.veto-from").formatted(words.get(0))
                                : phrases.get("rule.veto").formatted(list);
            case NEED -> need(topic, said, words);
        };
    }

    private String need(Topic<?> topic, List<? extends Term> said, List<String> words) {
        boolean ordered = topic.policy() == PolicyKind.ONE;
        if (ordered && fromOneOn(topic, said)) {
            return phrases.get("rule.need-at-least").formatted(words.get(0));
        }
        if (ordered && upToOne(topic, said)) {
            return phrases.get("rule.need-at-most").formatted(words.get(words.size() - 1));
        }
        boolean narrows = topic.policy() == PolicyKind.REMAINS || topic.policy() == PolicyKind.FEWEST_CHANGES;
        return phrases.get(narrows || ordered && words.size() > 1 ? "rule.need-only" : "rule.need")
                .formatted(String.join(", ", words));
    }

    /** True when the values are those from one of the domain on, and more than one. */
    private static boolean fromOneOn(Topic<?> topic, List<? extends Term> values) {
        List<? extends Term> domain = topic.domain();
        return values.size() > 1
                && values.size() < domain.size()
                && values.equals(domain.subList(domain.size() - values.size(), domain.size()));
    }

    /** True when the values are those up to one of the domain, and more than one. */
    private static boolean upToOne(Topic<?> topic, List<? extends Term> values) {
        return values.size() > 1
                && values.size() < topic.domain().size()
                && values.equals(topic.domain().subList(0, values.size()));
    }

    /** The texts that do not come from an enum; a test keeps the bundle complete. */
    static List<String> fixedKeys() {
        return List.of(
                "value.at",
                "rule.wish",
                "rule.veto",
                "rule.veto-from",
                "rule.veto-nothing",
                "rule.need",
                "rule.need-only",
                "rule.need-at-least",
                "rule.need-at-most");
    }
}
