package stoneprocess.rules.internal.assemble;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Question;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FibreRisk;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Damp;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.feature.BuildUp;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Run;

/**
 * What nobody knows yet and the rules asked for. A rule took the cautious reading when it matched a fact that is not
 * known; a rule is waiting when only a fact that is not known keeps it from firing, and no rule waits to tell what a
 * stone is that is known already. What could stop the work comes first, then what holds it, then what decides how the
 * floor is cut; of these what needs no laboratory, then the earlier stages, then what touches more topics. A refused
 * floor is asked only what could lift or deepen the refusal, and what holds it and is a hazard besides or tells the
 * stone; a stone refused for its fibres is neither scraped nor scratched to find out more, and no laboratory is asked
 * for while nobody has looked at the colour. Where the meter reads dry nobody is asked where moisture comes from.
 */
final class Questions {
    private static final double SHARE_OF_NOTHING = 0.01;

    /** What is asked again, on a scraped spot, where name and tests contradict each other. */
    private static final Set<String> CONTRADICTED =
            Set.of(SurveyField.STONE_NAME.name(), SurveyField.ACID_DROP.name(), SurveyField.SCRIBER.name());

    /** What is asked only once the answer that may make it needless is there. */
    private static final Map<String, String> AFTER = Map.of(
            SurveyField.FROST.name(), SurveyField.SETTING.name(),
            SurveyField.CONSENT.name(), SurveyField.HISTORIC.name(),
            SurveyField.LOAD_CONFIRMED.name(), SurveyField.STRUCTURE.name(),
            SurveyField.FLOOR_LOAD.name(), SurveyField.STRUCTURE.name(),
            SurveyField.TREATED_AGO.name(), SurveyField.LAST_TREATMENT.name(),
            SurveyField.MIXED_CHOICE.name(), SurveyField.MIX.name(),
            SurveyField.STRIP_LEVEL.name(), SurveyField.STRIPS.name(),
            SurveyField.CRACK_HARM.name(), Facts.damage(DamageKind.CRACKS));

    /** What an acid cleaner does to stone that acid attacks. */
    private static final Set<DamageKind> ACID_MARKS =
            EnumSet.of(DamageKind.ETCHES, DamageKind.WEAR, DamageKind.FLAKING);

    /** Tests that break the surface. */
    private static final Set<String> SCRAPES = Set.of(SurveyField.ACID_DROP.name(), SurveyField.SCRIBER.name());

    private static final Set<String> OF_THE_LABORATORY = SurveyField.all().stream()
            .filter(field -> field.howFound() == HowFound.LABORATORY)
            .map(SurveyField::name)
            .collect(Collectors.toUnmodifiableSet());

    private static final class Draft {
        private final Set<String> cautious = new TreeSet<>();
        private final Set<String> waiting = new TreeSet<>();
        private final Set<Topic<?>> topics = new HashSet<>();
        private int firstStage = Integer.MAX_VALUE;
        private boolean stops;
        private boolean holds;

        void touches(Topic<?> topic) {
            topics.add(topic);
            firstStage = Math.min(firstStage, topic.stage().ordinal());
        }

        boolean bearsOnRefusal(String field) {
            return stops || holds && (topics.contains(Topics.WARNINGS) || field.startsWith("stone."));
        }
    }

    private final Map<String, Draft> drafts = new LinkedHashMap<>();
    private final Run run;

    /** Rules that hold the work for answers that contradict each other, where it is on hold; each answer is asked again. */
    private final Set<String> lookAgain = new HashSet<>();

    private final Map<Class<?>, List<Object>> factsByType = new HashMap<>();
    private final Set<Topic<?>> reached = new HashSet<>();

    /** Types of the facts that are not known, and the fields behind them. */
    private final Set<Class<?>> unknownTypes = new HashSet<>();

    private final Set<String> unsettled = new HashSet<>();

    private final Map<String, Boolean> unanswered = new HashMap<>();

    /** What is not answered behind a fact that a rule could match, or behind what a decision record keeps of one. */
    private final Map<Object, List<String>> unknownFields = new IdentityHashMap<>();

    private Questions(Run run) {
        this.run = run;
        for (Object fact : run.facts()) {
            factsByType
                    .computeIfAbsent(fact.getClass(), type -> new ArrayList<>(1))
                    .add(fact);
            if (isUnknown(fact)) {
                unknownTypes.add(fact.getClass());
                unsettled.addAll(Facts.fields(fact.getClass()));
            }
        }
        run.outcomes().forEach(outcome -> reached.add(outcome.topic()));
        // The order of the survey form breaks ties.
        Facts.surveyNames().forEach(name -> drafts.put(name, new Draft()));
        drafts.put(Facts.READINGS, new Draft());
    }

    static List<Question> of(Run run, List<LoadedRule> rules) {
        Questions questions = new Questions(run);
        if (run.situation().values(Topics.VERDICT).contains(Verdict.HOLD)) {
            rules.stream()
                    .filter(rule -> rule.card().offers().contains(OfferKind.LOOK_AGAIN.name()))
                    .forEach(rule -> questions.lookAgain.add(rule.id()));
        }
        run.outcomes().forEach(questions::cautiousReadings);
        rules.forEach(questions::waiting);
        return questions.ranked();
    }

    private void cautiousReadings(Outcome outcome) {
        boolean stoneDecided =
                run.situation().decision(Topics.STONE, Subject.FLOOR).isPresent();
        for (Reason reason : outcome.reasons()) {
            for (MatchedFact fact : reason.facts()) {
                // Where it is decided what the stone is, only the answers beside it are looked at again.
                boolean again = lookAgain.contains(reason.rule())
                        && (!stoneDecided
                                || !fact.topics().contains(Topics.STONE)
                                || fact.fields().contains(Facts.READINGS));
                if (fact.known() && !again) {
                    continue;
                }
                for (String field : again ? fact.fields() : askedFor(fact, outcome)) {
                    Draft draft = drafts.get(field);
                    draft.cautious.add(reason.rule());
                    draft.touches(outcome.topic());
                    draft.stops |= reason.values().contains(Verdict.REFUSE);
                    draft.holds |= outcome instanceof Impasse<?> || outcome.topic() == Topics.VERDICT;
                }
            }
        }
    }

    /** The unanswered fields behind a fact; where all are answered and the stone still holds or blocks a plan, its name. */
    private List<String> askedFor(MatchedFact fact, Outcome outcome) {
        List<String> fields = unknownFields.computeIfAbsent(fact, key -> unknownFields(fact));
        boolean held = run.situation().values(Topics.VERDICT).contains(Verdict.HOLD);
        boolean closerName = fields.isEmpty()
                && (outcome instanceof Impasse<?> || outcome.topic() == Topics.VERDICT && held)
                && fact.topics().contains(Topics.STONE);
        return closerName ? List.of(SurveyField.STONE_NAME.name()) : fields;
    }

    /** The unanswered fields behind a fact; a trait of the stone goes back to the questions that identify it. */
    private List<String> unknownFields(MatchedFact fact) {
        Stream<String> identifying = fact.topics().contains(Topics.STONE)
                ? Stream.of(SurveyField.STONE_NAME, SurveyField.ACID_DROP, SurveyField.SCRIBER, SurveyField.COLOUR)
                        .map(SurveyField::name)
                : Stream.empty();
        return Stream.concat(fact.fields().stream(), identifying)
                .distinct()
                .filter(this::unanswered)
                .toList();
    }

    private boolean unanswered(String field) {
        return unanswered.computeIfAbsent(field, this::isUnanswered);
    }

    private boolean isUnanswered(String field) {
        Optional<DamageKind> damage = Facts.damage(field);
        if (damage.filter(this::isTold).isPresent()) {
            return false;
        }
        if (CONTRADICTED.contains(field)
                && run.situation().decision(Topics.STONE, Subject.FLOOR).isEmpty()) {
            return true;
        }
        if (damage.isPresent() || field.equals(Facts.READINGS)) {
            return unsettled.contains(field);
        }
        return !run.situation().survey().answer(SurveyField.named(field)).isKnown();
    }

    /** True where the kind is told of all of the floor. */
    private boolean isTold(DamageKind kind) {
        List<Zone> zones = run.situation().survey().zones();
        double looked = zones.stream()
                .filter(zone ->
                        zone.damage(kind).value().filter(Questions::isWhole).isPresent())
                .mapToDouble(zone -> zone.share().percent())
                .sum();
        return looked > 100 - SHARE_OF_NOTHING;
    }

    /** None; or a look and a share, with a depth where one can be measured. */
    private static boolean isWhole(Damage found) {
        boolean measured = found.kind().depthScale().isEmpty() || found.depth().isPresent();
        return found.equals(Damage.none(found.kind())) || found.share().isPresent() && measured;
    }

    /** A rule whose conditions all hold but for facts that are not known, and that a known answer could meet. */
    private void waiting(LoadedRule rule) {
        boolean settled = rule.card().topic() == Topics.STONE
                && run.situation().values(Topics.STONE).size() == 1;
        if (settled || !reached.contains(rule.card().topic())) {
            return;
        }
        if (!readsUnknown(rule)) {
            return;
        }
        List<Object> missing = new ArrayList<>();
        for (FactPattern condition : rule.conditions()) {
            List<Object> candidates = factsByType.getOrDefault(condition.type(), List.of());
            if (!isMet(condition, candidates)) {
                Object unknown = firstThatCouldMeet(condition, candidates);
                if (unknown == null) {
                    return;
                }
                missing.add(unknown);
            }
        }
        for (Object fact : missing) {
            for (String field : unknownFields.computeIfAbsent(fact, key -> unknownFields(Facts.matched(fact)))) {
                Draft draft = drafts.get(field);
                draft.waiting.add(rule.id());
                draft.touches(rule.card().topic());
            }
        }
    }

    private boolean readsUnknown(LoadedRule rule) {
        for (FactPattern condition : rule.conditions()) {
            if (unknownTypes.contains(condition.type())) {
                return true;
            }
        }
        return false;
    }

    private static boolean isMet(FactPattern condition, List<Object> facts) {
        for (Object fact : facts) {
            if (condition.matches(fact)) {
                return true;
            }
        }
        return false;
    }

    private static @Nullable Object firstThatCouldMeet(FactPattern condition, List<Object> facts) {
        for (Object fact : facts) {
            if (isUnknown(fact) && couldMeet(condition, (Feature<?>) fact)) {
                return fact;
            }
        }
        return null;
    }

    private static boolean isUnknown(Object fact) {
        return fact instanceof Feature<?> feature && feature.mayBe().size() > 1;
    }

    private static boolean couldMeet(FactPattern condition, Feature<?> fact) {
        for (Object accepted : condition.accepted()) {
            Set<?> classes = ((Feature<?>) accepted).mayBe();
            if (classes.size() == 1 && fact.mayBe().containsAll(classes)) {
                return true;
            }
        }
        return false;
    }

    private List<Question> ranked() {
        // Where needles or a green ground are known, the laboratory decides before name and tests do.
        boolean fibres = factsByType.getOrDefault(StoneTraits.FibreSuspicion.class, List.of()).stream()
                .anyMatch(fact -> ((StoneTraits.FibreSuspicion) fact).known() == FibreRisk.POSSIBLE);
        List<Family> families = run.situation().values(Topics.STONE);
        boolean stoneIsKnown = families.size() == 1;
        Comparator<Map.Entry<String, Draft>> order = Comparator.comparing((Map.Entry<String, Draft> entry) ->
                        !(fibres && SurveyField.LABORATORY.name().equals(entry.getKey())))
                // Few floors were left off in the middle of a job.
                .thenComparing(entry -> SurveyField.LAST_WORKED.name().equals(entry.getKey()))
                // One look at the chips of a floor that is made of them clears it or stops it.
                .thenComparing(
                        entry -> !(isChipsOpen() && SurveyField.CHIPS.name().equals(entry.getKey())))
                .thenComparing(entry -> !entry.getValue().stops)
                // What is wanted costs a question alone and decides how far a stone that is known is cut.
                .thenComparing(entry -> !(stoneIsKnown && isOfTheWish(entry.getKey())))
                // The cleaner of every day is the commonest cause of a dull or sugary surface, and costs a question
                // alone.
                .thenComparing(
                        entry -> !(mayBeEtchedByItsCleaner() && entry.getKey().equals(SurveyField.CLEANER.name())))
                .thenComparing(entry -> !entry.getValue().holds)
                .thenComparing(entry -> !Question.isDecisive(entry.getValue().topics))
                // What can be seen, tapped or asked on the floor comes before a sample.
                .thenComparing(entry -> OF_THE_LABORATORY.contains(entry.getKey()))
                .thenComparing(entry -> entry.getValue().firstStage)
                .thenComparing(entry -> -entry.getValue().topics.size());
        boolean measuredDry = factsByType.getOrDefault(BuildUp.Moisture.class, List.of()).stream()
                .allMatch(fact -> ((BuildUp.Moisture) fact).known() == Damp.AS_DRY_REFERENCE);
        boolean refused = run.situation().values(Topics.VERDICT).contains(Verdict.REFUSE);
        return drafts.entrySet().stream()
                .filter(entry -> !entry.getValue().topics.isEmpty())
                .filter(entry -> !refused || entry.getValue().bearsOnRefusal(entry.getKey()))
                .filter(entry -> !(SCRAPES.contains(entry.getKey()) && refusedForFibres()))
                .filter(entry -> !AFTER.containsKey(entry.getKey()) || !unanswered(AFTER.get(entry.getKey())))
                .filter(entry -> !entry.getKey().equals(SurveyField.LABORATORY.name()) || !isColourOpen())
                .filter(entry -> !(measuredDry && entry.getKey().equals(SurveyField.DAMP.name())))
                .filter(entry -> !entry.getKey().equals(SurveyField.CHIPS.name())
                        || families.isEmpty()
                        || families.stream().anyMatch(Family::isOfChips))
                .sorted(order)
                .map(entry -> new Question(
                        entry.getKey(),
                        List.copyOf(entry.getValue().cautious),
                        List.copyOf(entry.getValue().waiting),
                        inTableOrder(entry.getValue().topics)))
                .toList();
    }

    /** What the owner wants, or what the sample reads that is to be matched. */
    private boolean isOfTheWish(String field) {
        boolean sample =
                run.situation().survey().answer(SurveyField.GOAL).value().equals(Optional.of(Goal.MATCH_SAMPLE));
        return field.equals((sample ? SurveyField.GOAL_GLOSS : SurveyField.GOAL).name());
    }

    /** True where stone that acid attacks is told to be dull, etched or flaking. */
    private boolean mayBeEtchedByItsCleaner() {
        boolean attacked = run.situation().values(Topics.STONE).stream()
                .anyMatch(family -> Traits.of(family).acid().contains(AcidReaction.STRONG));
        return attacked
                && run.situation().survey().zones().stream()
                        .flatMap(zone -> ACID_MARKS.stream().flatMap(kind -> zone.damage(kind).value().stream()))
                        .anyMatch(found -> !found.equals(Damage.none(found.kind())));
    }

    /** True while one look may show that no laboratory is needed. */
    private boolean isColourOpen() {
        boolean suspicionOpen = factsByType.getOrDefault(StoneTraits.FibreSuspicion.class, List.of()).stream()
                .anyMatch(Questions::isUnknown);
        return suspicionOpen && (isChipsOpen() || unanswered(SurveyField.COLOUR.name()));
    }

    private boolean isChipsOpen() {
        return factsByType.getOrDefault(StoneTraits.ChipsSeen.class, List.of()).stream()
                .anyMatch(Questions::isUnknown);
    }

    /** True where the stone is refused for certain because it may hold fibres. */
    private boolean refusedForFibres() {
        return run.situation().decision(Topics.VERDICT, Subject.FLOOR).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> reason.certain() && reason.values().contains(Verdict.REFUSE))
                .flatMap(reason -> reason.facts().stream())
                .anyMatch(fact -> fact.fields().contains(SurveyField.LABORATORY.name()));
    }

    private static List<Topic<?>> inTableOrder(Set<Topic<?>> topics) {
        return Topics.all().stream().filter(topics::contains).toList();
    }
}
