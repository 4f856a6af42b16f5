package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.Sign;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Fault;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;

/** Words for the facts that a rule about a job log has matched. */
final class LoggedFacts {
    /** The classes of each fact about the work, by their keys. */
    static final Map<String, Map<String, Term>> CLASSES = new LinkedHashMap<>();

    static {
        for (Class<?> type : Facts.types()) {
            if (type.getEnclosingClass() == OnSite.class) {
                Facts.space(type).forEach(LoggedFacts::add);
            }
        }
    }

    private LoggedFacts() {}

    private static void add(Object fact) {
        MatchedFact matched = Facts.matched(fact);
        for (Enum<?> constant : ((Feature<?>) fact).mayBe()) {
            Term term = (Term) constant;
            CLASSES.computeIfAbsent(matched.name(), name -> new LinkedHashMap<>())
                    .put(term.key(), term);
        }
    }

    /** The key of the phrase for a class of a fact. */
    static String key(String fact, Term term) {
        String own = "fact." + fact + "." + term.key();
        return Language.english().has(own) ? own : Wording.key(term);
    }

    /** The key of the phrase for a field of the log or of the survey. */
    static String field(String name) {
        return Language.english().has("log." + name) ? "log." + name : "field." + name;
    }

    /** What the log or the survey leaves open. */
    static Wording open(String field) {
        return phrase(field(field));
    }

    /** True for what the log shows of the floor; a cause that is suspected and what the survey says are none of it. */
    static boolean isSeen(MatchedFact fact) {
        int mark = fact.name().indexOf(':');
        return mark < 0
                ? CLASSES.containsKey(fact.name())
                : !fact.name().startsWith(OnSite.Suspected.class.getSimpleName())
                        && Language.english().has("fact." + fact.name().substring(0, mark) + ".present");
    }

    static Wording say(MatchedFact fact) {
        String value = fact.mayBe().get(0);
        int mark = fact.name().indexOf(':');
        if (mark >= 0) {
            return oneOfMany(fact.name().substring(0, mark), fact.name().substring(mark + 1), value);
        }
        Term term = CLASSES.getOrDefault(fact.name(), Map.of()).get(value);
        return term == null ? surveyed(fact) : phrase(key(fact.name(), term));
    }

    private static Wording oneOfMany(String fact, String which, String value) {
        if (fact.equals(OnSite.Suspected.class.getSimpleName())) {
            return phrase("fact.suspected")
                    .with("fault", ValueWords.name(Term.parse(Fault.class, which, fact)))
                    .with("standing", phrase("Standing." + value));
        }
        String key = "fact." + fact + "." + value;
        if (fact.equals(OnSite.SignSeen.class.getSimpleName())) {
            return phrase(key).with("what", Term.parse(Sign.class, which, fact));
        }
        if (fact.equals(OnSite.EventStands.class.getSimpleName())) {
            return phrase(key).with("what", Term.parse(EventKind.class, which, fact));
        }
        return fact.equals(OnSite.BondRun.class.getSimpleName())
                ? phrase(key).with("what", Term.parse(Bond.class, which, fact))
                : FactWords.so(fact + ":" + which, List.of(value));
    }

    /** What the survey tells or what was decided from it, by the name of the fact where it has one. */
    private static Wording surveyed(MatchedFact fact) {
        if (Language.english().has("fact." + fact.name())) {
            return FactWords.so(fact.name(), fact.mayBe());
        }
        Wording answer = FactWords.or(FactWords.words(fact.name(), fact.mayBe()));
        return fact.topics().stream()
                .findFirst()
                .<Wording>map(
                        topic -> Wording.sentences(phrase("fact.topic").with("topic", ValueWords.topic(topic)), answer))
                .orElse(answer);
    }
}
