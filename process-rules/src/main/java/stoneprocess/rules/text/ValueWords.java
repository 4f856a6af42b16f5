package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for topics, for what they are decided for, and for their values. */
final class ValueWords {
    private static final Pattern GRADE =
            Pattern.compile("(" + String.join("|", Term.keys(List.of(Bond.values()))) + ")-(\\d+)");

    private ValueWords() {}

    static Wording topic(Topic<?> topic) {
        return phrase("topic." + topic.id());
    }

    /** What was decided, and where it was not for the floor, what for. */
    static Wording matter(Outcome outcome) {
        return matter(outcome.topic(), outcome.subject());
    }

    /** The topic and, where it is not decided for the floor, what for. */
    static Wording matter(Topic<?> topic, Subject subject) {
        return subject.equals(Subject.FLOOR)
                ? topic(topic)
                : phrase("value.matter").with("topic", topic(topic)).with("subject", subject(subject));
    }

    static Wording subject(Subject subject) {
        if (subject instanceof Subject.OfTrack track) {
            return track(track.track());
        }
        if (subject instanceof Subject.OfStep step) {
            return phrase("value.at").with("track", track(step.track())).with("grit", grade(step.grade()));
        }
        return Wording.name(subject.key());
    }

    static Wording track(TrackKind track) {
        return Wording.of(track, "name");
    }

    static Wording grade(AbrasiveGrade grade) {
        return grade(grade.bond(), grade.number());
    }

    /** The words for the key of a grit, for example {@code resin-800}; another key stands as it is. */
    static Wording grade(String key) {
        Matcher matcher = GRADE.matcher(key);
        return matcher.matches()
                ? grade(Term.parse(Bond.class, matcher.group(1), "grade"), Integer.parseInt(matcher.group(2)))
                : Wording.name(key.replace('-', ' '));
    }

    static Wording grade(Bond bond, int number) {
        return phrase("value.grade").with("bond", bond).with("number", number);
    }

    static Wording grades(Collection<String> keys) {
        return Wording.list(Joint.COMMA, keys, ValueWords::grade);
    }

    /** A short word for a value that was asked for by its key; a figure stands as it is. */
    static Wording value(Topic<?> topic, String key) {
        return topic instanceof Choice<?> choice ? name(choice.value(key)) : grade(key);
    }

    /** Short words for values of a topic. */
    static <V> Wording values(Topic<V> topic, List<V> values) {
        List<Wording> words = new ArrayList<>();
        for (V value : values) {
            if (value instanceof Term term) {
                words.add(name(term));
            } else if (value instanceof Grit grit) {
                words.add(grade(grit.bond(), grit.number()));
            } else if (value instanceof Range<?> range && range.low() instanceof Quantity low) {
                words.add(new Wording.AmountRange(low, (Quantity) range.high()));
            } else if (value instanceof Range<?> range) {
                words.add(phrase("table.range")
                        .with("low", Wording.name(range.low().toString()))
                        .with("high", Wording.name(range.high().toString())));
            } else {
                topic.keys(List.of(value)).forEach(end -> words.add(Wording.name(end)));
            }
        }
        return Wording.list(Joint.COMMA, words);
    }

    static <V> Wording values(Decision<V> decision) {
        return values(decision.topic(), decision.values());
    }

    /** A word for lists: a name of its own where the bundles have one, else the phrase itself. */
    static Wording name(Term term) {
        return phrase(nameKey(term));
    }

    static String nameKey(Term term) {
        String name = Wording.key(term) + ".name";
        return Language.english().has(name) ? name : Wording.key(term);
    }

    /** What a rule or a reason says of values of a topic. */
    static Wording says(Topic<?> topic, ContributionKind kind, List<? extends Term> values) {
        return switch (kind) {
            case WISH -> said("rule.wish", values);
            case VETO ->
                values.isEmpty()
                        ? phrase("rule.veto-nothing")
                        : fromOneOn(topic, values)
                                ? bounded("rule.veto-from", topic, values.get(0))
                                : said("rule.veto", values);
            case NEED -> need(topic, values);
        };
    }

    private static Wording need(Topic<?> topic, List<? extends Term> values) {
        boolean ordered = topic.policy().isOrdered();
        if (ordered && fromOneOn(topic, values)) {
            return bounded("rule.need-at-least", topic, values.get(0));
        }
        if (ordered && upToOne(topic, values)) {
            return bounded("rule.need-at-most", topic, values.get(values.size() - 1));
        }
        boolean narrows = topic.policy().isNarrowing();
        return said(narrows || ordered && values.size() > 1 ? "rule.need-only" : "rule.need", values);
    }

    /** A bound in the words of its topic, such as coarser for a first cut, where the bundles have them. */
    private static Wording bounded(String key, Topic<?> topic, Term bound) {
        String own = key + "." + topic.id();
        return said(Language.english().has(own) ? own : key, List.of(bound));
    }

    private static Wording said(String key, List<? extends Term> values) {
        return phrase(key).with("values", Wording.list(Joint.COMMA, values, ValueWords::name));
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
}
