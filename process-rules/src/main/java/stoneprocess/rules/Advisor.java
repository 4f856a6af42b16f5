package stoneprocess.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.Change;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Explanation;
import stoneprocess.core.answer.Hold;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.WhatIf;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.internal.check.FirstDifference;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.plan.LaneStart;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Extent;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.assemble.Assembler;
import stoneprocess.rules.internal.assemble.FollowUps;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.explain.Explainer;
import stoneprocess.rules.internal.explain.HowToSearch;
import stoneprocess.rules.internal.explain.WhatElseSearch;
import stoneprocess.rules.internal.review.LogReview;
import stoneprocess.rules.internal.run.Program;
import stoneprocess.rules.internal.run.Run;
import stoneprocess.rules.internal.run.Runner;

/**
 * Answers surveys. Immutable and safe to share between threads; every call runs by itself.
 *
 * <p>It advises. Local codes and the licensed roles that the warnings name decide.
 */
public final class Advisor {
    private static volatile @Nullable Advisor standard;

    private final Rulebase rulebase;
    private final Options options;
    private volatile @Nullable Explainer explainer;

    private Advisor(Rulebase rulebase, Options options) {
        this.rulebase = rulebase;
        this.options = options;
    }

    /** The advisor with the shipped rules and the usual sequence: the same one at every call, built at the first. */
    public static Advisor standard() {
        Advisor advisor = standard;
        if (advisor == null) {
            // Two threads may both make one; they are alike.
            advisor = of(Rulebase.standard(), Options.defaults());
            standard = advisor;
        }
        return advisor;
    }

    /** An advisor with a rulebase and options of the caller's. */
    public static Advisor of(Rulebase rulebase, Options options) {
        return new Advisor(Objects.requireNonNull(rulebase, "rulebase"), Objects.requireNonNull(options, "options"));
    }

    /** The rules that it answers by. */
    public Rulebase rulebase() {
        return rulebase;
    }

    /** How it was asked to plan. */
    public Options options() {
        return options;
    }

    /**
     * Plans a floor. Safe to call from several threads; nothing is kept between calls. Quantities of the survey carry
     * their units, so do those of the plan; every reason names its rule, whose card names the source.
     *
     * @param survey what is known; what is not known is read cautiously and asked for, so that an empty survey is
     *     answered too
     * @return the plan with its reasons, or a refusal or an impasse with its causes; never null
     * @throws NullPointerException when the survey is null
     * @throws InvalidInputException naming {@code equipment.grades}, when a grade on hand is not one of the options'
     *     sequence
     * @throws stoneprocess.core.problem.RulebaseException when the rulebase itself is at fault, for example when
     *     rules do not come to rest; no survey brings that about with the shipped rules
     */
    public Recommendation recommend(FloorSurvey survey) {
        requireGrades(Objects.requireNonNull(survey, "survey"));
        return recommend(survey, List.of());
    }

    /**
     * Reads the job log of a floor that is worked by a plan, and says what comes next.
     *
     * @param plan what was recommended, by this rulebase; one without a grit to work is refused
     * @param log what was noted so far; empty before the first pass
     */
    public NextMove followUp(Recommendation plan, JobLog log) {
        requirePlan(plan);
        return answer(LogReview.of(plan, log));
    }

    /**
     * Traces signs of a fault to causes, and says how to tell them apart and what to do.
     *
     * @param plan what was recommended, by this rulebase; one without a grit to work is refused
     * @param signs what was seen, heard or felt, beside the signs of the log's latest looks; at least one in all
     * @param log what was noted so far; where it notes no work, the signs are those of a finished floor
     */
    public Diagnosis diagnose(Recommendation plan, Set<Sign> signs, JobLog log) {
        requirePlan(plan);
        LogReview review = LogReview.of(plan, log, signs);
        if (review.signs().isEmpty()) {
            throw InvalidInputException.saying(
                    "signs",
                    "none",
                    String.join(", ", Term.keys(List.of(Sign.values()))),
                    "no fault is named; name what you see, such as haze; a fill that has come out goes into the log, for"
                            + " 'follow' to answer");
        }
        return new Diagnosis(review.signs(), answer(review));
    }

    /**
     * Opens a recommendation to questions about it: why, and why not. Many questions to one explanation share what they
     * look up; it is not safe to share between threads. The first call of an advisor finds out what its rules
     * say.
     *
     * @param recommendation one that this rulebase made
     * @throws NullPointerException when it is null
     * @throws InvalidInputException naming {@code recommendation.rulebase}, when another rulebase made it
     */
    public Explanation explain(Recommendation recommendation) {
        requireOwn(recommendation);
        return explainer().explain(recommendation);
    }

    /**
     * Why a matter was closed as it was, down to what the survey answers.
     *
     * @param recommendation one that this rulebase made
     * @param topic one of {@link stoneprocess.core.topic.Topics#all()}
     * @param subject what fits the topic's scope: the floor, a track, or a track at one grit
     * @return the outcome with its reasons and everything that it rests on; never null
     * @throws InvalidInputException for a recommendation of another rulebase, a topic that is not in the table, a subject
     *     of another scope, and a matter that the recommendation did not come to
     */
    public Why why(Recommendation recommendation, Topic<?> topic, Subject subject) {
        return explain(recommendation).why(topic, subject);
    }

    /**
     * Why a matter was not closed with a value.
     *
     * @param recommendation one that this rulebase made
     * @param topic one of {@link stoneprocess.core.topic.Topics#all()}
     * @param subject what fits the topic's scope: the floor, a track, or a track at one grit
     * @param value key of a value that the outcome does not have; of a grit for paths and test cuts; a number of passes
     *     or litres, from 0 to 1 000 000, for these figures
     * @return what vetoed or outweighed it, or which rules would ask for it and what keeps them silent; never null
     * @throws InvalidInputException as in {@link #why}, for a value that the topic cannot take, and for one that the
     *     outcome has
     */
    public WhyNot whyNot(Recommendation recommendation, Topic<?> topic, Subject subject, String value) {
        return explain(recommendation).whyNot(topic, subject, value);
    }

    private Explainer explainer() {
        Explainer known = explainer;
        if (known == null) {
            // Two threads may both make one; they are alike.
            known = new Explainer(rulebase.meanings());
            explainer = known;
        }
        return known;
    }

    /**
     * Answers a floor as it is and with some of its facts changed.
     *
     * @param survey what is known
     * @param changes what is changed, one or more, in this order; each place once
     * @return both recommendations; their difference is for {@code Difference} to tell
     * @throws InvalidInputException for no change, for a change whose answer before is not the survey's, for changes
     *     that cannot hold together with the other answers, and as {@link #recommend}
     */
    public WhatIf whatIf(FloorSurvey survey, List<Change> changes) {
        if (changes.isEmpty()) {
            throw new InvalidInputException("changes", "none", "at least one change");
        }
        return new WhatIf(changes, recommend(survey), recommend(Change.all(survey, changes)));
    }

    /**
     * Finds the smallest changes of a survey that give a wanted value: the fewest changes, then the fewest class steps;
     * all that tie, in the order of the survey form. It is searched exactly, up to two changes: every other class that
     * the rules can tell apart of every answer of the survey, a measured value going to the nearest value of each class;
     * one machine or one grit more or less, or all of them; in each zone of the survey each other class of each kind of
     * damage, over the share noted before or else over the whole zone. No answer is forgotten; zones and gloss readings
     * stay as they are.
     *
     * @param survey what is known
     * @param topic one that a recommendation decides, passes and litres excepted
     * @param subject what fits the topic's scope; a track or step that the plan does not have can be asked for too
     * @param value key of a value of the topic's domain; for a grit path or test cuts the key of a grit of the options'
     *     sequence. Where several values stand, it is to be one of them
     * @return the ways, each change told as what people can change or what the floor is; that it is so already, or that
     *     no two changes do it
     * @throws InvalidInputException for a topic, subject or value that cannot be asked for, and as {@link #recommend}
     */
    public HowTo howTo(FloorSurvey survey, Topic<?> topic, Subject subject, String value) {
        requireGrades(Objects.requireNonNull(survey, "survey"));
        return HowToSearch.find(
                rulebase.meanings(),
                topic,
                subject,
                value,
                survey,
                rulebase.parameters(),
                options.sequence(),
                rulebase.stamp());
    }

    /**
     * Finds what is worth finding out: the unknown facts that can change the outcome of a topic, those that can change
     * more topics first, each with the quickest test that settles it. Each is answered in every way that the rules can
     * tell apart, one fact at a time, two where the first counts only together with the second.
     *
     * @param survey what is known; an empty one is answered too
     * @throws InvalidInputException as {@link #recommend}
     */
    public WhatElse whatElse(FloorSurvey survey) {
        requireGrades(Objects.requireNonNull(survey, "survey"));
        return WhatElseSearch.find(
                rulebase.meanings().reach(), survey, rulebase.parameters(), options.sequence(), rulebase.stamp());
    }

    /**
     * What must be settled before the work starts, the gravest first: life, then what would be lost for good, the
     * building, the look, and last what can be hired. Grounds that another one outweighs are among them.
     *
     * @param recommendation what was recommended; what a rule said that this rulebase does not have is left out
     */
    public List<Hold> holds(Recommendation recommendation) {
        Objects.requireNonNull(recommendation, "recommendation");
        return Hold.of(
                recommendation,
                id -> rulebase.cards().stream()
                        .filter(card -> card.id().equals(id))
                        .findFirst());
    }

    /**
     * Compares the rulebase of this advisor with another's over the same surveys: which floors get other advice, topic
     * by topic, and through which rules. Each advisor plans with its own options.
     *
     * @param other whose answers are compared
     * @param surveys the floors; none gives an empty comparison
     * @throws InvalidInputException as {@link #recommend} of either advisor
     */
    public Comparison compare(Advisor other, List<FloorSurvey> surveys) {
        List<Comparison.Floor> differing = new ArrayList<>();
        for (int i = 0; i < surveys.size(); i++) {
            FloorSurvey survey = surveys.get(i);
            Comparison.Floor.of(i, recommend(survey), other.recommend(survey)).ifPresent(differing::add);
        }
        return new Comparison(rulebase.stamp(), other.rulebase.stamp(), surveys.size(), differing);
    }

    private NextMove answer(LogReview review) {
        return FollowUps.answer(
                rulebase.engine()::start, rulebase.rules(), rulebase.stamp(), review, UnaryOperator.identity());
    }

    private void requireOwn(Recommendation plan) {
        if (!plan.rulebase().hash().equals(rulebase.stamp().hash())) {
            throw new InvalidInputException(
                    "recommendation.rulebase",
                    plan.rulebase().hash(),
                    "a recommendation of this rulebase, " + rulebase.stamp().hash());
        }
        if (plan.rulebase() != rulebase.stamp()) {
            requireReplayed(plan);
        }
    }

    /** A plan that was stored is what this rulebase makes of its survey; one that carries this very stamp was made here. */
    private void requireReplayed(Recommendation plan) {
        for (Parameter own : rulebase.parameters().all()) {
            Parameter stored = plan.parameters().parameter(own.name());
            if (!stored.equals(own)) {
                throw new InvalidInputException(
                        "recommendation.parameters." + own.name(),
                        stored.value().print(),
                        "what this rulebase reckons with: " + own.value().print());
            }
        }
        Recommendation replayed = new Advisor(rulebase, options.withSequence(plan.sequence())).recommend(plan.survey());
        FirstDifference.of(plan, replayed).ifPresent(differing -> {
            throw new InvalidInputException(
                    "recommendation." + differing.path(),
                    differing.left().toString(),
                    "what this rulebase makes of its survey: " + differing.right());
        });
    }

    private void requirePlan(Recommendation plan) {
        requireOwn(plan);
        if (plan.plan().filter(known -> !known.tracks().isEmpty()).isEmpty()) {
            throw new InvalidInputException(
                    "recommendation.status",
                    plan.status().key(),
                    "a plan with grades to work; there is nothing to follow");
        }
    }

    private void requireGrades(FloorSurvey survey) {
        survey.answer(SurveyField.GRADES).value().stream()
                .flatMap(List::stream)
                .filter(grade -> !options.sequence().knows(grade))
                .findFirst()
                .ifPresent(grade -> {
                    throw new InvalidInputException(
                            "equipment.grades",
                            grade.key(),
                            "grades of the options' sequence, of the same grain: "
                                    + options.sequence().known());
                });
    }

    /** The same with topics closed beforehand, whatever the rules say. */
    Recommendation recommend(FloorSurvey survey, List<Outcome> pins) {
        Run run = run(survey, pins);
        return Assembler.assemble(run, rulebase.rules(), rulebase.stamp(), laneStarts(survey));
    }

    private Run run(FloorSurvey survey, List<Outcome> pins) {
        Situation situation = new Situation(survey, rulebase.parameters(), options.sequence());
        return Runner.run(rulebase.engine()::start, Program.RECOMMEND, situation, pins, UnaryOperator.identity());
    }

    /** Each lane starts as a floor would that is that lane and nothing else; lanes that start alike are not told apart. */
    private List<LaneStart> laneStarts(FloorSurvey survey) {
        if (!survey.isLanesAlone()) {
            return List.of();
        }
        List<LaneStart> starts = survey.zones().stream()
                .filter(zone -> zone.kind().isTrodden())
                .flatMap(zone -> laneStart(survey, zone).stream())
                .toList();
        return starts.stream().map(LaneStart::grade).distinct().count() > 1 ? starts : List.of();
    }

    private Optional<LaneStart> laneStart(FloorSurvey survey, Zone zone) {
        FloorSurvey lane = survey.toBuilder()
                .zones(List.of(new Zone(zone.name(), zone.kind(), new Share(100), zone.damages())))
                .set(SurveyField.EXTENT, Extent.WHOLE_FLOOR)
                .readings(List.of())
                .build();
        Situation alone = run(lane, List.of()).situation();
        return alone.values(Topics.GRIT_PATH, Subject.OPEN_FIELD).stream()
                .findFirst()
                .map(grit -> new LaneStart(zone.name(), alone.sequence().get(grit, Topics.GRIT_PATH.id())));
    }
}
