package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** How a floor would get a value, in words. */
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
                .filter(offer -> offer.values().isEmpty() || keys(offer).contains(howTo.wanted()))
                .toList();
        if (!offered.isEmpty()) {
            draft.paragraph("how-to.not-now").section("how-to.offers");
            offered.forEach(offer -> draft.numbered(OfferWords.offer(offer)));
            draft.section("how-to.survey");
        }
        boolean noPlan = howTo.kind() == WayKind.ALREADY && howTo.topic() == Topics.VERDICT && !offers.isEmpty();
        if (noPlan) {
            draft.paragraph("how-to.no-plan").section("how-to.offers");
            offers.forEach(offer -> draft.numbered(OfferWords.offer(offer)));
        } else {
            boolean byNature = howTo.kind().isFound() && howTo.ways().stream().noneMatch(Way::byPeople);
            draft.paragraph(byNature ? phrase("how-to.not-now") : Wording.of(howTo.kind()));
        }
        if (howTo.kind().isFound()) {
            List<Way> people = howTo.ways().stream().filter(Way::byPeople).toList();
            ways(draft, people);
            nature(draft, howTo.ways().stream().filter(way -> !way.byPeople()));
            if (!people.isEmpty()) {
                draft.section("closing.heading").paragraph("how-to.mind");
            }
        }
        return draft.inOneLine(brief(howTo)).document();
    }

    /** What the floor is, which no answer changes; what is not known is told as open. */
    private static void nature(Draft draft, Stream<Way> ways) {
        draft.list(
                "how-to.nature",
                ways.flatMap(way -> way.changes().stream()).distinct().toList(),
                change -> change.isFoundOut() ? change(change) : FieldWords.asItIs(change));
    }

    private static void ways(Draft draft, List<Way> ways) {
        if (!ways.isEmpty()) {
            draft.section("how-to.people");
        }
        for (Way way : ways) {
            List<Change> changes = way.changes();
            draft.numbered(
                    change(changes.get(0)),
                    changes.subList(1, changes.size()).stream()
                            .map(change -> label("how-to.and", change(change)))
                            .toList());
        }
    }

    private static <V> List<String> keys(CounterOffer<V> offer) {
        return offer.topic().keys(offer.values());
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
}
