package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.Sign;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Fault;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for the facts that a rule about a job log has matched. */
final class LoggedFacts {
    private static final Map<String, Map<String, Term>> CLASSES = new LinkedHashMap<>();
    private static final Set<String> FIELDS = new LinkedHashSet<>();

    static {
        for (Class<?> type : Facts.types()) {
            if (type.getEnclosingClass() == OnSite.class) {
                FIELDS.addAll(Facts.fields(type));
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

    /** The keys of the phrases that a fact about the work can need. */
    static List<String> keys() {
        List<String> keys = new ArrayList<>();
        CLASSES.forEach((name, classes) -> {
            if (!name.contains(":")) {
                classes.values().forEach(term -> keys.add(key(name, term)));
            }
        });
        FIELDS.forEach(field -> keys.add(field(field)));
        for (Class<?> type : List.of(OnSite.SignSeen.class, OnSite.EventStands.class, OnSite.BondRun.class)) {
            for (Presence presence : Presence.values()) {
                keys.add("fact." + type.getSimpleName() + "." + presence.key());
            }
        }
        return keys;
    }

    private static String key(String fact, Term term) {
        String own = "fact." + fact + "." + term.key();
        return Language.english().has(own) ? own : Wording.key(term);
    }

    private static String field(String name) {
        return Language.english().has("log." + name) ? "log." + name : "field." + name;
    }

    /** What the log or the survey leaves open. */
    static Wording open(String field) {
        return phrase(field(field));
    }

    static Wording say(MatchedFact fact) {
        if (!fact.known()) {
            boolean logged =
                    fact.fields().stream().allMatch(name -> Language.english().has("log." + name));
            return phrase(logged ? "fact.absent" : "fact.not-known")
                    .with("what", Wording.list(Joint.COMMA, fact.fields(), LoggedFacts::open));
        }
        String value = fact.mayBe().get(0);
        int mark = fact.name().indexOf(':');
        if (mark >= 0) {
            return oneOfMany(fact.name().substring(0, mark), fact.name().substring(mark + 1), value);
        }
        Term term = CLASSES.getOrDefault(fact.name(), Map.of()).get(value);
        return term == null ? surveyed(fact) : phrase(key(fact.name(), term));
    }

    private static Wording oneOfMany(String fact, String which, String value) {
        Class<? extends Enum<?>> words;
        if (fact.equals(OnSite.SignSeen.class.getSimpleName())) {
            words = Sign.class;
        } else if (fact.equals(OnSite.EventStands.class.getSimpleName())) {
            words = EventKind.class;
        } else if (fact.equals(OnSite.BondRun.class.getSimpleName())) {
            words = Bond.class;
        } else if (fact.equals(OnSite.Suspected.class.getSimpleName())) {
            words = Fault.class;
        } else {
            return FactWords.so(fact + ":" + which, List.of(value));
        }
        Term constant = constant(words, which);
        if (words == Fault.class) {
            return phrase("fact.suspected").with("fault", constant).with("standing", phrase("Standing." + value));
        }
        return phrase("fact." + fact + "." + value).with("what", constant);
    }

    private static Term constant(Class<? extends Enum<?>> words, String key) {
        for (Enum<?> constant : words.getEnumConstants()) {
            if (((Term) constant).key().equals(key)) {
                return (Term) constant;
            }
        }
        throw new IllegalStateException("No " + words.getSimpleName() + " has the key " + key);
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
