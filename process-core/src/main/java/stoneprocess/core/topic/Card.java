package stoneprocess.core.topic;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.EvidenceGrade;

/**
 * What a rule says about itself, readable without running it.
 *
 * @param id permanent id, three letters, a hyphen, three digits
 * @param title the rule's name in plain words
 * @param because why the trade does it so
 * @param source where that comes from
 * @param since the version that brought the rule
 * @param locked true for a safety rule, which house rules cannot switch off
 * @param offers names of the counter-offers that release this rule's demand when it cannot be met, as its author wrote
 *     them; an audit finds those that there are not
 * @param protects what the rule protects; never empty for the verdict, else empty where the rule holds up no work
 * @param differs what others do, where practice differs; empty where it hardly does
 * @param chapter the stage in which the rule works
 * @param topic what the rule speaks to
 */
public record Card(
        String id,
        String title,
        String because,
        Citation source,
        String since,
        boolean locked,
        List<String> offers,
        Optional<Protection> protects,
        Optional<String> differs,
        String chapter,
        Topic<?> topic) {
    public Card {
        Refuse.nulls(Card.class, id, title, because, source, since, offers, protects, differs, chapter, topic);
        if (!id.matches("[A-Z]{3}-\\d{3}")) {
            throw new InvalidInputException("rule.id", id, "three capital letters, a hyphen and three digits");
        }
        require(id, "title", title);
        require(id, "because", because);
        require(id, "since", since);
        differs.ifPresent(text -> require(id, "differs", text));
        require(id, "chapter", chapter);
        if (protects.isEmpty() && topic == Topics.VERDICT) {
            throw new InvalidInputException(
                    "rule " + id + ".protects", "none", "what is protected; every rule of the verdict says so");
        }
        offers = List.copyOf(offers);
    }

    /** How firmly the rule's reason is known: the grade of its source. */
    public EvidenceGrade grade() {
        return source.grade();
    }

    private static void require(String id, String part, String text) {
        if (text.isBlank()) {
            throw new InvalidInputException("rule " + id + "." + part, text, "a text; every rule carries a full card");
        }
    }
}
