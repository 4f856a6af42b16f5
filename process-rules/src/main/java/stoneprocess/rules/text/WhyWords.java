package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.Why;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Topics;

/** Why a matter was closed as it was, in words. */
final class WhyWords {
    private final AnswerWords words;

    WhyWords(AnswerWords words) {
        this.words = words;
    }

    String full(Why why) {
        Outcome outcome = why.outcome();
        Page page = new Page();
        page.title(title(outcome));
        page.line(words.get("answer.it-is", words.outcome(outcome)) + " "
                + words.phrases.of(why.grounds().get(0).policy()));
        if (outcome instanceof Decision decision) {
            words.reasons(page, "answer.won", decision.won(), why::card);
            words.reasons(page, "answer.outweighed", decision.outweighed(), why::card);
            words.reasons(page, "answer.vetoed", decision.vetoed(), why::card);
        } else if (outcome instanceof Impasse impasse) {
            words.reasons(page, "answer.needs", impasse.needs(), why::card);
            words.reasons(page, "answer.vetoes", impasse.vetoes(), why::card);
        }
        if (outcome.reasons().isEmpty() && why.grounds().size() == 1) {
            page.heading(words.phrases.get("answer.won"));
            page.item(words.phrases.get("reasons.nothing-said"));
        }
        restsOn(page, why);
        numbers(page, why);
        checks(page, why);
        return page.toString();
    }

    private String title(Outcome outcome) {
        return words.values.matter(outcome.topic(), outcome.subject());
    }

    private void restsOn(Page page, Why why) {
        if (why.grounds().size() == 1) {
            return;
        }
        page.heading(words.phrases.get("answer.rests-on"));
        for (Ground ground : why.grounds().subList(1, why.grounds().size())) {
            List<String> rules = RuleWords.rules(ground.reasons());
            page.item(title(ground.outcome()) + ": " + words.outcome(ground.outcome()) + "."
                    + (rules.isEmpty() ? "" : " (" + String.join(", ", rules) + ")"));
        }
    }

    private void numbers(Page page, Why why) {
        if (!why.numbers().isEmpty()) {
            page.heading(words.phrases.get("answer.numbers"));
            why.numbers()
                    .forEach((name, value) ->
                            page.item(name.replace('-', ' ').replace(".", ", ") + ": " + words.units.print(value)));
        }
    }

    private void checks(Page page, Why why) {
        Set<String> first = fields(why, decisive(why.outcome()));
        Set<String> rest = new LinkedHashSet<>();
        why.answers().forEach(answer -> rest.add(answer.field()));
        rest.removeAll(first);
        if (!first.isEmpty()) {
            page.heading(words.phrases.get("answer.to-overturn"));
            words.checks(page, first, why.answers());
        }
        if (!rest.isEmpty()) {
            page.heading(words.phrases.get(first.isEmpty() ? "answer.survey" : "answer.survey-too"));
            why.answers().stream()
                    .filter(answer -> rest.contains(answer.field()))
                    .forEach(answer ->
                            page.item(words.fields.question(answer.field()) + " " + words.fields.answer(answer) + "."));
        }
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
        if (outcome instanceof Decision decision) {
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
    private static boolean isTight(Decision decision, Reason reason) {
        List<String> domain = Term.keys(Topics.named(decision.topic()).domain());
        if (Topics.named(decision.topic()).policy() != PolicyKind.ONE
                || decision.values().size() != 1) {
            return true;
        }
        int place = domain.indexOf(decision.value());
        List<String> beside = new ArrayList<>();
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

    String brief(Why why) {
        Outcome outcome = why.outcome();
        String start = title(outcome) + ": " + words.outcomeInFew(outcome) + ".";
        String whole = title(outcome) + ": " + words.outcome(outcome) + ".";
        List<MatchedFact> facts = decisive(outcome);
        if (facts.isEmpty()) {
            String from = why.grounds().size() == 1
                    ? words.phrases.get("reasons.nothing-said")
                    : words.get(
                            "answer.follows-from",
                            words.values.topic(why.grounds().get(1).matter().topic()));
            return AnswerWords.shortest(whole + " " + from, start + " " + from, start);
        }
        Reason first = outcome.reasons().stream()
                .filter(reason -> reason.facts().stream().anyMatch(facts::contains))
                .findFirst()
                .orElseThrow();
        String check = words.get("answer.check", words.factToCheck(facts));
        String title = why.card(first.rule()).title() + " (" + first.rule() + "). ";
        return AnswerWords.shortest(
                whole + " " + title + check,
                start + " " + title + check,
                whole + " " + first.rule() + ". " + check,
                start + " " + first.rule() + ". " + check,
                start + " " + first.rule() + ".");
    }
}
