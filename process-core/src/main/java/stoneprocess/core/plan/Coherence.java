package stoneprocess.core.plan;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * Holds the parts of a recommendation against one another: what is planned, warned of and refused is what its outcomes
 * say. It knows no rule; whether rules would decide so again is for a replay to tell.
 */
final class Coherence {
    private static final Set<Status> WITH_PLAN = Set.of(Status.PLANNED, Status.PROVISIONAL);
    private static final Set<String> WITHOUT_TOPIC = Set.of("tracks", "starts");
    private static final String DAMAGES = "damages.";
    private static final String READINGS = "readings";

    private final Recommendation recommendation;

    Coherence(Recommendation recommendation) {
        this.recommendation = recommendation;
    }

    /** @throws InvalidInputException naming the first part that contradicts another, and what the other one says */
    void require() {
        closedOnce();
        status();
        recommendation.plan().ifPresent(this::plan);
        refusals();
        warnings();
        recommendation.questions().forEach(this::question);
    }

    private void closedOnce() {
        Set<List<Object>> closed = new HashSet<>();
        for (Outcome outcome : recommendation.outcomes()) {
            if (!closed.add(List.of(outcome.topic(), outcome.subject()))) {
                throw new InvalidInputException(
                        "outcomes",
                        outcome.topic().id(),
                        "each topic once for " + outcome.subject().key());
            }
        }
    }

    private void status() {
        Status status = recommendation.status();
        if (WITH_PLAN.contains(status) != recommendation.plan().isPresent()) {
            throw new InvalidInputException(
                    "plan",
                    recommendation.plan().isPresent() ? "a plan" : "none",
                    "a plan where the status is "
                            + Term.keys(WITH_PLAN.stream().sorted().toList()) + ", and none otherwise; it is "
                            + status.key());
        }
        if ((status == Status.REFUSED) == recommendation.refusals().isEmpty()) {
            throw new InvalidInputException(
                    "refusals",
                    recommendation.refusals().size() + " reasons",
                    "reasons where the status is refused, and none otherwise; it is " + status.key());
        }
    }

    private void plan(Plan plan) {
        for (RecordComponent part : Plan.class.getRecordComponents()) {
            String name = part.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
            if (!WITHOUT_TOPIC.contains(name)) {
                sameAsTopic(name, part(part, plan), Topics.named(name));
            }
        }
        plan.tracks().forEach(this::track);
        plan.starts().forEach(this::start);
        for (Outcome outcome : recommendation.outcomes()) {
            if (outcome.topic() == Topics.GRIT_PATH && outcome.subject() instanceof Subject.OfTrack of) {
                same(
                        "tracks",
                        grits(plan.steps(of.track()).stream()
                                .map(PlannedStep::grade)
                                .toList()),
                        Topics.GRIT_PATH.keys(values(Topics.GRIT_PATH, of)));
            }
        }
    }

    private void track(Track track) {
        Subject subject = new Subject.OfTrack(track.kind());
        same(
                "tracks",
                grits(track.steps().stream().map(PlannedStep::grade).toList()),
                Topics.GRIT_PATH.keys(values(Topics.GRIT_PATH, subject)));
        for (PlannedStep step : track.steps()) {
            Subject of = new Subject.OfStep(track.kind(), step.grade().key());
            same("tracks.steps.machine", List.of(step.machine()), values(Topics.MACHINE, of));
            same("tracks.steps.weight", List.of(step.weight()), values(Topics.ADDED_WEIGHT, of));
            same("tracks.steps.water", List.of(step.water()), values(Topics.WATER_LEVEL, of));
            same("tracks.steps.water-per-pass", step.litresPerPass().stream().toList(), values(Topics.LITRES, of));
            same("tracks.steps.passes", List.of(step.passes()), values(Topics.PASSES, of));
            same("tracks.steps.handling", step.handling(), values(Topics.HANDLING, of));
            same("tracks.steps.pick-up", List.of(step.pickUp()), values(Topics.PICK_UP, of));
            same("tracks.steps.checks", step.checks(), values(Topics.CHECKS, of));
        }
    }

    private void start(LaneStart start) {
        List<String> zones =
                recommendation.survey().zones().stream().map(Zone::name).toList();
        if (!zones.contains(start.zone())) {
            throw new InvalidInputException(
                    "plan.starts.zone", start.zone(), "a zone of the survey: " + String.join(", ", zones));
        }
    }

    private void refusals() {
        List<Reason> reasons = won(Topics.VERDICT);
        for (Reason refusal : recommendation.refusals()) {
            if (!reasons.contains(refusal)) {
                throw new InvalidInputException(
                        "refusals", refusal.rule(), "a reason of the verdict: " + words(rules(reasons)));
            }
        }
    }

    private void warnings() {
        List<Hazard> hazards =
                recommendation.warnings().stream().map(SafetyWarning::hazard).toList();
        same("warnings", hazards, values(Topics.WARNINGS), "");
        for (SafetyWarning warning : recommendation.warnings()) {
            List<String> raising = rules(won(Topics.WARNINGS).stream()
                    .filter(reason -> reason.values().contains(warning.hazard()))
                    .toList());
            same("warnings.rules", warning.rules(), raising, "");
        }
    }

    private void question(Question question) {
        String field = question.field();
        boolean known = field.startsWith(DAMAGES)
                ? Stream.of(DamageKind.values()).anyMatch(kind -> field.equals(DAMAGES + kind.key()))
                : SurveyField.all().stream().anyMatch(asked -> asked.name().equals(field));
        if (!known && !field.equals(READINGS)) {
            throw new InvalidInputException(
                    "questions.field",
                    field,
                    "the name of a survey field, " + READINGS + ", or " + DAMAGES + " and a kind of damage");
        }
    }

    private List<Reason> won(Topic<?> topic) {
        return recommendation
                .decision(topic, Subject.FLOOR)
                .<List<Reason>>map(Decision::won)
                .orElse(List.of());
    }

    private static List<String> rules(Collection<Reason> reasons) {
        return reasons.stream().map(Reason::rule).distinct().sorted().toList();
    }

    private static List<String> grits(List<AbrasiveGrade> grades) {
        return grades.stream().map(AbrasiveGrade::key).toList();
    }

    private <V> List<V> values(Topic<V> topic) {
        return values(topic, Subject.FLOOR);
    }

    private <V> List<V> values(Topic<V> topic, Subject subject) {
        return recommendation.values(topic, subject);
    }

    /** A part that is named like its topic; what was not decided leaves a single value at "none" and a finish empty. */
    private <V> void sameAsTopic(String name, Object part, Topic<V> topic) {
        List<String> decided = topic.keys(values(topic));
        if (part instanceof List<?> planned) {
            same(name, planned.stream().map(Coherence::key).toList(), decided);
        } else if (part instanceof Optional<?> planned) {
            planned.ifPresent(value -> same(name, List.of(key(value)), decided));
        } else if (!decided.isEmpty()) {
            same(name, List.of(key(part)), decided);
        }
    }

    private static Object part(RecordComponent component, Plan plan) {
        try {
            return component.getAccessor().invoke(plan);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    private static String key(Object value) {
        if (value instanceof Preparation preparation) {
            return preparation.task().key();
        }
        return value instanceof AbrasiveGrade grade ? grade.key() : ((Term) value).key();
    }

    private static void same(String part, List<?> planned, List<?> decided) {
        same(part, planned, decided, "plan.");
    }

    private static void same(String part, List<?> planned, List<?> decided, String prefix) {
        if (!Objects.equals(planned, decided)) {
            throw new InvalidInputException(
                    prefix + part,
                    words(planned),
                    "what the outcomes of the same recommendation say: " + words(decided));
        }
    }

    private static String words(List<?> values) {
        return values.isEmpty()
                ? "none"
                : String.join(
                        ", ",
                        values.stream()
                                .map(value -> value instanceof Term term ? term.key() : value.toString())
                                .toList());
    }
}
