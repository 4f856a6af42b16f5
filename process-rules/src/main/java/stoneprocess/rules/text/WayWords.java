package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** How a floor would get a value, and what is worth finding out, in words. */
final class WayWords {
    private WayWords() {}

    /** The ways, after those of the offers that give the value; leaving the floor as it is gives none. */
    static Document full(HowTo howTo, List<CounterOffer<?>> offers, Parameters parameters) {
        Draft draft = Draft.titled(
                phrase("how-to.title").with("matter", matter(howTo)).with("value", wanted(howTo)), parameters);
        List<CounterOffer<?>> offered = offers.stream()
                .filter(offer ->
                        howTo.kind() != WayKind.ALREADY && offer.topic().equals(howTo.topic()))
                .filter(offer -> offer.kind() != OfferKind.LEAVE_IT)
                .toList();
        if (!offered.isEmpty()) {
            draft.section("how-to.offers");
            offered.forEach(offer -> draft.numbered(OfferWords.offer(offer)));
            draft.section("how-to.survey");
        }
        boolean noPlan = howTo.kind() == WayKind.ALREADY && howTo.topic() == Topics.VERDICT && !offers.isEmpty();
        if (noPlan) {
            draft.paragraph("how-to.no-plan").section("how-to.offers");
            offers.forEach(offer -> draft.numbered(OfferWords.offer(offer)));
        } else {
            draft.paragraph(Wording.of(howTo.kind()));
        }
        if (howTo.kind().isFound()) {
            ways(draft, "how-to.people", howTo.ways().stream().filter(Way::byPeople));
            ways(draft, "how-to.nature", howTo.ways().stream().filter(way -> !way.byPeople()));
            draft.section("closing.heading").paragraph("how-to.mind");
        }
        return draft.inOneLine(brief(howTo)).document();
    }

    private static void ways(Draft draft, String heading, Stream<Way> ways) {
        List<Way> listed = ways.toList();
        if (!listed.isEmpty()) {
            draft.section(heading);
        }
        for (Way way : listed) {
            List<Change> changes = way.changes();
            draft.numbered(
                    change(changes.get(0)),
                    changes.subList(1, changes.size()).stream()
                            .map(change -> label("how-to.and", change(change)))
                            .toList());
        }
    }

    private static Wording change(Change change) {
        return sentences(phrase("how-to.way").with("changes", FieldWords.change(change)), FieldWords.who(change));
    }

    private static Wording matter(HowTo howTo) {
        return ValueWords.matter(howTo.topic(), howTo.subject());
    }

    private static Wording wanted(HowTo howTo) {
        return ValueWords.value(howTo.topic(), howTo.wanted());
    }

    private static Wording brief(HowTo howTo) {
        if (!howTo.kind().isFound()) {
            Wording kind = Wording.of(howTo.kind());
            return AnswerWords.shortest(of(howTo, kind), byValue(howTo, kind), kind);
        }
        List<Change> changes = howTo.ways().get(0).changes();
        Wording all = phrase("how-to.way").with("changes", Wording.list(Joint.SEMICOLON, changes, FieldWords::change));
        int others = howTo.ways().size() - 1;
        Wording found = others == 0 ? all : sentences(all, phrase("how-to.more").with("count", others));
        Wording way = howTo.kind() == WayKind.FOUND ? found : sentences(found, phrase("how-to.not-all"));
        Wording questions = phrase("how-to.change")
                .with(
                        "questions",
                        Wording.list(Joint.SENTENCES, changes, change -> FieldWords.question(change.name())));
        return AnswerWords.shortest(
                of(howTo, way),
                byValue(howTo, way),
                byValue(howTo, questions),
                questions,
                phrase("how-to.count")
                        .with("changes", changes.size())
                        .with("ways", howTo.ways().size()));
    }

    private static Wording of(HowTo howTo, Wording way) {
        return phrase("how-to.brief")
                .with("matter", matter(howTo))
                .with("value", wanted(howTo))
                .with("way", way);
    }

    private static Wording byValue(HowTo howTo, Wording way) {
        return phrase("how-to.brief-value").with("value", wanted(howTo)).with("way", way);
    }

    /**
     * What is worth finding out, in the order in which it bears on the work.
     *
     * @param asked the fields that the plan asks for
     */
    static Document full(WhatElse whatElse, Collection<String> asked, Parameters parameters) {
        Draft draft = Draft.titled(phrase("what-else.title"), parameters).inOneLine(brief(whatElse));
        if (!whatElse.untried().isEmpty()) {
            draft.paragraph(
                    phrase("what-else.untried").with("count", whatElse.untried().size()));
        }
        if (whatElse.open().isEmpty()) {
            return draft.paragraph(nothing(whatElse)).document();
        }
        draft.paragraph(phrase("what-else.count").with("count", whatElse.open().size()));
        List<WhatElse.Open> open = whatElse.open().stream()
                .filter(found -> asked.contains(found.field()))
                .toList();
        if (open.stream().anyMatch(found -> found.howFound() == HowFound.LABORATORY)) {
            draft.paragraph("what-else.caution");
        }
        List<WhatElse.Open> stopping = open.stream()
                .filter(found -> found.topics().contains(Topics.VERDICT))
                .sorted(Comparator.comparing(found -> found.howFound() != HowFound.LABORATORY))
                .toList();
        if (!stopping.isEmpty()) {
            draft.section("what-else.heading");
        }
        stopping.forEach(found -> draft.numbered(asked(found)));
        Map<Wording, List<Item>> bearing = new LinkedHashMap<>();
        open.stream()
                .filter(found -> !stopping.contains(found))
                .forEach(found -> bearing.computeIfAbsent(
                                ValueWords.topic(found.topics().get(0)), topic -> new ArrayList<>())
                        .add(new Item.Bullet(false, asked(found), List.of())));
        if (!bearing.isEmpty()) {
            draft.section("what-else.then");
        }
        bearing.forEach(
                (topic, questions) -> draft.group(phrase("what-else.bears-on").with("topic", topic), questions));
        draft.list(
                "what-else.unasked",
                whatElse.open().stream()
                        .filter(found -> !asked.contains(found.field()))
                        .toList(),
                found -> FieldWords.question(found.field()));
        return draft.document();
    }

    private static Wording asked(WhatElse.Open open) {
        return sentences(FieldWords.question(open.field()), FieldWords.howFound(open.field()));
    }

    private static Wording nothing(WhatElse whatElse) {
        return phrase(whatElse.untried().isEmpty() ? "what-else.nothing" : "what-else.nothing-so-far");
    }

    private static Wording brief(WhatElse whatElse) {
        if (whatElse.open().isEmpty()) {
            return nothing(whatElse);
        }
        WhatElse.Open first = whatElse.open().get(0);
        Wording question = FieldWords.question(first.field());
        return AnswerWords.shortest(
                phrase("what-else.brief")
                        .with("question", question)
                        .with("topics", first.topics().size())
                        .with("more", whatElse.open().size() - 1),
                phrase("what-else.first").with("question", question));
    }
}
