package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.Way;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** How a floor would get a value, in words. */
final class WayWords {
    private WayWords() {}

    /** The ways, after those of the offers that give the value; leaving the floor as it is gives none. */
    static Document full(HowTo howTo, Optional<Recommendation> recommendation, Parameters parameters) {
        Draft draft = Draft.titled(
                howTo.topic() == Topics.VERDICT
                        ? Wording.of(Term.parse(Verdict.class, howTo.wanted(), "wanted"), "how-to")
                        : phrase("how-to.title").with("matter", matter(howTo)).with("value", wanted(howTo)),
                parameters);
        recommendation.ifPresent(asked -> offers(draft, howTo, asked));
        if (howTo.kind() == WayKind.ALREADY) {
            if (recommendation.stream().noneMatch(asked -> isWithoutPlan(howTo, asked))) {
                draft.paragraph(Wording.of(howTo.kind()));
            }
        } else if (howTo.kind().isFound()) {
            List<Way> people = howTo.ways().stream().filter(Way::byPeople).toList();
            if (people.isEmpty()) {
                nature(draft, howTo.ways());
            } else {
                ways(draft, howTo.topic(), howTo.kind(), people);
            }
        } else {
            draft.paragraph(Wording.of(howTo.kind()));
        }
        return draft.inOneLine(brief(howTo)).document();
    }

    /** The offers of the plan that give the value; all of them where nothing forbids what was asked, yet there is no plan. */
    private static void offers(Draft draft, HowTo howTo, Recommendation recommendation) {
        boolean withoutPlan = isWithoutPlan(howTo, recommendation);
        List<CounterOffer<?>> offered = recommendation.counterOffers().stream()
                .filter(offer -> withoutPlan || gives(howTo, offer))
                .toList();
        if (!offered.isEmpty()) {
            draft.paragraph(withoutPlan ? "how-to.no-plan" : "how-to.not-now").section("how-to.offers");
            offered.forEach(offer -> draft.numbered(OfferWords.offer(recommendation, offer)));
            if (howTo.kind().isFound()) {
                draft.section("how-to.survey");
            }
        }
    }

    private static boolean isWithoutPlan(HowTo howTo, Recommendation recommendation) {
        return howTo.kind() == WayKind.ALREADY
                && howTo.topic() == Topics.VERDICT
                && !recommendation.counterOffers().isEmpty();
    }

    private static boolean gives(HowTo howTo, CounterOffer<?> offer) {
        return howTo.kind() != WayKind.ALREADY
                && offer.topic().equals(howTo.topic())
                && offer.kind() != OfferKind.LEAVE_IT
                && (offer.values().isEmpty() || keys(offer).contains(howTo.wanted()));
    }

    /** What the floor is, which no answer changes, each question once; what is not known is told as open. */
    private static void nature(Draft draft, List<Way> ways) {
        Map<Wording, Set<Wording>> answers = new LinkedHashMap<>();
        ways.stream()
                .flatMap(way -> way.changes().stream())
                .forEach(change -> answers.computeIfAbsent(
                                FieldWords.question(change.name()), question -> new LinkedHashSet<>())
                        .add(change.isFoundOut() ? phrase("fact.nobody-knows") : FieldWords.asItIs(change)));
        draft.paragraph("how-to.nature")
                .bullets(
                        answers.entrySet(),
                        answer -> phrase("answer.answered")
                                .with("question", answer.getKey())
                                .with("answer", Wording.list(Joint.SEMICOLON, answer.getValue())));
    }

    private static void ways(Draft draft, Topic<?> topic, WayKind kind, List<Way> ways) {
        draft.paragraph(kind == WayKind.FOUND && ways.size() > 1 ? phrase("how-to.way-any") : Wording.of(kind));
        ways.forEach(way -> draft.numbered(Wording.list(Joint.SENTENCES, way.changes(), WayWords::change)));
        if (topic == Topics.FINISH && ways.stream().anyMatch(WayWords::isWish)) {
            draft.paragraph("how-to.wish");
        }
        draft.section("closing.heading").paragraph("how-to.mind");
    }

    /** Whether it takes nothing but another wish of the owner. */
    private static boolean isWish(Way way) {
        return way.changes().stream().allMatch(change -> change.name().equals(SurveyField.GOAL.name()));
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
