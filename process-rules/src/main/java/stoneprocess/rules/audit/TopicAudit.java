package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport.Space;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Choice;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.EngineRun;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.run.Runner;

/** Looks at one topic: over every combination of the facts that its rules read. */
final class TopicAudit {
    private final WaySpace space;
    private final Topic<?> topic;
    private final List<AuditFinding> findings = new ArrayList<>();
    private final Map<Subject, OutcomeViews> viewsBySubject = new HashMap<>();
    private final Set<String> redundant = new LinkedHashSet<>();
    private BigInteger covered = BigInteger.ZERO;
    private long states;
    private @Nullable Engine engine;

    TopicAudit(Topic<?> topic, RuleMeanings rules) {
        this.space = new WaySpace(topic, rules);
        this.topic = topic;
    }

    WaySpace space() {
        return space;
    }

    /** What is wrong with the topic, by kind and rule. */
    List<AuditFinding> findings() {
        if (!space.rules().isEmpty()) {
            neverFire();
            sayTheSame();
            outweighed();
            values();
            conflicts();
            impasses();
        }
        return List.copyOf(findings);
    }

    /** How much was gone through; to be asked after the findings. */
    Space size() {
        return new Space(
                topic, space.rules().size(), space.dimensions().size(), space.size(), covered, Math.toIntExact(states));
    }

    private void neverFire() {
        for (RuleMeaning rule : space.rules()) {
            if (space.ways(rule.id()).isEmpty()) {
                add(
                        FindingKind.NEVER_FIRES,
                        List.of(rule.id()),
                        List.of(),
                        Optional.empty(),
                        rule.types().map(Class::getSimpleName).toList());
            }
        }
    }

    private void sayTheSame() {
        for (RuleMeaning rule : space.rules()) {
            List<FiringWay> own = space.ways(rule.id());
            if (own.isEmpty()) {
                continue;
            }
            for (RuleMeaning other : space.rules()) {
                List<FiringWay> theirs = space.ways(other.id());
                if (other == rule || theirs.isEmpty() || !cover(theirs, own)) {
                    continue;
                }
                boolean twin = cover(own, theirs);
                if (!twin || rule.id().compareTo(other.id()) > 0) {
                    redundant.add(rule.id());
                    add(
                            twin ? FindingKind.DUPLICATE : FindingKind.SUBSUMED,
                            List.of(rule.id(), other.id()),
                            Term.keys(own.get(0).says().values()),
                            Optional.of(quiet(own.get(0).accepts())),
                            List.of());
                    break;
                }
            }
        }
    }

    private static boolean cover(List<FiringWay> more, List<FiringWay> less) {
        return less.stream().allMatch(way -> more.stream().anyMatch(wider -> wider.covers(way) && wider.saysAs(way)));
    }

    private void outweighed() {
        for (RuleMeaning rule : space.rules()) {
            List<FiringWay> own = space.ways(rule.id());
            if (own.isEmpty() || redundant.contains(rule.id()) || own.stream().anyMatch(this::matters)) {
                continue;
            }
            add(
                    FindingKind.ALWAYS_OUTWEIGHED,
                    List.of(rule.id()),
                    Term.keys(own.get(0).says().values()),
                    Optional.of(quiet(own.get(0).accepts())),
                    List.of());
        }
    }

    /** True when there is a combination whose outcome is another one without the rule. */
    private boolean matters(FiringWay way) {
        return subjects(way).anyMatch(subject -> {
            List<FiringWay> others = about(subject).stream()
                    .filter(other -> !other.id().equals(way.id())
                            && !redundant.contains(other.id())
                            && other.meets(way.accepts()))
                    .toList();
            return views(subject).differences().stream().anyMatch(view -> matters(way, others, view));
        });
    }

    private <S> boolean matters(FiringWay way, List<FiringWay> others, View<S> view) {
        if (!view.canChange(view.start(), way)) {
            return false;
        }
        List<FiringWay> counting =
                others.stream().filter(other -> view.countsBeside(way, other)).toList();
        return new Sweep<>(space, counting, way.accepts(), view.asLongAsChangedBy(way))
                .ends(kept -> view.changes(kept, way));
    }

    private OutcomeViews views(Subject subject) {
        return viewsBySubject.computeIfAbsent(subject, key -> new OutcomeViews(topic, key, about(key)));
    }

    private static List<FiringWay> demands(List<FiringWay> ways) {
        return ways.stream().filter(way -> !way.isWish()).toList();
    }

    /** Values that are reached, over the whole space. */
    private void values() {
        Set<String> reached = new LinkedHashSet<>();
        for (Subject subject : space.subjects()) {
            views(subject).values().forEach(view -> reached.addAll(reached(view, about(subject))));
        }
        for (Term value : topic.domain()) {
            if (!reached.contains(value.key())) {
                add(
                        FindingKind.UNREACHABLE_VALUE,
                        List.of(),
                        List.of(value.key()),
                        Optional.empty(),
                        space.ways().stream()
                                .filter(way -> way.says().kind() != ContributionKind.VETO
                                        && way.says().values().contains(value))
                                .map(FiringWay::id)
                                .distinct()
                                .toList());
            }
        }
    }

    private <S> Set<String> reached(View<S> view, List<FiringWay> ways) {
        List<FiringWay> counting = ways.stream().filter(view::isAbout).toList();
        Sweep<S> sweep = new Sweep<>(space, counting, Map.of(), view);
        List<Sweep.End<S>> ends = sweep.run();
        states += sweep.states();
        covered = ends.stream().map(Sweep.End::count).reduce(BigInteger.ZERO, BigInteger::add);
        return ends.stream().flatMap(end -> view.outcome(end.kept()).stream()).collect(Collectors.toSet());
    }

    private boolean closesWithoutValue() {
        return topic instanceof Choice<?> choice && Policy.of(choice).hasImpasse();
    }

    /** The smallest sets of rules that leave no value, none of whose cards declares what then. */
    private void conflicts() {
        if (!closesWithoutValue()) {
            return;
        }
        Map<Set<String>, List<FiringWay>> found = new LinkedHashMap<>();
        for (Subject subject : space.subjects()) {
            List<FiringWay> ways = demands(about(subject)).stream()
                    .filter(way -> !declared(way.rule().card()))
                    .toList();
            OutcomeViews views = views(subject);
            collect(ways, views, 0, views.all(), new ArrayList<>(), found);
        }
        found.forEach((rules, ways) -> {
            boolean demanded = ways.stream().anyMatch(way -> way.says().kind() == ContributionKind.NEED);
            add(
                    demanded ? FindingKind.UNDECLARED_CONFLICT : FindingKind.GAP,
                    List.copyOf(rules),
                    List.of(),
                    Optional.of(quiet(together(ways))),
                    List.of());
        });
    }

    private static boolean declared(Card card) {
        return !card.offers().isEmpty() || card.differs().isPresent();
    }

    private static void collect(
            List<FiringWay> ways,
            OutcomeViews views,
            int from,
            long left,
            List<FiringWay> chosen,
            Map<Set<String>, List<FiringWay>> found) {
        if (left == 0) {
            for (FiringWay without : chosen) {
                long rest = views.all();
                for (FiringWay way : chosen) {
                    rest &= way == without ? rest : views.permitted(way);
                }
                if (rest == 0) {
                    return;
                }
            }
            Set<String> ids = new TreeSet<>();
            chosen.forEach(way -> ids.add(way.id()));
            found.putIfAbsent(ids, List.copyOf(chosen));
            return;
        }
        for (int i = from; i < ways.size(); i++) {
            FiringWay way = ways.get(i);
            long less = left & views.permitted(way);
            if (less != left && way.meets(together(chosen))) {
                chosen.add(way);
                collect(ways, views, i + 1, less, chosen, found);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    /** The classes that all of some ways accept. */
    private static SortedMap<Integer, BitSet> together(List<FiringWay> ways) {
        SortedMap<Integer, BitSet> common = new TreeMap<>();
        for (FiringWay way : ways) {
            way.accepts()
                    .forEach((place, classes) -> common.merge(place, classes, (some, more) -> {
                        BitSet both = (BitSet) some.clone();
                        both.and(more);
                        return both;
                    }));
        }
        return common;
    }

    /** Only what blocks the plan is offered a way out. */
    private void impasses() {
        if (!closesWithoutValue() || !topic.isBlocking()) {
            return;
        }
        for (Subject subject : space.subjects()) {
            List<FiringWay> ways = demands(about(subject));
            List<FiringWay> silent = ways.stream().filter(way -> !offers(way)).toList();
            List<FiringWay> ordered = new ArrayList<>(silent);
            ways.stream().filter(this::offers).forEach(ordered::add);
            Optional<Sweep.End<OutcomeViews.Left>> impasse = new Sweep<>(
                            space,
                            ordered,
                            Map.of(),
                            new WithoutOffer(views(subject).allowed(), this::offers))
                    .run().stream().filter(end -> end.kept().allowed() == 0).findFirst();
            if (impasse.isPresent()) {
                List<Object> facts = space.facts(impasse.get().classes());
                add(
                        FindingKind.IMPASSE_WITHOUT_OFFER,
                        silent.stream()
                                .filter(way -> way.firesOn(impasse.get().classes()))
                                .map(FiringWay::id)
                                .distinct()
                                .sorted()
                                .toList(),
                        List.of(),
                        Optional.of(facts),
                        List.of(subject.key()));
            }
        }
    }

    private boolean offers(FiringWay way) {
        boolean testsStone = way.says().kind() == ContributionKind.VETO && !way.certain();
        return !way.rule().card().offers().isEmpty() || testsStone;
    }

    private List<FiringWay> about(Subject subject) {
        return space.ways().stream()
                .filter(way -> Runner.concerns(way.says(), subject))
                .toList();
    }

    private Stream<Subject> subjects(FiringWay way) {
        return space.subjects().stream().filter(subject -> Runner.concerns(way.says(), subject));
    }

    /** A combination within some classes in which as few other rules fire as going by one fact at a time finds. */
    private List<Object> quiet(Map<Integer, BitSet> only) {
        int[] classes = new int[space.dimensions().size()];
        for (int place = 0; place < classes.length; place++) {
            classes[place] = only.containsKey(place) ? only.get(place).nextSetBit(0) : 0;
        }
        boolean calmer = true;
        while (calmer) {
            calmer = false;
            long firing = firing(classes);
            for (int place = 0; place < classes.length; place++) {
                int before = classes[place];
                for (int index = 0;
                        index < space.dimensions().get(place).classes().size();
                        index++) {
                    if (only.containsKey(place) && !only.get(place).get(index)) {
                        continue;
                    }
                    classes[place] = index;
                    long fewer = firing(classes);
                    if (fewer < firing) {
                        firing = fewer;
                        before = index;
                        calmer = true;
                    }
                    classes[place] = before;
                }
            }
        }
        return space.facts(classes);
    }

    private long firing(int[] classes) {
        return space.ways().stream().filter(way -> way.firesOn(classes)).count();
    }

    /** Rules were read without an engine; on what shows a finding the engine must fire them too. */
    private void confirm(List<String> expected, List<Object> facts) {
        Engine built = engine;
        if (built == null) {
            built = new Engine(space.rules().stream().map(RuleMeaning::rule).toList());
            engine = built;
        }
        try (EngineRun run = built.start()) {
            facts.forEach(run::insert);
            Set<String> fired = run.fire(topic.stage()).stream()
                    .map(firing -> firing.card().id())
                    .collect(Collectors.toSet());
            if (!fired.containsAll(expected)) {
                throw new RulebaseException("The engine fires " + fired + " on " + facts + ", expected " + expected);
            }
        }
    }

    private void add(
            FindingKind kind,
            List<String> rules,
            List<String> values,
            Optional<List<Object>> facts,
            List<String> details) {
        facts.ifPresent(shown -> confirm(rules, shown));
        findings.add(new AuditFinding(
                kind,
                Optional.of(topic),
                rules,
                values,
                facts.orElse(List.of()).stream().map(Facts::matched).toList(),
                details,
                Optional.empty(),
                Optional.empty()));
    }

    /** Of no interest as soon as anything that offers a way out fires. */
    private record WithoutOffer(View<OutcomeViews.Left> allowed, Predicate<FiringWay> offers)
            implements Sweep.Tally<OutcomeViews.Left> {
        @Override
        public OutcomeViews.Left start() {
            return allowed.start();
        }

        @Override
        public Optional<OutcomeViews.Left> add(OutcomeViews.Left left, FiringWay way) {
            return offers.test(way) ? Optional.empty() : allowed.add(left, way);
        }

        /** What offers a way out counts even where nothing is left already. */
        @Override
        public boolean idle(OutcomeViews.Left left, FiringWay way) {
            return !offers.test(way) && allowed.idle(left, way);
        }
    }
}
