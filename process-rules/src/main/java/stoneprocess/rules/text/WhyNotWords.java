package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Why a matter was not closed with a value, in words. */
final class WhyNotWords {
    private static final int SILENT_SHOWN = 3;

    /** Facts that say which material a floor is of. */
    private static final Set<String> MATERIAL =
            Set.of(StoneTraits.StoneFamily.class.getSimpleName(), StoneTraits.BoundBy.class.getSimpleName());

    private WhyNotWords() {}

    static Document full(WhyNot not, Parameters parameters) {
        Draft draft = Draft.titled(title(not), parameters);
        draft.paragraph(lead(not));
        AnswerWords.reasons(draft, "why-not.by", not.by(), not::card);
        AnswerWords.reasons(draft, "why-not.asked", not.asked(), not::card);
        silent(draft, not);
        draft.list("answer.rests-on", not.restsOn(), matter -> ValueWords.matter(matter.topic(), matter.subject()));
        if (!not.by().isEmpty()) {
            boolean verdict = not.matter().topic() == Topics.VERDICT;
            AnswerWords.checks(draft, verdict ? "why-not.put-right" : "answer.to-overturn", fields(not), not.answers());
        }
        return draft.inOneLine(brief(not)).document();
    }

    /** What stands in its place and what kept it out. */
    private static Wording lead(WhyNot not) {
        if (not.outcome() instanceof Impasse<?>) {
            return phrase("answer.clash");
        }
        return sentences(instead(not), kind(not));
    }

    private static Wording instead(WhyNot not) {
        if (not.outcome() instanceof Decision<?> decision && decision.topic() == Topics.VERDICT) {
            return Wording.of((Term) decision.value(), "why-not-instead");
        }
        return phrase(several(not) ? "why-not.stands" : "why-not.instead")
                .with("value", AnswerWords.outcome(not.outcome()));
    }

    private static Wording title(WhyNot not) {
        return not.matter().topic() == Topics.VERDICT
                ? Wording.of(Term.parse(Verdict.class, not.value(), "value"), "why-not")
                : phrase("why-not.title").with("matter", matter(not)).with("value", value(not));
    }

    /** True where several values stand side by side. */
    private static boolean several(WhyNot not) {
        return not.matter().topic().policy().isPlural();
    }

    private static Wording matter(WhyNot not) {
        return ValueWords.matter(not.matter().topic(), not.matter().subject());
    }

    private static Wording kind(WhyNot not) {
        if (not.kind() == WhyNotKind.VETOED
                && not.by().stream().noneMatch(reason -> reason.kind() == ContributionKind.VETO)) {
            return phrase(Wording.key(not.kind()) + ".need").with("asked", value(not));
        }
        boolean refused = not.kind() == WhyNotKind.OUTWEIGHED && not.matter().topic() == Topics.VERDICT;
        return refused
                ? phrase(Wording.key(not.kind()) + ".verdict")
                : Wording.of(not.kind()).with("asked", value(not));
    }

    private static Wording value(WhyNot not) {
        return ValueWords.value(not.matter().topic(), not.value());
    }

    /** The nearest rules; those about another material last, and only where there is no other. */
    private static List<SilentRule> silent(WhyNot not) {
        List<SilentRule> ofThisMaterial = not.silent().stream()
                .filter(silent -> silent.unmet().stream().noneMatch(unmet -> MATERIAL.contains(unmet.fact())))
                .toList();
        return ofThisMaterial.isEmpty() ? not.silent() : ofThisMaterial;
    }

    private static void silent(Draft draft, WhyNot not) {
        List<SilentRule> rules = silent(not);
        if (!rules.isEmpty()) {
            draft.section("why-not.silent");
        }
        int shown = Math.min(SILENT_SHOWN, rules.size());
        for (SilentRule silent : rules.subList(0, shown)) {
            draft.bullet(RuleWords.withIds(
                    sentences(
                            phrase("card.title").with("title", Wording.title(not.card(silent.rule()))),
                            phrase("why-not.unmet")
                                    .with("facts", Wording.list(Joint.SEMICOLON, silent.unmet(), WhyNotWords::unmet))),
                    List.of(silent.rule())));
        }
        if (shown < rules.size()) {
            draft.bullet(phrase("why-not.more").with("count", rules.size() - shown));
        }
    }

    private static Wording unmet(Unmet unmet) {
        return phrase("why-not.here")
                .with("needed", wanted(unmet))
                .with("here", FactWords.value(unmet.fact(), unmet.actual()));
    }

    private static Wording wanted(Unmet unmet) {
        return FactWords.needed(unmet.fact(), unmet.required());
    }

    /** What is read from the survey, of the nearest rule first. */
    private static Set<String> fields(WhyNot not) {
        Set<String> fields = new LinkedHashSet<>();
        for (Reason reason : not.by()) {
            reason.facts().forEach(fact -> fields.addAll(fact.fields()));
        }
        silent(not).stream()
                .limit(SILENT_SHOWN)
                .forEach(silent -> silent.unmet().forEach(unmet -> fields.addAll(unmet.fields())));
        return fields;
    }

    private static Wording brief(WhyNot not) {
        Wording instead = several(not)
                ? phrase("why-not.brief-several").with("value", value(not))
                : phrase("why-not.brief")
                        .with("value", value(not))
                        .with("instead", AnswerWords.outcomeInFew(not.outcome()));
        Wording start =
                phrase("why-not.brief-matter").with("matter", matter(not)).with("instead", instead);
        List<MatchedFact> facts =
                not.by().stream().flatMap(reason -> reason.facts().stream()).toList();
        if (!facts.isEmpty()) {
            String id = not.by().get(0).rule();
            Wording rule = AnswerWords.rule(id);
            Wording check = AnswerWords.check(facts);
            return AnswerWords.shortest(
                    sentences(start, AnswerWords.titleInLine(not.card(id)), check),
                    sentences(start, rule, check),
                    sentences(instead, rule, check),
                    sentences(instead, rule));
        }
        if (!not.silent().isEmpty()) {
            SilentRule nearest = silent(not).get(0);
            Wording needs = needs(nearest, wanted(nearest.nearest()));
            Wording check = needs(nearest, FactWords.name(nearest.nearest().fact()));
            return AnswerWords.shortest(
                    sentences(start, needs), sentences(start, check), sentences(instead, check), instead);
        }
        return AnswerWords.shortest(sentences(start, kind(not)), start, instead);
    }

    private static Wording needs(SilentRule rule, Wording what) {
        return phrase("why-not.brief-needs").with("rule", rule.rule()).with("needs", what);
    }
}
