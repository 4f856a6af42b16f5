package stoneprocess.rules.internal.assemble;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.Question;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Run;

/**
 * What nobody knows yet and the rules asked for. A rule took the cautious reading when it matched a fact that is not
 * known; a rule is waiting when only a fact that is not known keeps it from firing, and no rule waits to tell what a
 * stone is that is known already. What could stop the work comes first, then what holds it, of these what needs no
 * laboratory, then the earlier stages, then what touches more topics.
 */
final class Questions {
    private static final double SHARE_OF_NOTHING = 0.01;

    /** What is asked again, on a scraped spot, where name and tests contradict each other. */
    private static final Set<String> CONTRADICTED =
            Set.of(SurveyField.STONE_NAME.name(), SurveyField.ACID_DROP.name(), SurveyField.SCRIBER.name());

    private static final class Draft {
        private final Set<String> cautious = new LinkedHashSet<>();
        private final Set<String> waiting = new LinkedHashSet<>();
        private final Set<Topic<?>> topics = new LinkedHashSet<>();
        private boolean stops;
        private boolean holds;
    }

    private final Map<String, Draft> drafts = new LinkedHashMap<>();
    private final Run run;

    private final Map<Class<?>, List<Object>> factsByType;
    private final Set<Topic<?>> reached;
    private final Map<String, Boolean> unanswered = new HashMap<>();

    private Questions(Run run) {
        this.run = run;
        this.factsByType = run.facts().stream().collect(Collectors.groupingBy(Object::getClass));
        this.reached = run.outcomes().stream().map(Outcome::topic).collect(Collectors.toSet());
        // The order of the survey form breaks ties.
        Facts.surveyNames().forEach(name -> drafts.put(name, new Draft()));
        drafts.put(Facts.READINGS, new Draft());
    }

    static List<Question> of(Run run, List<LoadedRule> rules) {
        Questions questions = new Questions(run);
        run.outcomes().forEach(questions::cautiousReadings);
        rules.forEach(questions::waiting);
        return questions.ranked();
    }

    private void cautiousReadings(Outcome outcome) {
        for (Reason reason : outcome.reasons()) {
            reason.facts().stream()
                    .filter(fact -> !fact.known())
                    .forEach(fact -> askedFor(fact, outcome).forEach(field -> {
                        Draft draft = drafts.get(field);
                        draft.cautious.add(reason.rule());
                        draft.topics.add(outcome.topic());
                        draft.stops |= reason.values().contains(Verdict.REFUSE);
                        draft.holds |= outcome instanceof Impasse<?> || outcome.topic() == Topics.VERDICT;
                    }));
        }
    }

    /** The unanswered fields behind a fact; where all are answered and the stone still holds or stops a plan, its name. */
    private Stream<String> askedFor(MatchedFact fact, Outcome outcome) {
        List<String> fields = unknownFields(fact).toList();
        boolean closerName = fields.isEmpty()
                && (outcome instanceof Impasse<?> || outcome.topic() == Topics.VERDICT)
                && run.situation().values(Topics.STONE).size() > 1
                && fact.topics().contains(Topics.STONE);
        return closerName ? Stream.of(SurveyField.STONE_NAME.name()) : fields.stream();
    }

    /** The unanswered fields behind a fact; a trait of the stone goes back to the questions that identify it. */
    private Stream<String> unknownFields(MatchedFact fact) {
        Stream<String> identifying = fact.topics().contains(Topics.STONE)
                ? Stream.of(SurveyField.STONE_NAME, SurveyField.ACID_DROP, SurveyField.SCRIBER, SurveyField.COLOUR)
                        .map(SurveyField::name)
                : Stream.empty();
        return Stream.concat(fact.fields().stream(), identifying).distinct().filter(this::unanswered);
    }

    private boolean unanswered(String field) {
        return unanswered.computeIfAbsent(field, this::isUnanswered);
    }

    private boolean isUnanswered(String field) {
        Optional<DamageKind> damage = Facts.damage(field);
        if (damage.filter(this::isNowhere).isPresent()) {
            return false;
        }
        if (CONTRADICTED.contains(field)
                && run.situation().decision(Topics.STONE, Subject.FLOOR).isEmpty()) {
            return true;
        }
        if (damage.isPresent() || field.equals(Facts.READINGS)) {
            return run.facts().stream()
                    .filter(fact -> fact instanceof Feature<?> feature
                            && feature.mayBe().size() > 1)
                    .anyMatch(fact -> Facts.fields(fact.getClass()).contains(field));
        }
        return !run.situation().survey().answer(SurveyField.named(field)).isKnown();
    }

    /** True where the kind was looked for all over the floor and not found. */
    private boolean isNowhere(DamageKind kind) {
        List<Zone> zones = run.situation().survey().zones();
        double looked = zones.stream()
                .filter(zone -> zone.damage(kind)
                        .value()
                        .filter(Damage.none(kind)::equals)
                        .isPresent())
                .mapToDouble(zone -> zone.share().percent())
                .sum();
        return looked > 100 - SHARE_OF_NOTHING;
    }

    /** A rule whose conditions all hold but for facts that are not known, and that a known answer could meet. */
    private void waiting(LoadedRule rule) {
        boolean settled = rule.card().topic() == Topics.STONE
                && run.situation().values(Topics.STONE).size() == 1;
        if (settled || !reached.contains(rule.card().topic())) {
            return;
        }
        List<Object> missing = new ArrayList<>();
        for (FactPattern condition : rule.conditions()) {
            List<Object> candidates = factsByType.getOrDefault(condition.type(), List.of());
            if (candidates.stream().anyMatch(condition::matches)) {
                continue;
            }
            Optional<Object> unknown = candidates.stream()
                    .filter(fact -> fact instanceof Feature<?> feature
                            && feature.mayBe().size() > 1)
                    .filter(fact -> couldMeet(condition, fact))
                    .findFirst();
            if (unknown.isEmpty()) {
                return;
            }
            missing.add(unknown.get());
        }
        for (Object fact : missing) {
            unknownFields(Facts.matched(fact)).forEach(field -> {
                Draft draft = drafts.get(field);
                draft.waiting.add(rule.id());
                draft.topics.add(rule.card().topic());
            });
        }
    }

    private static boolean couldMeet(FactPattern condition, Object fact) {
        Set<?> possible = ((Feature<?>) fact).mayBe();
        return condition.accepted().stream()
                .map(accepted -> ((Feature<?>) accepted).mayBe())
                .anyMatch(classes -> classes.size() == 1 && possible.containsAll(classes));
    }

    private List<Question> ranked() {
        Comparator<Map.Entry<String, Draft>> order = Comparator.comparing(
                        (Map.Entry<String, Draft> entry) -> !entry.getValue().stops)
                .thenComparing(entry -> !entry.getValue().holds)
                .thenComparing(entry -> needsLaboratory(entry.getKey()))
                .thenComparing(entry -> firstStage(entry.getValue()))
                .thenComparing(entry -> -entry.getValue().topics.size());
        return drafts.entrySet().stream()
                .filter(entry -> !entry.getValue().topics.isEmpty())
                .sorted(order)
                .map(entry -> new Question(
                        entry.getKey(),
                        entry.getValue().cautious.stream().sorted().toList(),
                        entry.getValue().waiting.stream().sorted().toList(),
                        inTableOrder(entry.getValue().topics)))
                .toList();
    }

    /** What can be seen, tapped or asked on the floor comes before a sample. */
    private static boolean needsLaboratory(String field) {
        return SurveyField.all().stream()
                .anyMatch(known -> known.name().equals(field) && known.howFound() == HowFound.LABORATORY);
    }

    private static int firstStage(Draft draft) {
        return draft.topics.stream()
                .mapToInt(topic -> topic.stage().ordinal())
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    private static List<Topic<?>> inTableOrder(Set<Topic<?>> topics) {
        return Topics.all().stream().filter(topics::contains).toList();
    }
}
