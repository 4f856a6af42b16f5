package stoneprocess.core.plan;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
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
        same("preparation", plan.tasks(), Topics.PREPARATION);
        same("acceptances", plan.acceptances(), Topics.ACCEPTANCES);
        sameOrFirst("test-area", plan.testArea(), Topics.TEST_AREA);
        same("test-cuts", grits(plan.testCuts()), Topics.TEST_CUTS.keys(values(Topics.TEST_CUTS)));
        same("repairs", plan.repairs(), Topics.REPAIRS);
        plan.finish().ifPresent(finish -> same("finish", List.of(finish), Topics.FINISH));
        plan.tracks().forEach(this::track);
        plan.starts().forEach(this::start);
        same("shortfalls", plan.shortfalls(), Topics.SHORTFALLS);
        same("slurry", plan.slurry(), Topics.SLURRY);
        sameOrFirst("polishing-agent", plan.polishingAgent(), Topics.POLISHING_AGENT);
        sameOrFirst("densifier", plan.densifier(), Topics.DENSIFIER);
        sameOrFirst("sealer", plan.sealer(), Topics.SEALER);
        same("finish-tasks", plan.finishTasks(), Topics.FINISH_TASKS);
        same("upkeep", plan.upkeep(), Topics.UPKEEP);
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

    private <V> void same(String part, List<V> planned, Topic<V> topic) {
        same(part, planned, values(topic));
    }

    /** A topic that was not reached leaves its part of the plan at "none". */
    private <V> void sameOrFirst(String part, V planned, Topic<V> topic) {
        Optional<V> decided = values(topic).stream().findFirst();
        decided.ifPresent(value -> same(part, List.of(planned), List.of(value)));
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
