package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.decide.Known;
import stoneprocess.rules.internal.review.LogReview;

/** What is known at a point of a run: the survey, the numbers, the grits in use and the topics closed so far. */
public final class Situation implements Known {
    private final FloorSurvey survey;
    private final Parameters parameters;
    private final GritSequence sequence;
    private final Optional<LogReview> log;
    private final Map<TrackKind, AbrasiveGrade> worked;
    private final Map<Topic<?>, Map<Subject, Outcome>> outcomes = new LinkedHashMap<>();
    private @Nullable KnownStone stone;

    public Situation(FloorSurvey survey, Parameters parameters, GritSequence sequence) {
        this(survey, parameters, sequence, Optional.empty(), Map.of());
    }

    /** A situation on a job whose log was read. */
    public Situation(FloorSurvey survey, Parameters parameters, GritSequence sequence, Optional<LogReview> log) {
        this(survey, parameters, sequence, log, Map.of());
    }

    /** The rest of a job, whose tracks go on after grades that were worked. */
    public Situation(
            FloorSurvey survey, Parameters parameters, GritSequence sequence, Map<TrackKind, AbrasiveGrade> worked) {
        this(survey, parameters, sequence, Optional.empty(), Map.copyOf(worked));
    }

    private Situation(
            FloorSurvey survey,
            Parameters parameters,
            GritSequence sequence,
            Optional<LogReview> log,
            Map<TrackKind, AbrasiveGrade> worked) {
        this.survey = survey;
        this.parameters = parameters;
        this.sequence = sequence.with(survey.answer(SurveyField.GRADES).value().orElse(List.of()));
        this.log = log;
        this.worked = worked;
    }

    @Override
    public Range<Length> depth(TrackKind track, Optional<AbrasiveGrade> before, AbrasiveGrade grade) {
        return CutDepth.of(this, track, before, grade);
    }

    @Override
    public Optional<AbrasiveGrade> worked(TrackKind track) {
        return Optional.ofNullable(worked.get(track));
    }

    /** The log, in the programs that read one. */
    public Optional<LogReview> log() {
        return log;
    }

    public FloorSurvey survey() {
        return survey;
    }

    @Override
    public Parameters parameters() {
        return parameters;
    }

    /** The grits that there are to choose from, whether on hand or not. */
    @Override
    public GritSequence sequence() {
        return sequence;
    }

    /** The grits in use: those on hand where the survey tells them, else the whole sequence; empty when none is on hand. */
    @Override
    public Optional<GritSequence> inUse() {
        return survey.answer(SurveyField.GRADES)
                .value()
                .map(grades -> grades.isEmpty() ? Optional.<GritSequence>empty() : Optional.of(GritSequence.of(grades)))
                .orElse(Optional.of(sequence));
    }

    /** The area of a track, as far as it is known: the open field is taken as all that is worked. */
    @Override
    public Optional<Area> areaOf(TrackKind track) {
        return track == TrackKind.OPEN_FIELD ? survey.workedArea() : Optional.empty();
    }

    /** What is known of the stone; any stone until its topic is closed. */
    @Override
    public KnownStone stone() {
        KnownStone known = stone;
        if (known == null) {
            known = KnownStone.of(survey, values(Topics.STONE));
            stone = known;
        }
        return known;
    }

    /** True for a floor of nothing but edges and stairs, which no floor machine reaches. */
    @Override
    public boolean isAllHandWork() {
        return DamageSpread.isAllHandWork(survey);
    }

    @Override
    public boolean hasEdges() {
        return !survey.isLanesAlone()
                && !survey.answer(SurveyField.EDGES).value().equals(Optional.of(new Length(0)));
    }

    /** Adds a closed topic. */
    public void close(Outcome outcome) {
        outcomes.computeIfAbsent(outcome.topic(), topic -> new LinkedHashMap<>())
                .put(outcome.subject(), outcome);
        if (outcome.topic() == Topics.STONE) {
            stone = null;
        }
    }

    /** All closed topics in the order in which they closed. */
    @Override
    public List<Outcome> outcomes() {
        List<Outcome> all = new ArrayList<>();
        outcomes.values().forEach(bySubject -> all.addAll(bySubject.values()));
        return Collections.unmodifiableList(all);
    }

    public Optional<Outcome> outcome(Topic<?> topic, Subject subject) {
        return Optional.ofNullable(outcomes.getOrDefault(topic, Map.of()).get(subject));
    }

    @Override
    @SuppressWarnings("unchecked") // An outcome is of the type of its topic.
    public <V> Optional<Decision<V>> decision(Topic<V> topic, Subject subject) {
        return outcomes.getOrDefault(topic, Map.of()).get(subject) instanceof Decision<?> decision
                ? Optional.of((Decision<V>) decision)
                : Optional.empty();
    }

    /** The values decided for the floor; none when the topic is not closed or ended in an impasse. */
    public <V> List<V> values(Topic<V> topic) {
        return values(topic, Subject.FLOOR);
    }

    /** The values decided for a subject; none when the topic is not closed or ended in an impasse. */
    @Override
    public <V> List<V> values(Topic<V> topic, Subject subject) {
        return decision(topic, subject).map(Decision::values).orElse(List.of());
    }

    /**
     * What the verdict permits. A hold does not make a floor cuttable: where it is certain that the floor would only be
     * cleaned, no more than that is planned while the work waits.
     */
    public Set<Verdict> permission() {
        Optional<Decision<Verdict>> verdict = decision(Topics.VERDICT, Subject.FLOOR);
        boolean onlyCleaned = verdict.filter(decision -> decision.value() == Verdict.HOLD).stream()
                .flatMap(decision -> decision.outweighed().stream())
                .anyMatch(reason -> reason.certain() && reason.values().contains(Verdict.CLEAN_ONLY));
        return onlyCleaned ? EnumSet.of(Verdict.CLEAN_ONLY) : decided(Topics.VERDICT, Verdict.class);
    }

    /** The class that a choice field answers, or all of them when it is unknown. */
    <E extends Enum<E>> Set<E> answer(SurveyField<E> field, Class<E> classes) {
        return survey.answer(field).value().<Set<E>>map(EnumSet::of).orElseGet(() -> EnumSet.allOf(classes));
    }

    /** The values decided for the floor, or all classes when there is no decision. */
    <E extends Enum<E> & Term> Set<E> decided(Topic<E> topic, Class<E> classes) {
        List<E> values = values(topic);
        return values.isEmpty() ? EnumSet.allOf(classes) : EnumSet.copyOf(values);
    }
}
