package stoneprocess.rules.internal.explain;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.answer.FieldAnswer;
import stoneprocess.core.answer.Ground;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.SilentRule;
import stoneprocess.core.answer.Unmet;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.decide.Stated;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.EngineRun;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.Firing;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Runner;
import stoneprocess.rules.space.Forgetting;

/**
 * What every answer about a recommendation has to hold to. Each law is judged by the engine, the policies and the table
 * of facts themselves, never by what found the answer, and adds a line to the complaints for each breach.
 */
final class ExplainLaws {
    private final List<LoadedRule> rules;
    private final Engine engine;
    private final Recommendation recommendation;
    private final Answers answers;
    private final SplittableRandom random;
    private final List<Object> facts;
    private final Map<MatchedFact, Object> byRecord = new HashMap<>();
    private final Set<Map.Entry<String, List<String>>> classes = new HashSet<>();
    private final Set<Outcome> records = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<String> complaints = new ArrayList<>();
    private final Map<WhyNotKind, Integer> kinds = new EnumMap<>(WhyNotKind.class);
    private int neighbours;
    private int woken;

    ExplainLaws(
            List<LoadedRule> rules,
            Engine engine,
            Recommendation recommendation,
            Answers answers,
            SplittableRandom random) {
        this.rules = rules;
        this.engine = engine;
        this.recommendation = recommendation;
        this.answers = answers;
        this.random = random;
        this.facts = Runner.factsOf(recommendation);
        facts.forEach(fact -> byRecord.put(Facts.matched(fact), fact));
        byRecord.keySet().forEach(fact -> classes.add(Map.entry(fact.name(), fact.mayBe())));
        records.addAll(recommendation.outcomes());
    }

    List<String> complaints() {
        return complaints;
    }

    Map<WhyNotKind, Integer> kinds() {
        return kinds;
    }

    /** How many cited conditions were changed past their limit. */
    int neighbours() {
        return neighbours;
    }

    /** How many silent rules were made to speak. */
    int woken() {
        return woken;
    }

    private void complain(String law, Object... found) {
        complaints.add(law + ": " + Arrays.stream(found).map(String::valueOf).collect(Collectors.joining(" | ")));
    }

    /** Every matter answers why, every other value of its domain answers why not, and all laws hold of the answers. */
    void judge() {
        Map<Topic<?>, List<Why>> whys = new LinkedHashMap<>();
        Map<Topic<?>, List<WhyNot>> notAsked = new LinkedHashMap<>();
        for (Matter matter : answers.matters()) {
            Topic<?> topic = matter.topic();
            Why why = answers.why(topic, matter.subject());
            whys.computeIfAbsent(matter.topic(), id -> new ArrayList<>()).add(why);
            tellsTheRecord(matter, why);
            for (String value : answers.alternatives(topic, matter.subject())) {
                WhyNot whyNot = answers.whyNot(topic, matter.subject(), value);
                kinds.merge(whyNot.kind(), 1, Integer::sum);
                holdsOf(matter, whyNot);
                if (whyNot.kind() == WhyNotKind.NOT_ASKED && !whyNot.silent().isEmpty()) {
                    notAsked.computeIfAbsent(matter.topic(), id -> new ArrayList<>())
                            .add(whyNot);
                }
            }
        }
        notAsked.values().forEach(ofTopic -> silentRulesSpeakWhenTheirConditionsHold(any(ofTopic)));
        whys.forEach((topic, ofTopic) -> {
            citedFactsAloneGiveTheOutcome(topic, ofTopic);
            aConditionPastItsLimitSilencesTheRule(topic, any(ofTopic));
        });
        citedAnswersAloneGiveTheFacts(any(any(List.copyOf(whys.values()))));
        if (random.nextInt(20) == 0) {
            jsonIsLossless(any(any(List.copyOf(whys.values()))), notAsked);
        }
    }

    private void jsonIsLossless(Why why, Map<Topic<?>, List<WhyNot>> notAsked) {
        if (!Json.WHY.read(Json.WHY.print(why)).equals(why)) {
            complain(
                    "an answer why is read back as it was printed",
                    why.grounds().get(0).matter());
        }
        if (!notAsked.isEmpty()) {
            WhyNot whyNot = any(any(List.copyOf(notAsked.values())));
            if (!Json.WHY_NOT.read(Json.WHY_NOT.print(whyNot)).equals(whyNot)) {
                complain("an answer why not is read back as it was printed", whyNot.matter(), whyNot.value());
            }
        }
    }

    private <T> T any(List<T> members) {
        return members.get(random.nextInt(members.size()));
    }

    private void tellsTheRecord(Matter matter, Why why) {
        if (!Matter.of(why.outcome()).equals(matter)) {
            complain("why answers what was asked", matter, why.outcome());
        }
        for (Ground ground : why.grounds()) {
            if (!records.contains(ground.outcome())) {
                complain("grounds are decision records", matter, ground.outcome());
            }
        }
    }

    /** The facts that were cited, put alone before the rules, make the same rules speak and the same outcome close. */
    private void citedFactsAloneGiveTheOutcome(Topic<?> topic, List<Why> whys) {
        if (!(topic instanceof Choice<?> choice)) {
            return;
        }
        Set<Reason> reasons = new HashSet<>();
        whys.forEach(why -> reasons.addAll(why.grounds().get(0).reasons()));
        Set<Object> cited = new LinkedHashSet<>();
        for (Reason reason : reasons) {
            for (MatchedFact fact : reason.facts()) {
                Object found = byRecord.get(fact);
                if (found == null) {
                    complain("cited facts are facts of the floor", topic, reason.rule(), fact);
                    return;
                }
                cited.add(found);
            }
        }
        // Of an impasse the record keeps what it is made of; what was merely wished for is not part of it.
        boolean impasse = whys.stream().anyMatch(why -> why.outcome() instanceof Impasse<?>);
        List<Stated> said = said(topic, List.copyOf(cited)).stream()
                .filter(one -> !impasse || one.contribution().kind() != ContributionKind.WISH)
                .toList();
        if (impasse) {
            reasons.removeIf(reason -> reason.kind() == ContributionKind.WISH);
        }
        Set<Reason> again = said.stream().map(Stated::reason).collect(Collectors.toSet());
        if (!again.equals(reasons)) {
            complain("cited facts alone make the same rules speak", topic, difference(reasons, again));
            return;
        }
        for (Outcome closed : close(choice, said, whys)) {
            boolean wishesLack = impasse && closed instanceof Decision<?>;
            if (!wishesLack && whys.stream().noneMatch(why -> why.outcome().equals(closed))) {
                complain("cited facts alone give the outcome", topic, closed);
            }
        }
    }

    private static String difference(Set<Reason> one, Set<Reason> other) {
        Set<Reason> left = new HashSet<>(one);
        left.removeAll(other);
        Set<Reason> right = new HashSet<>(other);
        right.removeAll(one);
        return left + " against " + right;
    }

    private List<Stated> said(Topic<?> topic, List<Object> inserted) {
        return firings(topic.stage(), inserted).stream()
                .filter(firing -> firing.card().topic() == topic)
                .map(firing -> new Stated(
                        firing.contribution(),
                        new Reason(
                                firing.contribution().kind(),
                                firing.card().id(),
                                firing.contribution().values(),
                                firing.facts().stream().map(Facts::matched).toList())))
                .sorted(Comparator.comparing((Stated one) -> one.reason().rule())
                        .thenComparing(one -> one.contribution().subject().key())
                        .thenComparing(one -> one.contribution().kind())
                        .thenComparing(one -> String.join(" ", one.reason().keys()))
                        .thenComparing(one -> one.reason().facts().toString()))
                .toList();
    }

    private List<Firing> firings(Stage stage, List<Object> inserted) {
        try (EngineRun run = engine.start()) {
            inserted.forEach(run::insert);
            return run.fire(stage);
        }
    }

    private static <V extends Term> List<Outcome> close(Choice<V> topic, List<Stated> said, List<Why> whys) {
        List<Outcome> closed = new ArrayList<>();
        if (topic.policy() == PolicyKind.FEWEST_CHANGES) {
            Map<Object, List<Subject>> tracks = new LinkedHashMap<>();
            for (Why why : whys) {
                Subject.OfStep step = (Subject.OfStep) why.outcome().subject();
                tracks.computeIfAbsent(step.track(), track -> new ArrayList<>()).add(step);
            }
            tracks.values()
                    .forEach(steps -> closed.addAll(Policy.of(topic)
                            .closeTrack(
                                    topic,
                                    steps,
                                    step -> said.stream()
                                            .filter(each -> each.contribution()
                                                    .subject()
                                                    .equals(step))
                                            .toList())));
            return closed;
        }
        for (Why why : whys) {
            List<Reason> own = why.grounds().get(0).reasons();
            List<Stated> here = said.stream()
                    .filter(one -> own.contains(one.reason()))
                    .filter(one ->
                            one.contribution().subject().equals(why.outcome().subject())
                                    || one.contribution().subject().equals(Subject.FLOOR))
                    .toList();
            closed.add(Policy.of(topic).close(topic, why.outcome().subject(), here));
        }
        return closed;
    }

    /** One cited condition, changed so that it does not hold, silences its rule. */
    private void aConditionPastItsLimitSilencesTheRule(Topic<?> topic, Why why) {
        List<Reason> reasons = why.grounds().get(0).reasons();
        if (reasons.isEmpty()) {
            return;
        }
        Reason reason = any(reasons);
        int position = random.nextInt(reason.facts().size());
        FactPattern condition = rule(reason.rule()).conditions().get(position);
        List<Object> changed = new ArrayList<>();
        reason.facts().forEach(fact -> changed.add(byRecord.get(fact)));
        List<Object> past = Facts.space(condition.type()).stream()
                .filter(fact -> which(fact).equals(which(changed.get(position))))
                .filter(fact -> !condition.matches(fact))
                .toList();
        if (past.isEmpty()) {
            return;
        }
        changed.set(position, any(past));
        neighbours++;
        if (speaks(reason.rule(), topic, changed).findAny().isPresent()) {
            complain("a cited condition past its limit silences the rule", reason.rule(), changed);
        }
    }

    private Stream<Contribution> speaks(String rule, Topic<?> topic, List<Object> inserted) {
        return firings(topic.stage(), inserted).stream()
                .filter(firing -> firing.card().id().equals(rule))
                .map(Firing::contribution);
    }

    private static Object which(Object fact) {
        return fact instanceof OneOfMany<?> one ? one.which() : "";
    }

    private LoadedRule rule(String id) {
        return rules.stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
    }

    /** The answers that a derivation names, and the outcomes that it rests on, are all that its facts were read from. */
    private void citedAnswersAloneGiveTheFacts(Why why) {
        Set<String> named = why.answers().stream().map(FieldAnswer::field).collect(Collectors.toSet());
        // Whether the lanes alone are worked belongs to the zones: it says which of them are the floor.
        named.add(SurveyField.EXTENT.name());
        FloorSurvey excerpt = recommendation.survey();
        for (String field : Forgetting.known(excerpt)) {
            if (!named.contains(field)) {
                excerpt = Forgetting.without(excerpt, field);
            }
        }
        Situation situation = new Situation(excerpt, recommendation.parameters(), recommendation.sequence());
        why.grounds().forEach(ground -> situation.close(ground.outcome()));
        Set<MatchedFact> again = new HashSet<>();
        Facts.after(Optional.empty(), situation).forEach(fact -> again.add(Facts.matched(fact)));
        for (Stage stage : Stage.values()) {
            Facts.after(Optional.of(stage), situation).forEach(fact -> again.add(Facts.matched(fact)));
        }
        for (Ground ground : why.grounds()) {
            for (Reason reason : ground.reasons()) {
                for (MatchedFact fact : reason.facts()) {
                    if (!fact.name().equals("Step") && !again.contains(fact)) {
                        complain("cited answers alone give the facts", ground.matter(), reason.rule(), fact);
                    }
                }
            }
        }
        for (FieldAnswer answer : why.answers()) {
            if (!FieldAnswer.of(recommendation.survey(), answer.field()).equals(answer)) {
                complain("cited answers are those of the survey", answer);
            }
        }
    }

    private void holdsOf(Matter matter, WhyNot whyNot) {
        if (!whyNot.matter().equals(matter)
                || whyNot.outcome() instanceof Decision<?> decision
                        && decision.keys().contains(whyNot.value())) {
            complain("why-not answers what was asked", matter, whyNot.value());
        }
        List<Reason> reasons = whyNot.outcome().reasons();
        PolicyKind policy = matter.topic().policy();
        switch (whyNot.kind()) {
            case VETOED, IMPASSE -> {
                List<Reason> left = new ArrayList<>(reasons);
                left.removeAll(whyNot.by());
                boolean narrow = needsNarrow(policy);
                if (whyNot.by().isEmpty()
                        || !whyNot.by().stream().allMatch(reason -> excludes(reason, whyNot.value()))
                        || !reasons.containsAll(whyNot.by())
                        || left.stream()
                                .filter(reason -> narrow || reason.kind() == ContributionKind.VETO)
                                .anyMatch(reason -> excludes(reason, whyNot.value()))) {
                    complain("all that vetoes is named", matter, whyNot.value(), whyNot.by());
                }
            }
            case OUTWEIGHED -> {
                if (whyNot.by().isEmpty()
                        || whyNot.by().stream()
                                .anyMatch(reason -> reason.keys().get(0).equals(whyNot.value()))
                        || !reasons.containsAll(whyNot.by())) {
                    complain("what outweighs asks for something else", matter, whyNot.value(), whyNot.by());
                }
            }
            case UNCERTAIN -> {
                if (whyNot.asked().stream().allMatch(Reason::certain)) {
                    complain("what is uncertain rests on something unknown", matter, whyNot.value());
                }
            }
            case NOT_ASKED -> {
                boolean excluded = reasons.stream()
                        .filter(reason -> needsNarrow(policy) || reason.kind() == ContributionKind.VETO)
                        .anyMatch(reason -> excludes(reason, whyNot.value()));
                if (excluded || whyNot.silent().stream().anyMatch(this::spoke)) {
                    complain("a silent rule did not speak", matter, whyNot.value(), whyNot.silent());
                }
            }
            case OTHER_STEPS, NOT_ON_HAND, BOND_LEFT_OUT, BEFORE_START, AFTER_END, STEPPED_OVER, NO_PATH, COMPUTED -> {
                if (reasons.stream().anyMatch(reason -> excludes(reason, whyNot.value()))) {
                    complain("no reason of its own excludes it", matter, whyNot.value());
                }
            }
        }
    }

    /** The conditions that are said not to hold do not hold on the floor. */
    private boolean spoke(SilentRule silent) {
        return silent.unmet().stream()
                .filter(unmet ->
                        !unmet.fact().startsWith("Step") && !unmet.actual().isEmpty())
                .anyMatch(unmet -> byRecord.keySet().stream()
                        .noneMatch(fact ->
                                fact.name().equals(unmet.fact()) && fact.mayBe().equals(unmet.actual())));
    }

    /** Where all stand or the first asked for wins, a need for one value takes nothing away from another. */
    private static boolean needsNarrow(PolicyKind policy) {
        return policy != PolicyKind.ALL && policy != PolicyKind.PRECEDENCE;
    }

    private static boolean excludes(Reason reason, String value) {
        boolean listed = reason.keys().contains(value);
        return reason.kind() == ContributionKind.NEED && !listed || reason.kind() == ContributionKind.VETO && listed;
    }

    /** A rule that is said to be silent asks for the value as soon as each condition that is named holds. */
    private void silentRulesSpeakWhenTheirConditionsHold(WhyNot whyNot) {
        SilentRule silent = any(whyNot.silent());
        if (silent.unmet().stream().anyMatch(unmet -> unmet.required().isEmpty())) {
            return;
        }
        Matter matter = whyNot.matter();
        Set<Class<?>> read =
                rule(silent.rule()).conditions().stream().map(FactPattern::type).collect(Collectors.toSet());
        List<Object> changed = facts.stream()
                .filter(fact -> read.contains(fact.getClass()))
                .filter(fact -> !(fact instanceof Step step) || step.subject().equals(matter.subject()))
                .collect(Collectors.toCollection(ArrayList::new));
        for (Unmet unmet : silent.unmet()) {
            String required = any(unmet.required());
            if (unmet.fact().startsWith("Step.")) {
                changed.replaceAll(fact -> fact instanceof Step step
                        ? with(step, unmet.fact().substring("Step.".length()), required)
                        : fact);
            } else {
                changed.removeIf(fact -> Facts.matched(fact).name().equals(unmet.fact()));
                changed.add(madeOf(unmet.fact(), required));
            }
        }
        woken++;
        Topic<?> topic = matter.topic();
        Optional<Contribution> asks = speaks(silent.rule(), topic, changed)
                .filter(said -> said.subject().equals(matter.subject())
                        || said.subject().equals(Subject.FLOOR))
                .filter(said -> said.kind() != ContributionKind.VETO)
                .filter(said -> Term.keys(said.values()).contains(whyNot.value()))
                .findFirst();
        if (asks.isEmpty()) {
            complain("a silent rule speaks when its conditions hold", matter, whyNot.value(), silent);
        } else if (!decided(asks.get().topic(), whyNot.outcome(), asks.get()).contains(whyNot.value())) {
            complain("a silent rule that spoke would decide", matter, whyNot.value(), asks.get());
        }
    }

    /** What the policy makes of the recorded reasons and one more. */
    private static <V extends Term> List<String> decided(Choice<V> topic, Outcome outcome, Contribution more) {
        List<Stated> said = new ArrayList<>();
        for (Reason reason : outcome.reasons()) {
            said.add(new Stated(
                    new Contribution(reason.kind(), topic, more.subject(), List.copyOf(reason.values())), reason));
        }
        said.add(new Stated(more, new Reason(more.kind(), "NEW-001", more.values(), List.of())));
        return Policy.of(topic).close(topic, outcome.subject(), said) instanceof Decision<?> decision
                ? decision.keys()
                : List.of();
    }

    private static Object madeOf(String name, String required) {
        for (Class<?> type : Facts.types()) {
            if (name.equals(type.getSimpleName()) || name.startsWith(type.getSimpleName() + ":")) {
                for (Object fact : Facts.space(type)) {
                    boolean only = fact instanceof Feature<?> feature
                            && Term.keys(List.copyOf(feature.mayBe())).equals(List.of(required));
                    if (only
                            && (name.equals(type.getSimpleName())
                                    || Facts.matched(fact).name().equals(name))) {
                        return fact;
                    }
                }
            }
        }
        throw new IllegalStateException("No fact " + name + " of " + required);
    }

    private static Step with(Step step, String part, String required) {
        RecordComponent[] components = Step.class.getRecordComponents();
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                values[i] = components[i].getName().equals(part)
                        ? Arrays.stream(types[i].getEnumConstants())
                                .filter(constant -> ((Term) constant).key().equals(required))
                                .findFirst()
                                .orElseThrow()
                        : components[i].getAccessor().invoke(step);
            }
            Constructor<Step> constructor = Step.class.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
