package stoneprocess.rules.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.source.Card;
import stoneprocess.core.topic.Topics;

/** Why a matter was not closed with a value, in words. */
final class WhyNotWords {
    private static final int SILENT_SHOWN = 5;
    private static final String INDENT = "      ";

    private final AnswerWords words;

    WhyNotWords(AnswerWords words) {
        this.words = words;
    }

    String full(WhyNot not) {
        Page page = new Page();
        page.title(words.get("why-not.title", matter(not), value(not)));
        page.line(words.get(several(not) ? "why-not.stands" : "why-not.instead", words.outcome(not.outcome())) + " "
                + words.phrases.of(not.kind()));
        words.reasons(page, "why-not.by", not.by(), not::card);
        words.reasons(page, "why-not.asked", not.asked(), not::card);
        silent(page, not);
        if (!not.restsOn().isEmpty()) {
            page.heading(words.phrases.get("answer.rests-on"));
            not.restsOn().forEach(matter -> page.item(words.values.matter(matter.topic(), matter.subject())));
        }
        Set<String> fields = fields(not);
        if (!fields.isEmpty()) {
            page.heading(words.phrases.get("answer.to-overturn"));
            words.checks(page, fields, not.answers());
        }
        return page.toString();
    }

    /** True where several values stand side by side. */
    private static boolean several(WhyNot not) {
        return switch (Topics.named(not.matter().topic()).policy()) {
            case ALL, REMAINS, RANKED, PATH -> true;
            case ONE, PRECEDENCE, FEWEST_CHANGES, COMPUTED -> false;
        };
    }

    private String matter(WhyNot not) {
        return words.values.matter(not.matter().topic(), not.matter().subject());
    }

    private String value(WhyNot not) {
        return words.values.value(not.matter().topic(), not.value());
    }

    private void silent(Page page, WhyNot not) {
        if (not.silent().isEmpty()) {
            return;
        }
        page.heading(words.phrases.get("why-not.silent"));
        int shown = Math.min(SILENT_SHOWN, not.silent().size());
        for (SilentRule silent : not.silent().subList(0, shown)) {
            Card card = not.card(silent.rule());
            page.item(card.title() + ". (" + silent.rule() + ")");
            for (Unmet unmet : silent.unmet()) {
                page.labelled(INDENT, words.phrases.get("why-not.needs"), wanted(unmet));
                page.labelled(INDENT, words.phrases.get("why-not.here"), words.facts.so(unmet.fact(), unmet.actual()));
            }
        }
        if (shown < not.silent().size()) {
            page.item(words.get("why-not.more", not.silent().size() - shown));
        }
    }

    private String wanted(Unmet unmet) {
        return words.facts.condition(
                List.of(unmet.fact()),
                unmet.required(),
                List.of(unmet.fact()),
                unmet.required().isEmpty());
    }

    /** What is read from the survey, of the nearest rule first. */
    private static Set<String> fields(WhyNot not) {
        Set<String> fields = new LinkedHashSet<>();
        for (Reason reason : not.by()) {
            reason.facts().forEach(fact -> fields.addAll(fact.fields()));
        }
        not.silent().stream()
                .limit(SILENT_SHOWN)
                .forEach(silent -> silent.unmet().forEach(unmet -> fields.addAll(unmet.fields())));
        return fields;
    }

    String brief(WhyNot not) {
        String instead = several(not)
                ? words.get("why-not.brief-several", value(not))
                : words.get("why-not.brief", value(not), words.outcomeInFew(not.outcome()));
        String start = matter(not) + ": " + instead;
        List<MatchedFact> facts =
                not.by().stream().flatMap(reason -> reason.facts().stream()).toList();
        if (!facts.isEmpty()) {
            String rule = not.by().get(0).rule();
            String check = words.get("answer.check", words.factToCheck(facts));
            return AnswerWords.shortest(
                    start + " " + not.card(rule).title() + " (" + rule + "). " + check,
                    start + " " + rule + ". " + check,
                    instead + " " + rule + ". " + check,
                    instead + " " + rule + ".");
        }
        if (!not.silent().isEmpty()) {
            SilentRule nearest = not.silent().get(0);
            String needs = words.get("why-not.brief-needs", nearest.rule(), wanted(nearest.nearest()));
            String check = words.get(
                    "why-not.brief-needs",
                    nearest.rule(),
                    words.facts.name(nearest.nearest().fact()));
            return AnswerWords.shortest(start + " " + needs, start + " " + check, instead + " " + check, instead);
        }
        return AnswerWords.shortest(start + " " + words.phrases.of(not.kind()), start, instead);
    }
}
