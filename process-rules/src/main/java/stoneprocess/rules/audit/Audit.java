package stoneprocess.rules.audit;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.CompiledRules;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;

/**
 * Looks for rules that disagree, repeat or never matter, for topics that cannot be closed, and for cards and numbers that
 * nothing bears out; in the shipped rulebase, in that as a house changed it, or in any rules.
 *
 * <p>Each topic is looked at separately, over every combination of the facts that its rules read, none left out: facts of
 * a class are alike in which rules fire, in what these say, and, where the topic minds it, in whether they are known.
 * Combinations that end alike are counted together, so that a topic of more than a million of them is split wherever
 * no rule joins its facts, values that stand or fall by themselves are looked at one by one, and no count is estimated.
 * What one topic's outcome does to the facts of the next is not combined: the product over all stages is told, so that
 * the share can be.
 *
 * <p>Where a survey can show a finding, one is searched for, made small, and answered by the engine; the finding stands
 * whether or not one is found. Immutable and safe to share between threads.
 */
public final class Audit {
    private static final long SEED = 1;

    private final RuleMeanings rules;
    private final RuleMeanings sound;
    private final List<CompiledRules.Misshapen> misshapen;
    private final Parameters parameters;
    private final RulebaseStamp stamp;
    private final Function<FloorSurvey, Recommendation> answers;

    private Audit(
            RuleMeanings rules,
            RuleMeanings sound,
            List<CompiledRules.Misshapen> misshapen,
            Parameters parameters,
            RulebaseStamp stamp,
            Function<FloorSurvey, Recommendation> answers) {
        this.rules = rules;
        this.sound = sound;
        this.misshapen = misshapen;
        this.parameters = parameters;
        this.stamp = stamp;
        this.answers = answers;
    }

    /** An audit of the rulebase of an advisor, overlay included. */
    public static Audit of(Advisor advisor) {
        Rulebase rulebase = advisor.rulebase();
        RuleMeanings rules = RuleMeanings.of(ShippedRules.of(rulebase.cards()));
        return new Audit(rules, rules.sound(), List.of(), rulebase.parameters(), rulebase.stamp(), advisor::recommend);
    }

    /** An audit of any rules with any numbers; surveys are answered over the usual sequence. */
    static Audit of(CompiledRules compiled, Parameters parameters) {
        RuleMeanings rules = RuleMeanings.of(compiled.flat());
        RuleMeanings sound = rules.sound();
        RulebaseStamp stamp = new RulebaseStamp("unreleased", "unstamped", List.of(), List.of());
        Engine engine = new Engine(sound.rules());
        return new Audit(rules, sound, compiled.misshapen(), parameters, stamp, survey -> {
            Situation situation = new Situation(survey, parameters, GritSequence.standard());
            Run run = Runner.run(engine::start, Program.RECOMMEND, situation, List.of(), UnaryOperator.identity());
            return Assembler.assemble(run, sound.rules(), stamp);
        });
    }

    /**
     * Audits.
     *
     * @param depth which topics
     * @param progress is told of each topic
     * @return what was found, each finding with its explanation where the library ships one; never null
     * @throws stoneprocess.core.problem.RulebaseException when the facts of a topic are so entangled that they
     *     cannot be gone through
     */
    public AuditReport run(AuditDepth depth, AuditProgress progress) {
        List<Topic<?>> topics = Topics.all().stream()
                .filter(topic ->
                        depth == AuditDepth.WHOLE || Program.RECOMMEND.stages().contains(topic.stage()))
                .toList();
        return run(topics, progress);
    }

    /** Audits some topics. */
    AuditReport run(List<Topic<?>> topics, AuditProgress progress) {
        List<AuditFinding> findings = new ArrayList<>(shapes(topics));
        List<AuditReport.Space> spaces = new ArrayList<>();
        Witnesses witnesses = new Witnesses(answers, sound, parameters, SEED);
        Explained explained = Explained.shipped();
        for (Topic<?> topic : topics) {
            TopicAudit audit = new TopicAudit(topic, sound);
            List<AuditFinding> found = new ArrayList<>(audit.findings());
            spaces.add(audit.size());
            found.addAll(cards(topic, audit.space()));
            found.addAll(ownStage(audit.space().rules()));
            found.forEach(finding -> findings.add(witnesses.show(finding)));
            progress.done(
                    topic,
                    spaces.size(),
                    topics.size(),
                    spaces.get(spaces.size() - 1).combinations());
        }
        findings.addAll(unused(parameters.all()));
        findings.addAll(unread(rules));
        List<Topic<?>> order = Topics.all();
        List<AuditFinding> sorted = findings.stream()
                .sorted(Comparator.comparing((AuditFinding finding) ->
                                finding.topic().map(order::indexOf).orElse(-1))
                        .thenComparing(AuditFinding::kind)
                        .thenComparing(finding -> String.join(" ", finding.rules()))
                        .thenComparing(finding -> String.join(" ", finding.values())))
                .map(explained::explain)
                .toList();
        return new AuditReport(stamp, spaces, acrossStages(topics), sorted);
    }

    private List<AuditFinding> shapes(List<Topic<?>> topics) {
        Set<Topic<?>> audited = Set.copyOf(topics);
        List<AuditFinding> findings = new ArrayList<>();
        misshapen.stream()
                .filter(rule -> audited.contains(rule.card().topic()))
                .forEach(rule -> findings.add(plain(FindingKind.FORBIDDEN_SHAPE, rule.card(), rule.shapes())));
        for (RuleMeaning rule : rules.all()) {
            List<String> forbidden = rule.forbidden();
            if (audited.contains(rule.card().topic()) && !forbidden.isEmpty()) {
                findings.add(plain(FindingKind.FORBIDDEN_SHAPE, rule.card(), forbidden));
            }
        }
        return findings;
    }

    private List<AuditFinding> cards(Topic<?> topic, WaySpace space) {
        Set<String> ids = new HashSet<>();
        rules.all().forEach(rule -> ids.add(rule.id()));
        misshapen.forEach(rule -> ids.add(rule.card().id()));
        CardAudit cards = new CardAudit(ids, parameters, Rulebase.version());
        List<AuditFinding> findings = new ArrayList<>();
        for (RuleMeaning rule : space.rules()) {
            List<String> stale = cards.stale(rule.card(), space.ways(rule.id()));
            if (!stale.isEmpty()) {
                findings.add(plain(FindingKind.STALE_CARD, rule.card(), stale));
            }
        }
        return findings;
    }

    private static List<AuditFinding> ownStage(List<RuleMeaning> rules) {
        List<AuditFinding> findings = new ArrayList<>();
        for (RuleMeaning rule : rules) {
            Stage own = rule.topic().stage();
            List<String> early = rule.types()
                    .filter(type -> Facts.topics(type).stream()
                            .anyMatch(topic -> topic.stage().compareTo(own) >= 0))
                    .map(Class::getSimpleName)
                    .toList();
            if (!early.isEmpty()) {
                findings.add(plain(FindingKind.READS_OWN_STAGE, rule.card(), early));
            }
        }
        return findings;
    }

    /** Numbers that nothing reads. */
    static List<AuditFinding> unused(Collection<Parameter> numbers) {
        ParameterUse use = ParameterUse.ofLibrary();
        return numbers.stream()
                .map(Parameter::name)
                .filter(name -> !use.reads(name))
                .map(name -> named(FindingKind.UNUSED_PARAMETER, name))
                .toList();
    }

    /** Fields of a survey and kinds of damage whose answers none of the rules reads, directly or through a fact. */
    static List<AuditFinding> unread(RuleMeanings rules) {
        Set<String> read = rules.all().stream().flatMap(RuleMeaning::fields).collect(Collectors.toSet());
        return Facts.surveyNames().stream()
                .filter(name -> !read.contains(name))
                .map(name -> named(FindingKind.UNREAD_FIELD, name))
                .toList();
    }

    private static AuditFinding named(FindingKind kind, String name) {
        return new AuditFinding(
                kind,
                Optional.empty(),
                List.of(),
                List.of(name),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static AuditFinding plain(FindingKind kind, Card card, List<String> details) {
        return new AuditFinding(
                kind,
                Optional.of(card.topic()),
                List.of(card.id()),
                List.of(),
                List.of(),
                details,
                Optional.empty(),
                Optional.empty());
    }

    /** How many combinations there would be if the facts of all topics were combined. */
    private BigInteger acrossStages(List<Topic<?>> topics) {
        Map<Class<?>, List<FactPattern>> byType = sound.all().stream()
                .filter(rule -> topics.contains(rule.topic()))
                .flatMap(rule -> rule.conditions().stream())
                .collect(Collectors.groupingBy(FactPattern::type));
        BigInteger product = BigInteger.ONE;
        for (Map.Entry<Class<?>, List<FactPattern>> read : byType.entrySet()) {
            Map<String, Set<List<Boolean>>> classes = new HashMap<>();
            for (Object fact : Facts.space(read.getKey())) {
                classes.computeIfAbsent(Facts.name(fact), name -> new HashSet<>())
                        .add(read.getValue().stream()
                                .map(condition -> condition.matches(fact))
                                .toList());
            }
            for (Set<List<Boolean>> told : classes.values()) {
                product = product.multiply(BigInteger.valueOf(told.size()));
            }
        }
        return product;
    }
}
