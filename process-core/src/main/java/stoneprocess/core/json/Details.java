package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Matter;
import stoneprocess.core.answer.MatterDifference;
import stoneprocess.core.answer.Side;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.audit.AuditFinding;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.estimate.Price;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * What a record's form has that its components do not tell. Everything else is read from the components: the order and
 * the names of the fields, their types, and which may be left out.
 */
final class Details {
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_TITLE = 200;
    private static final Details NONE = new Details();
    private static final Map<Class<?>, Details> OF = new HashMap<>();

    static {
        of(Recommendation.class).grades("sequence", Function.<GritSequence>identity());
        of(NextMove.class).grades("ahead.sequence", Recommendation::sequence);
        of(PlannedStep.class).name("litresPerPass", "water-per-pass");
        of(Recommendation.class)
                .topic("status", around -> Topics.VERDICT)
                .checked(made -> ((Recommendation) made).requireCoherent());
        of(Cause.class).topic("fault", around -> Topics.CAUSES);
        of(WhyNot.class).topic("outcome", Details::topicOfReasons);
        of(MatterDifference.class).topic("matter", around -> ((Matter) around.find("matter")).topic());
        of(Side.class).given("topic").keys("values", "keys");
        of(Comparison.Ending.class).given("topic").keys("values", "keys");
        of(Reason.class).keys("values", "keys");
        of(CounterOffer.class).keys("values", "keys");
        of(AuditFinding.class).printed("topic", "topicId", Leaves.TOPIC_OR_NONE);
        of(Decision.class).keys("values", "keys");
        of(Impasse.class).keys("lacking", "lackingKeys");
        of(AbrasiveGrade.class).whole("number", 1, 30_000);
        of(HoldPoint.class).whole("passes", 1);
        of(TargetOption.class).whole("grit", 1);
        of(GlossPrediction.class).whole("grit", 1);
        of(ZoneStatistics.class).whole("count", 1);
        of(ForecastBasis.class).shape("sources", Shapes.list(Leaves.CITATION_ID));

        of(JobLog.class).text("title", LONGEST_TITLE);
        of(Entry.Worked.class).orUnknown().given("at").whole("passes", 1, 1000);
        of(Entry.Looked.class).orUnknown().given("at").text("zone", LONGEST_NAME);
        of(Entry.Happened.class).given("at").text("zone", LONGEST_NAME);
        of(Entry.Tried.class).given("at");
        of(Reading.class)
                .orUnknown()
                .text("place", LONGEST_NAME)
                .text("zone", LONGEST_NAME)
                .otherwise("direction", Direction.NOT_NOTED);

        of(Zone.class)
                .text("name", LONGEST_NAME)
                .shape("damages", new DamagesShape())
                .otherwise("damages", Map.of());
        of(Damage.class).given("kind").shape("look", DamagesShape.LOOK);
        of(GlossReading.class).text("zone", LONGEST_NAME);

        of(PriceList.class)
                .otherwise("prices", Map.of())
                .otherwise("machineHours", Map.of())
                .otherwise("minimumCharge", BigDecimal.ZERO)
                .otherwise("nightFactor", new Share(100))
                .otherwise("wholeSets", false)
                .otherwise("exclusions", List.of());
        of(Schedule.class).otherwise("held", List.of());
        of(Price.Lines.class).derived("net").derived("total");

        of(WhatElse.class).otherwise("untried", List.of());
        of(Change.class).tag("change");
        of(Change.OfAnswer.class)
                .whole("classSteps", 1)
                .shape("from", SurveyShape.ANSWER)
                .shape("to", SurveyShape.ANSWER)
                .derived("changedBy");
        of(Change.OfMember.class).shape("member", SurveyShape.MEMBER).derived("changedBy");
        of(Change.OfDamage.class)
                .whole("classSteps", 1)
                .shape("from", DamagesShape.DAMAGE)
                .shape("to", DamagesShape.DAMAGE)
                .derived("changedBy");
    }

    private final Map<String, String> names = new HashMap<>();
    private final Map<String, Shape> shapes = new HashMap<>();
    private final Map<String, Function<Scope, Topic<?>>> topics = new HashMap<>();

    /** By component the method that gives what is printed, where it is not the component itself. */
    final Map<String, String> printed = new HashMap<>();

    /** What a component is where it is left out; where it is empty, it is left out. */
    final Map<String, Object> otherwise = new HashMap<>();

    /** Components that are not printed: what stands around tells them. */
    final Set<String> given = new HashSet<>();

    /** Methods whose result is printed for readers and checked when it is read back. */
    final Set<String> derived = new HashSet<>();

    /** What is held against one another when the record is read; printing does not look. */
    Consumer<Object> check = made -> {};

    /** The field that tells the records of a sealed interface apart. */
    String tag = "kind";

    /** Where the sequence of this record's grades is printed, and how it is got from the component there. */
    String gradesPath = "";

    Function<Object, GritSequence> sequence = component -> GritSequence.standard();

    /** Whether a text "unknown" is the same as leaving out. */
    boolean orUnknown;

    private Details() {}

    private static Details of(Class<?> type) {
        return OF.computeIfAbsent(type, added -> new Details());
    }

    static Details find(Class<?> type) {
        return OF.getOrDefault(type, NONE);
    }

    private Details name(String component, String name) {
        names.put(component, name);
        return this;
    }

    private Details shape(String component, Shape shape) {
        shapes.put(component, shape);
        return this;
    }

    /** Values of a topic, which are printed as their keys, as a method of the record gives them. */
    private Details keys(String component, String method) {
        return printed(component, method, Leaves.VALUES);
    }

    /** What is printed is what a method of the record gives; the shape reads it back. */
    private Details printed(String component, String method, Shape shape) {
        printed.put(component, method);
        return shape(component, shape);
    }

    /** Values that follow a component are of this topic, unless a record between tells another. */
    private Details topic(String component, Function<Scope, Topic<?>> topic) {
        topics.put(component, topic);
        return this;
    }

    /** The bond that a grade lacks was left out by rules about bonds. */
    private static Topic<?> topicOfReasons(Scope around) {
        return around.find("kind") == WhyNotKind.BOND_LEFT_OUT
                ? Topics.BONDS
                : ((Outcome) around.find("outcome")).topic();
    }

    private Details whole(String component, int least) {
        return whole(component, least, Integer.MAX_VALUE);
    }

    private Details whole(String component, int least, int most) {
        return shape(component, Leaves.whole(least, most));
    }

    private Details text(String component, int longest) {
        return shape(component, Leaves.text(longest));
    }

    private Details given(String component) {
        given.add(component);
        return this;
    }

    private Details otherwise(String component, Object value) {
        otherwise.put(component, value);
        return this;
    }

    private Details orUnknown() {
        orUnknown = true;
        return this;
    }

    private Details derived(String method) {
        derived.add(method);
        return this;
    }

    private Details checked(Consumer<Object> contradictions) {
        check = contradictions;
        return this;
    }

    private Details tag(String name) {
        tag = name;
        return this;
    }

    /**
     * Grades in this record are those of a sequence that is printed in it.
     *
     * @param path the field that holds the sequence; the component that it begins with is read first
     * @param read from that component to the sequence
     */
    @SuppressWarnings("unchecked")
    private <C> Details grades(String path, Function<C, GritSequence> read) {
        gradesPath = path;
        sequence = component -> read.apply((C) component);
        return this;
    }

    String name(String component) {
        return names.getOrDefault(component, Typed.kebab(component));
    }

    Optional<Shape> shape(String component) {
        return Optional.ofNullable(shapes.get(component));
    }

    /** The topic of the values that follow a component, where the component tells one. */
    Optional<Topic<?>> topicAfter(String component, Scope scope) {
        return Optional.ofNullable(topics.get(component)).map(topic -> topic.apply(scope));
    }

    /** True for the component that holds the sequence of the record's grades. */
    boolean holdsSequence(String component) {
        return gradesPath.equals(component) || gradesPath.startsWith(component + ".");
    }
}
