package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private final Phrases phrases;

    LoggedFacts(Phrases phrases) {
        this.phrases = phrases;
    }

    private static void add(Object fact) {
        MatchedFact matched = Facts.matched(fact);
        for (Enum<?> one : ((Feature<?>) fact).mayBe()) {
            Term term = (Term) one;
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
        keys.addAll(List.of("fact.absent", "fact.not-known"));
        return keys;
    }

    private static String key(String fact, Term term) {
        String own = "fact." + fact + "." + term.key();
        return Phrases.has(own) ? own : Phrases.key(term);
    }

    private static String field(String name) {
        return Phrases.has("log." + name) ? "log." + name : "field." + name;
    }

    /** What the log or the survey leaves open. */
    String open(String field) {
        return phrases.get(field(field));
    }

    String say(MatchedFact fact) {
        if (!fact.known()) {
            String key = fact.fields().stream().allMatch(name -> Phrases.has("log." + name))
                    ? "fact.absent"
                    : "fact.not-known";
            return String.format(
                    phrases.get(key),
                    String.join(", ", fact.fields().stream().map(this::open).toList()));
        }
        String value = fact.mayBe().get(0);
        int mark = fact.name().indexOf(':');
        if (mark >= 0) {
            return oneOfMany(fact.name().substring(0, mark), fact.name().substring(mark + 1), value);
        }
        Optional<Term> term =
                Optional.ofNullable(CLASSES.getOrDefault(fact.name(), Map.of()).get(value));
        return term.map(known -> phrases.get(key(fact.name(), known))).orElseGet(() -> surveyed(fact));
    }

    private String oneOfMany(String fact, String which, String value) {
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
            return which + " " + value;
        }
        Term constant = constant(words, which);
        if (words == Fault.class) {
            return phrases.of(constant) + ", " + phrases.get("Standing." + value);
        }
        return phrases.get("fact." + fact + "." + value).formatted(phrases.of(constant));
    }

    private static Term constant(Class<? extends Enum<?>> words, String key) {
        for (Enum<?> one : words.getEnumConstants()) {
            if (((Term) one).key().equals(key)) {
                return (Term) one;
            }
        }
        throw new IllegalStateException("No " + words.getSimpleName() + " has the key " + key);
    }

    /** What the survey tells: the question and the class of the answer. */
    private String surveyed(MatchedFact fact) {
        String answer = String.join(" ", fact.mayBe()).replace('-', ' ');
        List<String> questions = fact.fields().stream()
                .map(name -> "field." + name)
                .filter(Phrases::has)
                .map(phrases::get)
                .toList();
        List<String> topics = fact.topics().stream()
                .map(topic -> phrases.get("topic." + topic) + ":")
                .toList();
        List<String> about = questions.isEmpty() ? topics : questions;
        return about.isEmpty() ? answer : about.get(0) + " " + answer;
    }
}
