package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.rules.decide.Policy;
import stoneprocess.rules.decide.Ranked;
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
                topic.id(),
                space.rules().size(),
                space.dimensions().size(),
                space.size(),
                covered,
                Math.toIntExact(states));
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
            List<Way> own = space.ways(rule.id());
            if (own.isEmpty()) {
                continue;
            }
            for (RuleMeaning other : space.rules()) {
                List<Way> theirs = space.ways(other.id());
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

    private static boolean cover(List<Way> more, List<Way> less) {
        return less.stream().allMatch(way -> more.stream().anyMatch(wider -> wider.covers(way) && wider.saysAs(way)));
    }

    private void outweighed() {
        for (RuleMeaning rule : space.rules()) {
            List<Way> own = space.ways(rule.id());
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
    private boolean matters(Way way) {
        return subjects(way).anyMatch(subject -> {
            List<Way> others = about(subject).stream()
                    .filter(other ->
                            !other.id().equals(way.id()) && !redundant.contains(other.id()) && other.meets(way))
                    .toList();
            Tallies tallies = new Tallies(topic, about(subject));
            return switch (topic.policy()) {
                case PRECEDENCE -> mattersFirst(way, others, tallies);
                case ALL -> topic.domain().stream().anyMatch(value -> mattersTo(value, way, others, tallies));
                case RANKED ->
                    topic.domain().stream()
                            .anyMatch(value ->
                                    mattersTo(value, way, others, tallies) || mattersToRank(value, way, others));
                case ONE, REMAINS, FEWEST_CHANGES -> mattersToValues(way, others, tallies);
                default -> true;
            };
        });
    }

    private boolean mattersFirst(Way way, List<Way> others, Tallies tallies) {
        int own = tallies.asked(way);
        if (own == topic.domain().size() - 1) {
            return false;
        }
        List<Way> stronger =
                others.stream().filter(other -> tallies.asked(other) <= own).toList();
        return isPossible(way, stronger);
    }

    /** True when the way fires in a combination in which none of the others does. */
    private boolean isPossible(Way way, List<Way> without) {
        return !new Sweep<>(space, without, way.accepts(), new Without()).run().isEmpty();
    }

    private boolean mattersTo(Term value, Way way, List<Way> others, Tallies tallies) {
        if (tallies.asks(way, value)) {
            return isPossible(
                    way,
                    others.stream()
                            .filter(other -> tallies.asks(other, value) || tallies.excludes(other, value))
                            .toList());
        }
        if (!tallies.excludes(way, value)) {
            return false;
        }
        return new Sweep<>(space, others, way.accepts(), tallies.value(value))
                .run().stream().anyMatch(end -> end.kept().stands());
    }

    /** What is suggested oftener comes first: two values at a time, each rank is one difference. */
    private boolean mattersToRank(Term value, Way way, List<Way> others) {
        int own = weight(way, value);
        if (own == 0) {
            return false;
        }
        for (Term rival : topic.domain()) {
            if (rival.equals(value)) {
                continue;
            }
            int more = own - weight(way, rival);
            List<Way> weighing = others.stream()
                    .filter(other -> weight(other, value) != 0
                            || weight(other, rival) != 0
                            || other.excludes(value)
                            || other.excludes(rival))
                    .toList();
            boolean first = topic.domain().indexOf(value) < topic.domain().indexOf(rival);
            boolean changes = new Sweep<>(space, weighing, way.accepts(), new Rivals(value, rival))
                    .run().stream()
                            .filter(end -> end.kept().rivalAsked())
                            .anyMatch(end -> ahead(end.kept().lead(), first)
                                    != ahead(end.kept().lead() + more, first));
            if (changes) {
                return true;
            }
        }
        return false;
    }

    private static boolean ahead(int lead, boolean first) {
        return first ? lead >= 0 : lead > 0;
    }

    private static int weight(Way way, Term value) {
        int rank = way.isWish() ? way.says().values().indexOf(value) : -1;
        return rank < 0 ? 0 : Ranked.weight(rank, way.rule().conditions().size());
    }

    private boolean mattersToValues(Way way, List<Way> others, Tallies tallies) {
        if (topic.policy() == PolicyKind.FEWEST_CHANGES && way.isWish()) {
            long wanted = 1L << topic.domain().indexOf(way.says().values().get(0));
            return new Sweep<>(space, demands(others), way.accepts(), tallies.values())
                    .run().stream()
                            .anyMatch(end -> (end.kept().allowed() & wanted) != 0
                                    && end.kept().allowed() != wanted);
        }
        if (topic.policy() != PolicyKind.ONE) {
            long left = tallies.permitted(way);
            return new Sweep<>(space, demands(others), way.accepts(), tallies.values())
                    .run().stream().anyMatch(end -> (end.kept().allowed() & ~left) != 0);
        }
        return new Sweep<>(space, others, way.accepts(), tallies.values())
                .run().stream()
                        .anyMatch(end ->
                                !tallies.outcome(end.kept()).equals(tallies.outcome(tallies.with(end.kept(), way))));
    }

    private static List<Way> demands(List<Way> ways) {
        return ways.stream().filter(way -> !way.isWish()).toList();
    }

    /** Values that are reached, over the whole space. */
    private void values() {
        Set<Term> reached = new LinkedHashSet<>();
        for (Subject subject : space.subjects()) {
            List<Way> ways = about(subject);
            Tallies tallies = new Tallies(topic, ways);
            switch (topic.policy()) {
                case PRECEDENCE ->
                    ends(ways, tallies.first())
                            .forEach(end -> reached.add(topic.domain().get(end.kept())));
                case ALL, RANKED -> {
                    for (Term value : topic.domain()) {
                        List<Way> speaking = ways.stream()
                                .filter(way -> tallies.asks(way, value) || tallies.excludes(way, value))
                                .toList();
                        if (ends(speaking, tallies.value(value)).stream()
                                .anyMatch(end -> end.kept().stands())) {
                            reached.add(value);
                        }
                    }
                }
                case ONE, REMAINS, FEWEST_CHANGES ->
                    ends(ways, tallies.values())
                            .forEach(end -> tallies.outcome(end.kept())
                                    .forEach(place -> reached.add(topic.domain().get(place))));
                default -> reached.addAll(topic.domain());
            }
        }
        for (Term value : topic.domain()) {
            if (!reached.contains(value)) {
                add(
                        FindingKind.UNREACHABLE_VALUE,
                        List.of(),
                        List.of(value.key()),
                        Optional.empty(),
                        space.ways().stream()
                                .filter(way -> way.says().kind() != ContributionKind.VETO
                                        && way.says().values().contains(value))
                                .map(Way::id)
                                .distinct()
                                .toList());
            }
        }
    }

    private <S> List<Sweep.End<S>> ends(List<Way> ways, Sweep.Tally<S> tally) {
        Sweep<S> sweep = new Sweep<>(space, ways, Map.of(), tally);
        List<Sweep.End<S>> ends = sweep.run();
        states += sweep.states();
        covered = ends.stream().map(Sweep.End::count).reduce(BigInteger.ZERO, BigInteger::add);
        return ends;
    }

    private boolean closesWithoutValue() {
        return topic instanceof Choice<?> choice && Policy.of(choice).hasImpasse();
    }

    /** The smallest sets of rules that leave no value, none of whose cards declares what then. */
    private void conflicts() {
        if (!closesWithoutValue()) {
            return;
        }
        Map<Set<String>, List<Way>> found = new LinkedHashMap<>();
        for (Subject subject : space.subjects()) {
            List<Way> ways = demands(about(subject)).stream()
                    .filter(way -> !declared(way.rule().card()))
                    .toList();
            Tallies tallies = new Tallies(topic, ways);
            collect(ways, tallies, 0, tallies.all(), new ArrayList<>(), found);
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
            List<Way> ways, Tallies tallies, int from, long left, List<Way> chosen, Map<Set<String>, List<Way>> found) {
        if (left == 0) {
            for (Way one : chosen) {
                long rest = tallies.all();
                for (Way other : chosen) {
                    rest &= other == one ? tallies.all() : tallies.permitted(other);
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
            Way way = ways.get(i);
            long less = left & tallies.permitted(way);
            if (less != left && fits(together(chosen), way)) {
                chosen.add(way);
                collect(ways, tallies, i + 1, less, chosen, found);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    private static boolean fits(Map<Integer, BitSet> narrowed, Way way) {
        return way.accepts().entrySet().stream()
                .allMatch(entry -> !narrowed.containsKey(entry.getKey())
                        || narrowed.get(entry.getKey()).intersects(entry.getValue()));
    }

    private static Map<Integer, BitSet> together(List<Way> ways) {
        Map<Integer, BitSet> both = new TreeMap<>();
        for (Way way : ways) {
            way.accepts()
                    .forEach((place, classes) -> both.merge(place, (BitSet) classes.clone(), (one, other) -> {
                        BitSet and = (BitSet) one.clone();
                        and.and(other);
                        return and;
                    }));
        }
        return both;
    }

    /** Only what blocks the plan is offered a way out. */
    private void impasses() {
        if (!closesWithoutValue() || !topic.isBlocking()) {
            return;
        }
        for (Subject subject : space.subjects()) {
            List<Way> ways = demands(about(subject));
            Tallies tallies = new Tallies(topic, ways);
            List<Way> silent = ways.stream().filter(way -> !offers(way)).toList();
            List<Way> offering = ways.stream().filter(this::offers).toList();
            List<Way> ordered = new ArrayList<>(silent);
            ordered.addAll(offering);
            List<Sweep.End<Tallies.Kept>> ends =
                    new Sweep<>(space, ordered, Map.of(), new WithoutOffer(tallies, this::offers)).run();
            Optional<Sweep.End<Tallies.Kept>> impasse =
                    ends.stream().filter(end -> end.kept().allowed() == 0).findFirst();
            if (impasse.isPresent()) {
                List<Object> facts = space.facts(impasse.get().classes());
                add(
                        FindingKind.IMPASSE_WITHOUT_OFFER,
                        silent.stream()
                                .filter(way -> fires(way, impasse.get().classes()))
                                .map(Way::id)
                                .distinct()
                                .sorted()
                                .toList(),
                        List.of(),
                        Optional.of(facts),
                        List.of(subject.key()));
            }
        }
    }

    private boolean offers(Way way) {
        boolean testsStone = way.says().kind() == ContributionKind.VETO && !way.certain();
        return !way.rule().card().offers().isEmpty() || testsStone;
    }

    private static boolean fires(Way way, int[] classes) {
        return way.accepts().entrySet().stream()
                .allMatch(entry -> entry.getValue().get(classes[entry.getKey()]));
    }

    private List<Way> about(Subject subject) {
        return space.ways().stream()
                .filter(way -> Runner.concerns(way.says(), subject))
                .toList();
    }

    private Stream<Subject> subjects(Way way) {
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
                for (int one = 0; one < space.dimensions().get(place).classes().size(); one++) {
                    if (only.containsKey(place) && !only.get(place).get(one)) {
                        continue;
                    }
                    classes[place] = one;
                    long fewer = firing(classes);
                    if (fewer < firing) {
                        firing = fewer;
                        before = one;
                        calmer = true;
                    }
                    classes[place] = before;
                }
            }
        }
        return space.facts(classes);
    }

    private long firing(int[] classes) {
        return space.ways().stream().filter(way -> fires(way, classes)).count();
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
                topic.id(),
                rules,
                values,
                facts.orElse(List.of()).stream().map(Facts::matched).toList(),
                details,
                Optional.empty(),
                Optional.empty()));
    }

    /** Of no interest as soon as anything is said. */
    private static final class Without implements Sweep.Tally<Boolean> {
        @Override
        public Boolean start() {
            return true;
        }

        @Override
        public Optional<Boolean> add(Boolean kept, Way way) {
            return Optional.empty();
        }

        @Override
        public boolean idle(Boolean kept, Way way) {
            return false;
        }
    }

    /**
     * How far one value is ahead of another.
     *
     * @param lead what speaks for the one, less what speaks for the other
     * @param rivalAsked true when the other is asked for at all
     */
    private record Lead(int lead, boolean rivalAsked) {}

    private record Rivals(Term value, Term rival) implements Sweep.Tally<Lead> {
        @Override
        public Lead start() {
            return new Lead(0, false);
        }

        @Override
        public Optional<Lead> add(Lead kept, Way way) {
            if (way.excludes(value) || way.excludes(rival)) {
                return Optional.empty();
            }
            return Optional.of(new Lead(
                    kept.lead() + weight(way, value) - weight(way, rival),
                    kept.rivalAsked() || weight(way, rival) > 0));
        }

        @Override
        public boolean idle(Lead kept, Way way) {
            return false;
        }
    }

    private record WithoutOffer(Tallies tallies, Predicate<Way> offers) implements Sweep.Tally<Tallies.Kept> {
        @Override
        public Tallies.Kept start() {
            return tallies.values().start();
        }

        @Override
        public Optional<Tallies.Kept> add(Tallies.Kept kept, Way way) {
            return offers.test(way) ? Optional.empty() : Optional.of(tallies.with(kept, way));
        }

        @Override
        public boolean idle(Tallies.Kept kept, Way way) {
            return !offers.test(way) && tallies.with(kept, way).equals(kept);
        }
    }
}
