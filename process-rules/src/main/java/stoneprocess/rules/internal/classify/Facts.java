package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.Step;

/** What the other rooms ask of the facts: those of a situation, and what is known of each type of fact. */
public final class Facts {
    /** The name by which questions refer to the gloss readings. */
    public static final String READINGS = FactTable.READINGS;

    private static final Map<Class<?>, List<Object>> SPACES = new ConcurrentHashMap<>();
    private static final Map<String, DamageKind> DAMAGES =
            Stream.of(DamageKind.values()).collect(Collectors.toUnmodifiableMap(Facts::damage, kind -> kind));
    private static final List<String> SURVEY_NAMES = Stream.concat(
                    SurveyField.all().stream().map(SurveyField::name),
                    Stream.of(DamageKind.values()).map(Facts::damage))
            .toList();

    private Facts() {}

    /** The facts that a stage adds once its topics are closed; with no stage, those of the survey and the job log. */
    public static List<Object> after(Optional<Stage> stage, Situation situation) {
        return after(stage, situation, type -> true);
    }

    /** The same, without the types that nobody reads. */
    public static List<Object> after(Optional<Stage> stage, Situation situation, Predicate<Class<?>> read) {
        List<Object> facts = new ArrayList<>();
        for (FactLine line : FactTable.lines(stage)) {
            if (read.test(line.type()) && line.origin().when().test(situation)) {
                facts.addAll(line.facts(situation));
            }
        }
        return facts;
    }

    /**
     * The facts of a survey that differs from another in some answers only.
     *
     * @param before the facts of the other survey, as {@link #after} gives them without a stage
     * @param changed names of the fields and damage kinds whose answers differ
     * @param situation the survey
     */
    public static List<Object> again(List<Object> before, Set<String> changed, Situation situation) {
        Set<Class<?>> touched = new HashSet<>();
        changed.forEach(name -> touched.addAll(FactTable.reading(name)));
        List<Object> facts = new ArrayList<>(before.size());
        for (Object fact : before) {
            Class<?> type = fact.getClass();
            facts.add(touched.contains(type) ? FactTable.line(type).again(fact, situation) : fact);
        }
        return facts;
    }

    /** The steps of a track as facts. */
    public static List<Step> steps(TrackKind track, List<AbrasiveGrade> path, WorkMethod metal, Parameters parameters) {
        return StepFacts.of(track, path, metal, parameters);
    }

    /** How a cause stands in the decision about the causes. */
    public static Standing standing(Decision<Fault> causes, Fault fault) {
        return Suspicion.standing(causes, fault);
    }

    /** All types of facts, in the order of the table. */
    public static List<Class<?>> types() {
        return FactTable.lines().stream().<Class<?>>map(FactLine::type).toList();
    }

    /**
     * Every fact of a type that differs in what a rule can see of it.
     *
     * @throws InvalidInputException when it is no type of fact
     */
    public static List<Object> space(Class<?> type) {
        return SPACES.computeIfAbsent(type, key -> FactTable.line(key).space());
    }

    /** How rules and decision records call a fact: by its type, and its constant where there is one fact for each. */
    public static String name(Object fact) {
        String type = fact.getClass().getSimpleName();
        return fact instanceof OneOfMany<?> ofMany ? type + ":" + ofMany.which().key() : type;
    }

    /** What a decision record keeps of a matched fact. */
    public static MatchedFact matched(Object fact) {
        return FactTable.line(fact.getClass()).matched(fact);
    }

    /** Names of the survey fields, damage kinds or parts of a job log that a type of fact is read from. */
    public static List<String> fields(Class<?> type) {
        return FactTable.line(type).origin().fields();
    }

    /**
     * Names of all survey fields and damage kinds that can make a difference to a type of fact, those behind its topics
     * left out.
     */
    public static List<String> reads(Class<?> type) {
        return FactTable.line(type).origin().reads();
    }

    /**
     * The type of a matched fact.
     *
     * @throws InvalidInputException when no fact of the table is called so
     */
    public static Class<?> type(MatchedFact fact) {
        String type = fact.name().split(":", 2)[0];
        return types().stream()
                .filter(known -> known.getSimpleName().equals(type))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException("fact", fact.name(), "a fact of the table of facts"));
    }

    /** Topics that a type of fact is concluded from. */
    public static List<Topic<?>> topics(Class<?> type) {
        return FactTable.line(type).origin().topics();
    }

    /**
     * Where classes of a measured answer meet, in the unit in which it is kept, while the other answers stay as they are.
     * Good to a step of the quantity; which side a limit belongs to is for the facts to say. Empty for a field whose value
     * no rule classifies.
     *
     * @param survey whose other answers stay
     * @param parameters the numbers that part the classes
     */
    public static List<Double> limits(SurveyField<?> field, FloorSurvey survey, Parameters parameters) {
        return DerivedFigure.limits(field, survey, parameters);
    }

    /** Names of all survey fields and kinds of damage, in the order of the survey form. */
    public static List<String> surveyNames() {
        return SURVEY_NAMES;
    }

    /** The kind of damage to which a name refers; empty for a field. */
    public static Optional<DamageKind> damage(String name) {
        return Optional.ofNullable(DAMAGES.get(name));
    }

    /** The name by which questions refer to a kind of damage. */
    public static String damage(DamageKind kind) {
        return FactTable.damage(kind);
    }

    /**
     * Refuses numbers whose scales do not rise, before a survey meets them.
     *
     * @throws InvalidInputException naming the first limit that does not rise
     */
    public static void requireScales(Parameters parameters) {
        SurveyField.all().forEach(field -> field.scale().ifPresent(scale -> scale.in(parameters)));
        DerivedFigure.scales().forEach(scale -> scale.in(parameters));
        StepFacts.GRIT.in(parameters);
        StepFigures.requireScales(parameters);
        Damage.requireScales(parameters);
    }
}
