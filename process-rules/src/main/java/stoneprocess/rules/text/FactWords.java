package stoneprocess.rules.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.Equipment;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StepEnd;
import stoneprocess.rules.feature.StepOrder;
import stoneprocess.rules.internal.classify.Facts;

/** Words for facts and their classes, as conditions of rules and as what is so on a floor. */
final class FactWords {
    private static final String MACHINE = Equipment.MachineOnHand.class.getSimpleName();
    private static final String STEP = Step.class.getSimpleName();
    private static final Map<String, Map<String, Term>> CLASSES = new LinkedHashMap<>();

    static {
        for (Class<?> type : Facts.types()) {
            if (type.getEnclosingClass() != OnSite.class && type != Step.class) {
                Feature<?> fact = (Feature<?>) Facts.space(type).get(0);
                add(
                        type.getSimpleName(),
                        fact.mayBe().iterator().next().getDeclaringClass().getEnumConstants());
            }
        }
        add(MACHINE, Presence.values());
        add("Step.track", TrackKind.values());
        add("Step.bond", Bond.values());
        add("Step.grit", GritClass.values());
        add("Step.order", StepOrder.values());
        add("Step.end", StepEnd.values());
        add("Step.method", WorkMethod.values());
    }

    private final Phrases phrases;
    private final LoggedFacts logged;
    private final ValueWords values;

    FactWords(Phrases phrases) {
        this.phrases = phrases;
        this.logged = new LoggedFacts(phrases);
        this.values = new ValueWords(phrases);
    }

    private static void add(String fact, Enum<?>[] constants) {
        CLASSES.put(
                fact,
                Stream.of(constants)
                        .map(Term.class::cast)
                        .collect(Collectors.toMap(Term::key, term -> term, (one, other) -> one, LinkedHashMap::new)));
    }

    /** The keys of the phrases that a fact of a floor can need. */
    static List<String> keys() {
        List<String> keys = new ArrayList<>();
        CLASSES.forEach((fact, classes) -> {
            keys.add("fact." + fact);
            classes.values().forEach(term -> keys.add(key(fact, term)));
        });
        keys.addAll(List.of(
                "fact.or",
                "fact.or-not-known",
                "fact.only-not-known",
                "fact.whatever",
                "fact.anything-but",
                "fact.nobody-knows"));
        return keys;
    }

    private static String key(String fact, Term term) {
        String own = "fact." + fact + "." + term.key();
        String name = Phrases.key(term) + ".name";
        return Phrases.has(own) ? own : Phrases.has(name) ? name : Phrases.key(term);
    }

    /** What a fact is called; a fact of the job log has no name, only what is so. */
    String name(String fact) {
        int mark = fact.indexOf(':');
        if (mark < 0) {
            return phrases.get("fact." + fact);
        }
        String which = fact.substring(mark + 1);
        return phrases.get("fact." + fact.substring(0, mark))
                .formatted(phrases.of(Term.parse(MachineClass.class, which, fact)));
    }

    /** A condition: that one of the facts is of one of these classes. */
    String condition(List<String> facts, List<String> classes, List<String> others, boolean orNotKnown) {
        String unknown = orNotKnown && !classes.isEmpty() ? ", " + phrases.get("fact.or-not-known") : "";
        if (isLogged(facts.get(0))) {
            return (classes.isEmpty() ? phrases.get("fact.only-not-known") : or(sentences(facts, classes))) + unknown;
        }
        String name = or(facts.stream().map(this::name).toList());
        if (classes.isEmpty() || others.isEmpty()) {
            return name + ": " + phrases.get(classes.isEmpty() ? "fact.only-not-known" : "fact.whatever");
        }
        boolean fewOthers = classes.size() > 2 && !others.isEmpty() && others.size() < classes.size();
        String value = fewOthers
                ? phrases.get("fact.anything-but").formatted(or(words(facts.get(0), others)))
                : or(words(facts.get(0), classes));
        return name + ": " + value + unknown;
    }

    /** What a rule would need of a fact; not to be known when there are no classes. */
    String needed(String fact, List<String> classes) {
        if (classes.isEmpty()) {
            return name(fact) + ": " + phrases.get("fact.only-not-known");
        }
        return isLogged(fact) ? or(sentences(List.of(fact), classes)) : name(fact) + ": " + or(words(fact, classes));
    }

    /** What is so on a floor, as a rule matched it. */
    String so(MatchedFact fact) {
        if (fact.name().equals(STEP)) {
            return values.subject(Subject.parse(fact.mayBe().get(0), STEP));
        }
        return so(fact.name(), fact.mayBe());
    }

    /** What may be so on a floor. */
    String so(String fact, List<String> mayBe) {
        if (isLogged(fact)) {
            return or(sentences(List.of(fact), mayBe));
        }
        int all = CLASSES.getOrDefault(bare(fact), Map.of()).size();
        boolean open = mayBe.isEmpty() || mayBe.size() > 1 && mayBe.size() == all;
        return name(fact) + ": " + (open ? phrases.get("fact.nobody-knows") : or(words(fact, mayBe)));
    }

    List<String> words(String fact, List<String> classes) {
        Map<String, Term> terms = CLASSES.getOrDefault(bare(fact), Map.of());
        return classes.stream()
                .map(key -> {
                    Term term = terms.get(key);
                    return term == null ? key.replace('-', ' ') : phrases.get(key(bare(fact), term));
                })
                .toList();
    }

    private List<String> sentences(List<String> facts, List<String> classes) {
        return facts.stream()
                .flatMap(fact -> classes.stream()
                        .map(key -> logged.say(new MatchedFact(fact, List.of(key), true, List.of(), List.of()))))
                .toList();
    }

    private static String bare(String fact) {
        int mark = fact.indexOf(':');
        return mark < 0 ? fact : fact.substring(0, mark);
    }

    private static boolean isLogged(String fact) {
        return !CLASSES.containsKey(bare(fact));
    }

    /** Several as alternatives: {@code a, b or c}. */
    String or(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " " + phrases.get("fact.or") + " " + words.get(last);
    }
}
