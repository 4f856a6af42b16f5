package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Given;
import stoneprocess.core.answer.Split;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.GlossQuestion;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What other answers bring to a floor, in words: what is planned then, what it costs in time, what goes and what comes. */
record WhatIfWords(Recommendation before, Recommendation after, RuleWords cards, Draft draft) {
    /** Told by the headline, or what follows from the grits that are told. */
    private static final Set<Topic<?>> TOLD = Set.of(Topics.VERDICT, Topics.STEP_RULE, Topics.TEST_CUTS);

    private static final Set<Topic<?>> BY_NAME = Set.of(Topics.STONE, Topics.BONDS, Topics.WARNINGS);

    /** Told with each grit that stays and is worked in another way. */
    private static final List<Topic<?>> WAY_OF_WORKING =
            List.of(Topics.MACHINE, Topics.ADDED_WEIGHT, Topics.WATER_LEVEL, Topics.PASSES);

    static Document full(Recommendation before, Recommendation after, Collection<Card> cards) {
        Draft draft = Draft.titled(Wording.name(after.survey().title()), after.parameters());
        return new WhatIfWords(before, after, new RuleWords(cards), draft).document();
    }

    private Document document() {
        Wording now = new PlanFront(draft, before).answer();
        Wording then = new PlanFront(draft, after).answer();
        boolean same = sameOutcomes();
        Wording lead = same
                ? phrase("what-if.same")
                : now.equals(then)
                        ? phrase("what-if.still").with("then", then)
                        : phrase("what-if.lead").with("then", then).with("now", now);
        draft.inOneLine(AnswerWords.shortest(lead, then, Wording.of(after.status())));
        changes().forEach(draft::paragraph);
        draft.paragraph(lead);
        if (after.plan().isEmpty()) {
            stops();
        } else if (before.plan().isEmpty()) {
            PlanTotals.of(after).words().ifPresent(draft::paragraph);
        } else if (!same) {
            table();
            section("what-if.goes", before, after);
            section("what-if.comes", after, before);
            workedOtherwise();
        }
        questions();
        return draft.document();
    }

    private boolean sameOutcomes() {
        return before.status() == after.status() && before.outcomes().equals(after.outcomes());
    }

    /** Each answer that was changed, and what it was. */
    private List<Wording> changes() {
        Split<FieldAnswer> answers = Split.of(FieldAnswer.known(before.survey()), FieldAnswer.known(after.survey()));
        Set<String> fields = new LinkedHashSet<>();
        answers.other().forEach(answer -> fields.add(answer.field()));
        answers.one().forEach(answer -> fields.add(answer.field()));
        return fields.stream()
                .map(field -> change(FieldAnswer.of(after.survey(), field), FieldAnswer.of(before.survey(), field)))
                .toList();
    }

    /** What an answer has and did not have; of members and zones those alone that differ. */
    private static Wording change(FieldAnswer then, FieldAnswer now) {
        Split<Given> given = Split.of(then.given(), now.given());
        boolean less = given.one().isEmpty() && !then.given().isEmpty();
        boolean more = given.other().isEmpty() && !now.given().isEmpty();
        return phrase(less ? "what-if.less" : more ? "what-if.more" : "what-if.change")
                .with("question", FieldWords.question(then.field()))
                .with("then", FieldWords.answer(new FieldAnswer(then.field(), then.known(), given.one())))
                .with("now", FieldWords.answer(new FieldAnswer(now.field(), now.known(), given.other())));
    }

    /** The rules that stop the work now and did not speak before; all that stop it where each spoke before. */
    private void stops() {
        boolean contradicted = StoneConflict.write(draft, after);
        List<Impasse<?>> besides = StoneConflict.besides(after);
        if (contradicted && besides.isEmpty() && after.refusals().isEmpty()) {
            StoneConflict.waysOut(draft, after);
            return;
        }
        List<String> all = contradicted ? FollowChanges.stops(after, besides) : FollowChanges.stops(after);
        List<String> spoke = before.outcomes().stream()
                .flatMap(outcome -> RuleWords.rules(outcome.reasons()).stream())
                .toList();
        List<String> only = Split.of(all, spoke).one();
        draft.list("what-if.stops", only.isEmpty() ? all : only, cards::because);
        draft.list("how-to.offers", after.counterOffers(), offer -> OfferWords.offer(after, offer));
    }

    private void table() {
        draft.section("what-if.differs").row(Wording.name(""), phrase("what-if.then"), phrase("what-if.now"));
        for (Topic<?> topic : Topics.all()) {
            if (topic.scope() == Scope.FLOOR && !topic.policy().isPlural() && !TOLD.contains(topic)) {
                row(ValueWords.topic(topic), recommendation -> value(recommendation, topic, Subject.FLOOR));
            }
        }
        row(
                ValueWords.topic(Topics.FIRST_CUT),
                recommendation -> recommendation.steps(TrackKind.OPEN_FIELD).stream()
                        .findFirst()
                        .map(step -> ValueWords.grade(step.grade())));
        row(phrase("what-if.gloss"), WhatIfWords::gloss);
        row(
                phrase("what-if.work"),
                recommendation -> PlanTotals.of(recommendation).work());
        row(
                phrase("what-if.days"),
                recommendation -> PlanTotals.of(recommendation).days());
    }

    private void row(Wording label, Function<Recommendation, Optional<Wording>> value) {
        Optional<Wording> now = value.apply(before);
        Optional<Wording> then = value.apply(after);
        if (!now.equals(then)) {
            draft.row(label, then.orElse(phrase("answer.nothing")), now.orElse(phrase("answer.nothing")));
        }
    }

    private static Optional<Wording> value(Recommendation recommendation, Topic<?> topic, Subject subject) {
        return recommendation.decision(topic, subject).map(AnswerWords::outcome);
    }

    /** The forecast for the end of the plan's last resin grit. */
    private static Optional<Wording> gloss(Recommendation recommendation) {
        GlossQuestion atTheEnd = new GlossQuestion(Optional.empty(), new Gloss(1), Optional.empty(), List.of());
        return FloorGloss.of(recommendation, atTheEnd)
                .planned()
                .map(planned -> planned.ends().get(planned.ends().size() - 1).interval())
                .map(range -> phrase("table.range")
                        .with("low", Wording.number(StrictMath.round(range.low().gloss())))
                        .with("high", new Gloss(StrictMath.round(range.high().gloss()))));
    }

    /** What the one plans and the other does not. */
    private void section(String heading, Recommendation one, Recommendation other) {
        List<Wording> lines = new ArrayList<>();
        Map<List<Wording>, List<Wording>> tracks = new LinkedHashMap<>();
        for (Track track : FollowText.tracks(one)) {
            List<Wording> grits = Split.of(grits(one, track.kind()), grits(other, track.kind()))
                    .one();
            tracks.computeIfAbsent(grits, key -> new ArrayList<>()).add(ValueWords.track(track.kind()));
        }
        tracks.forEach((grits, of) -> {
            if (!grits.isEmpty()) {
                lines.add(phrase("what-if.part")
                        .with("part", Wording.list(Joint.AND, of))
                        .with("values", phrase("card.title").with("title", Wording.list(Joint.COMMA, grits))));
            }
        });
        for (Topic<?> topic : Topics.all()) {
            if (topic.scope() == Scope.FLOOR && topic.policy().isPlural()) {
                part(topic, one, other).ifPresent(lines::add);
            }
        }
        draft.list(heading, lines, Function.identity());
    }

    private static List<Wording> grits(Recommendation recommendation, TrackKind track) {
        return recommendation.steps(track).stream()
                .map(step -> ValueWords.grade(step.grade()))
                .toList();
    }

    private static <V> Optional<Wording> part(Topic<V> topic, Recommendation one, Recommendation other) {
        List<V> only = Split.of(one.values(topic, Subject.FLOOR), other.values(topic, Subject.FLOOR))
                .one();
        return only.isEmpty()
                ? Optional.empty()
                : Optional.of(phrase("what-if.part")
                        .with("part", ValueWords.topic(topic))
                        .with("values", values(topic, only)));
    }

    /** Values as the plan says them, in sentences; those that have none by their names. */
    private static <V> Wording values(Topic<V> topic, List<V> values) {
        if (BY_NAME.contains(topic)) {
            return phrase("card.title").with("title", Wording.list(Joint.COMMA, values, value -> named(topic, value)));
        }
        return Wording.list(Joint.SENTENCES, values, value -> Wording.of((Term) value));
    }

    private static <V> Wording named(Topic<V> topic, V value) {
        return value instanceof Hazard hazard ? PlanWords.shortly(hazard) : ValueWords.values(topic, List.of(value));
    }

    /** Grits that both run, where machine, weight, water or passes differ: for each track once where all differ alike. */
    private void workedOtherwise() {
        List<Wording> lines = new ArrayList<>();
        for (Topic<?> topic : WAY_OF_WORKING) {
            for (Track track : FollowText.tracks(after)) {
                Map<Wording, List<Wording>> gritsByChange = new LinkedHashMap<>();
                track.steps()
                        .forEach(step -> changed(topic, PlanWords.subject(track.kind(), step))
                                .ifPresent(change -> gritsByChange
                                        .computeIfAbsent(change, key -> new ArrayList<>())
                                        .add(ValueWords.grade(step.grade()))));
                if (!gritsByChange.isEmpty()) {
                    lines.add(otherwise(topic, track, gritsByChange));
                }
            }
        }
        draft.list("what-if.worked-otherwise", lines, Function.identity());
    }

    private Optional<Wording> changed(Topic<?> topic, Subject subject) {
        Optional<Wording> now = value(before, topic, subject);
        Optional<Wording> then = value(after, topic, subject);
        return now.isPresent() && then.isPresent() && !now.equals(then)
                ? Optional.of(
                        phrase("difference.instead").with("second", then.get()).with("first", now.get()))
                : Optional.empty();
    }

    private static Wording otherwise(Topic<?> topic, Track track, Map<Wording, List<Wording>> gritsByChange) {
        boolean throughout = gritsByChange.size() == 1
                && gritsByChange.values().iterator().next().size()
                        == track.steps().size();
        Wording changes = throughout
                ? gritsByChange.keySet().iterator().next()
                : Wording.list(
                        Joint.SEMICOLON,
                        gritsByChange.entrySet(),
                        change -> phrase("what-if.at-grits")
                                .with("change", change.getKey())
                                .with("grits", Wording.list(Joint.AND, change.getValue())));
        return phrase(throughout ? "what-if.throughout" : "what-if.otherwise")
                .with("topic", ValueWords.topic(topic))
                .with("track", ValueWords.track(track.kind()))
                .with("changes", changes);
    }

    /** What was not asked before; while answers about the stone contradict each other, what tells the stone. */
    private void questions() {
        List<String> asked = before.questions().stream().map(Question::field).toList();
        boolean contradicted = StoneConflict.isThere(after);
        draft.list(
                "what-if.questions",
                after.questions().stream()
                        .filter(question -> !contradicted || question.topics().contains(Topics.STONE))
                        .map(Question::field)
                        .filter(field -> !asked.contains(field))
                        .toList(),
                field -> FieldWords.question(after.survey(), field));
    }
}
