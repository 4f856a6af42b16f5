package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StepEnd;
import stoneprocess.rules.feature.StepOrder;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;

/** Words for facts and their classes, as conditions of rules and as what is so on a floor. */
final class FactWords {
    private static final String STEP = Step.class.getSimpleName();

    /** Of so many classes at most it is told which they may be; of more the fact counts as not known. */
    private static final int FEW = 6;

    /** The classes of each fact of a floor, by their keys. */
    static final Map<String, Map<String, Term>> CLASSES = new LinkedHashMap<>();

    /** What each fact is about of which there is one for each constant, by its full name. */
    private static final Map<String, Term> CONSTANTS = new HashMap<>();

    static {
        for (Class<?> type : Facts.types()) {
            if (type.getEnclosingClass() != OnSite.class && type != Step.class) {
                List<Object> space = Facts.space(type);
                Feature<?> fact = (Feature<?>) space.get(0);
                add(
                        type.getSimpleName(),
                        fact.mayBe().iterator().next().getDeclaringClass().getEnumConstants());
                space.stream()
                        .filter(OneOfMany.class::isInstance)
                        .forEach(one -> CONSTANTS.put(Facts.name(one), ((OneOfMany<?>) one).which()));
            }
        }
        add("Step.track", TrackKind.values());
        add("Step.bond", Bond.values());
        add("Step.grit", GritClass.values());
        add("Step.order", StepOrder.values());
        add("Step.end", StepEnd.values());
        add("Step.method", WorkMethod.values());
    }

    private FactWords() {}

    private static void add(String fact, Enum<?>[] constants) {
        CLASSES.put(
                fact,
                Stream.of(constants)
                        .map(Term.class::cast)
                        .collect(Collectors.toMap(
                                Term::key, Function.identity(), (first, second) -> first, LinkedHashMap::new)));
    }

    /** The key of the phrase for a class of a fact. */
    static String key(String fact, Term term) {
        String own = "fact." + fact + "." + term.key();
        return Language.english().has(own) ? own : ValueWords.nameKey(term);
    }

    /** What a fact is called; a fact of the job log has no name, only what is so. */
    static Wording name(String fact) {
        int mark = fact.indexOf(':');
        if (mark < 0) {
            return phrase("fact." + fact);
        }
        return phrase("fact." + fact.substring(0, mark)).with("which", CONSTANTS.get(fact));
    }

    /** A condition: that one of the facts is of one of these classes. */
    static Wording condition(List<String> facts, List<String> classes, List<String> others, boolean orNotKnown) {
        if (isLogged(facts.get(0))) {
            Wording known = classes.isEmpty() ? phrase("fact.only-not-known") : or(sentences(facts, classes));
            return orNotKnown && !classes.isEmpty() ? orNotKnown(known) : known;
        }
        Wording name = or(facts.stream().map(FactWords::name).toList());
        if (classes.isEmpty() || others.isEmpty()) {
            return is(name, phrase(classes.isEmpty() ? "fact.only-not-known" : "fact.whatever"));
        }
        boolean fewOthers = classes.size() > 2 && others.size() < classes.size();
        Wording value = fewOthers
                ? phrase("fact.anything-but").with("classes", or(words(facts.get(0), others)))
                : or(words(facts.get(0), classes));
        return orNotKnown ? orNotKnown(is(name, value)) : is(name, value);
    }

    /** What a rule asks of a fact: one of these classes. */
    static Wording needed(String fact, List<String> classes) {
        List<String> others = CLASSES.getOrDefault(bare(fact), Map.of()).keySet().stream()
                .filter(key -> !classes.contains(key))
                .toList();
        return condition(List.of(fact), classes, others.isEmpty() ? classes : others, classes.isEmpty());
    }

    private static Wording is(Wording fact, Wording classes) {
        return phrase("fact.is").with("fact", fact).with("classes", classes);
    }

    private static Wording orNotKnown(Wording known) {
        return phrase("fact.or-not-known").with("known", known);
    }

    /** True for the step that a rule speaks of, which the title names. */
    static boolean isStep(MatchedFact fact) {
        return fact.name().equals(STEP);
    }

    /** What is so on a floor, as a rule matched it. */
    static Wording so(MatchedFact fact) {
        if (isStep(fact)) {
            return ValueWords.subject(Subject.parse(fact.mayBe().get(0), STEP));
        }
        return so(fact.name(), fact.mayBe());
    }

    /** True where nothing is known but the name of the fact. */
    static boolean isOpen(MatchedFact fact) {
        return !isStep(fact) && !isLogged(fact.name()) && isOpen(fact.name(), fact.mayBe());
    }

    private static boolean isOpen(String fact, List<String> mayBe) {
        int all = CLASSES.getOrDefault(bare(fact), Map.of()).size();
        return mayBe.isEmpty() || mayBe.size() > FEW || mayBe.size() > 1 && mayBe.size() == all;
    }

    /** What may be so on a floor. */
    static Wording so(String fact, List<String> mayBe) {
        return isLogged(fact) ? value(fact, mayBe) : is(name(fact), value(fact, mayBe));
    }

    /** The same without the name of the fact. */
    static Wording value(String fact, List<String> mayBe) {
        if (isLogged(fact)) {
            return or(sentences(List.of(fact), mayBe));
        }
        return isOpen(fact, mayBe) ? phrase("fact.nobody-knows") : or(words(fact, mayBe));
    }

    static List<Wording> words(String fact, List<String> classes) {
        Map<String, Term> terms = CLASSES.getOrDefault(bare(fact), Map.of());
        return classes.stream()
                .map(key -> {
                    Term term = terms.get(key);
                    return term == null ? ValueWords.grade(key) : phrase(key(bare(fact), term));
                })
                .toList();
    }

    private static List<Wording> sentences(List<String> facts, List<String> classes) {
        return facts.stream()
                .flatMap(fact -> classes.stream()
                        .map(key -> LoggedFacts.say(new MatchedFact(fact, List.of(key), true, List.of(), List.of()))))
                .toList();
    }

    private static String bare(String fact) {
        int mark = fact.indexOf(':');
        return mark < 0 ? fact : fact.substring(0, mark);
    }

    private static boolean isLogged(String fact) {
        return !CLASSES.containsKey(bare(fact));
    }

    /** Several as alternatives. */
    static Wording or(List<Wording> words) {
        return Wording.list(Wording.Joint.OR, words);
    }
}
