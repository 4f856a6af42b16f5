package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Why a matter was closed as it was, in words. */
final class WhyWords {
    private WhyWords() {}

    /**
     * @param start the grit with which the work starts where the last grit is coarser than the first cut
     * @param besides what the reader of this answer has to know of the rest of the plan
     */
    static Document full(Why why, Optional<AbrasiveGrade> start, Optional<Wording> besides, Parameters parameters) {
        Outcome outcome = why.outcome();
        Draft draft = Draft.titled(ValueWords.matter(outcome), parameters);
        boolean mayCut = mayCut(why);
        List<Wording> lead = new ArrayList<>();
        if (mayCut) {
            lead.add(phrase("answer.may-cut"));
        } else if (outcome instanceof Impasse<?>) {
            lead.add(phrase("answer.clash"));
        } else {
            lead.add(phrase(outcome.topic() == Topics.PASSES ? "answer.passes" : "answer.it-is")
                    .with("value", start.map(ValueWords::grade).orElseGet(() -> AnswerWords.outcome(outcome))));
            start.map(grade -> Optional.of(endBeforeStart(AnswerWords.outcome(outcome), grade)))
                    .orElseGet(() -> AnswerWords.policy(outcome.topic()))
                    .ifPresent(lead::add);
        }
        besides.ifPresent(lead::add);
        draft.paragraph(Wording.list(Joint.SENTENCES, lead));
        if (outcome instanceof Decision<?> decision) {
            AnswerWords.reasons(draft, "answer.won", decision.won(), why::card);
            AnswerWords.reasons(draft, "answer.outweighed", decision.outweighed(), why::card);
            AnswerWords.reasons(draft, "answer.vetoed", decision.vetoed(), why::card);
        } else if (outcome instanceof Impasse<?> impasse) {
            AnswerWords.reasons(draft, "answer.needs", impasse.needs(), why::card);
            AnswerWords.reasons(draft, "answer.vetoes", impasse.vetoes(), why::card);
        }
        if (!mayCut && outcome.reasons().isEmpty() && why.grounds().size() == 1) {
            draft.paragraph("reasons.nothing-said");
        }
        restsOn(draft, why);
        numbers(draft, why);
        checks(draft, why);
        return draft.inOneLine(brief(why)).document();
    }

    /** Whether the answer is that nothing forbids to cut. */
    static boolean mayCut(Why why) {
        return why.outcome() instanceof Decision<?> decision
                && decision.values().equals(List.of(Verdict.GO));
    }

    /** What a first cut finer than the last grit comes to. */
    static Wording endBeforeStart(Wording first, AbrasiveGrade grade) {
        return phrase("reasons.end-before-start").with("first", first).with("grade", ValueWords.grade(grade));
    }

    private static void restsOn(Draft draft, Why why) {
        draft.list(
                "answer.rests-on",
                why.grounds().stream()
                        .filter(ground -> why.grounds().get(0).restsOn().contains(ground.matter()))
                        .toList(),
                ground -> RuleWords.withIds(
                        AnswerWords.statedInFew(ground.outcome()), RuleWords.rules(ground.reasons())));
    }

    private static void numbers(Draft draft, Why why) {
        Set<String> own = new HashSet<>();
        if (why.outcome() instanceof Decision<?> decision) {
            decision.inputs().forEach(input -> own.add(input.name()));
        }
        draft.list(
                "answer.numbers",
                why.numbers().entrySet().stream()
                        .filter(number -> own.contains(number.getKey()))
                        .toList(),
                number -> phrase("answer.number")
                        .with("name", Words.parameter(number.getKey()))
                        .with("value", number.getValue()));
    }

    private static void checks(Draft draft, Why why) {
        Set<String> first = fields(why, decisive(why.outcome()));
        AnswerWords.checks(draft, "answer.to-overturn", first, why.answers());
    }

    /** The survey fields behind facts; behind what was concluded, those of what it was concluded from. */
    private static Set<String> fields(Why why, List<MatchedFact> facts) {
        Set<String> known = new HashSet<>();
        why.answers().forEach(answer -> known.add(answer.field()));
        Set<String> fields = new LinkedHashSet<>();
        Set<Matter> seen = new HashSet<>();
        List<MatchedFact> open = new ArrayList<>(facts);
        for (int i = 0; i < open.size(); i++) {
            MatchedFact fact = open.get(i);
            fact.fields().stream().filter(known::contains).forEach(fields::add);
            if (fact.fields().isEmpty()) {
                why.grounds().stream()
                        .filter(ground -> fact.topics().contains(ground.matter().topic()))
                        .filter(ground -> seen.add(ground.matter()))
                        .forEach(ground -> open.addAll(decisive(ground.outcome())));
            }
        }
        return fields;
    }

    /** The facts without which another value would stand. */
    private static List<MatchedFact> decisive(Outcome outcome) {
        List<Reason> reasons = outcome.reasons();
        if (outcome instanceof Decision<?> decision) {
            List<Reason> tight = decision.won().stream()
                    .filter(reason -> isTight(decision, reason))
                    .toList();
            reasons = tight.isEmpty() ? decision.won() : tight;
        }
        return reasons.stream()
                .flatMap(reason -> reason.facts().stream())
                .distinct()
                .toList();
    }

    /** True for a reason that keeps a single outcome from being one step milder or bolder. */
    private static boolean isTight(Decision<?> decision, Reason reason) {
        List<? extends Term> domain = decision.topic().domain();
        if (!decision.topic().policy().isOrdered() || decision.values().size() != 1) {
            return true;
        }
        int place = domain.indexOf(decision.value());
        List<Term> beside = new ArrayList<>();
        if (place > 0) {
            beside.add(domain.get(place - 1));
        }
        if (place + 1 < domain.size() && reason.kind() == ContributionKind.VETO) {
            beside.add(domain.get(place + 1));
        }
        return switch (reason.kind()) {
            case WISH -> reason.values().contains(decision.value());
            case NEED -> beside.stream().anyMatch(value -> !reason.values().contains(value));
            case VETO -> beside.stream().anyMatch(reason.values()::contains);
        };
    }

    private static Wording brief(Why why) {
        Outcome outcome = why.outcome();
        Wording start = phrase("answer.outcome")
                .with("matter", ValueWords.matter(outcome))
                .with("value", AnswerWords.outcomeInFew(outcome));
        Wording whole = Words.outcome(outcome);
        List<MatchedFact> facts = decisive(outcome);
        if (facts.isEmpty()) {
            Wording from = why.grounds().stream()
                    .skip(1)
                    .findFirst()
                    .map(ground -> phrase("answer.follows-from")
                            .with("topic", ValueWords.topic(ground.matter().topic())))
                    .orElseGet(() -> phrase("reasons.nothing-said"));
            return AnswerWords.shortest(sentences(whole, from), sentences(start, from), start);
        }
        Reason first = outcome.reasons().stream()
                .filter(reason -> reason.facts().stream().anyMatch(facts::contains))
                .findFirst()
                .orElseThrow();
        Wording check = AnswerWords.check(facts);
        Wording title = AnswerWords.titleInLine(why.card(first.rule()));
        Wording rule = AnswerWords.rule(first.rule());
        return AnswerWords.shortest(
                sentences(whole, title, check),
                sentences(start, title, check),
                sentences(whole, rule, check),
                sentences(start, rule, check),
                sentences(start, rule));
    }
}
