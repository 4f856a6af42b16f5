package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Track;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.Mend;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What is ahead and the plan did not say: for the crew first, then for the owner. */
final class FollowChanges {
    private final Recommendation plan;
    private final Recommendation ahead;
    private final List<Wording> changes = new ArrayList<>();

    private FollowChanges(Recommendation plan, Recommendation ahead) {
        this.plan = plan;
        this.ahead = ahead;
    }

    /**
     * @param mends what comes before the grits to come and the plan did not have
     */
    static void write(Draft draft, Recommendation plan, Recommendation ahead, RuleWords cards, List<Mend> mends) {
        FollowChanges found = new FollowChanges(plan, ahead);
        mends.forEach(mend -> found.changes.add(phrase("follow.change-mend").with("change", mend)));
        found.status(cards);
        found.finish();
        found.grades();
        found.added("follow.change-prepare", Plan::tasks);
        found.added("follow.change-repair", Plan::repairs);
        found.added("follow.change-hazard", plan.warnings(), ahead.warnings(), SafetyWarning::hazard, Wording::of);
        found.added("follow.change-owner", Plan::acceptances);
        found.added("follow.change-closing", Plan::finishTasks);
        found.added(
                "follow.change-question",
                plan.questions(),
                ahead.questions(),
                Question::field,
                FollowChanges::question);
        draft.list("follow.changes", found.changes, Function.identity());
    }

    /** A question in the words of what has happened, where the bundles have them. */
    private static Wording question(String field) {
        String own = "field." + field + ".happened";
        return Language.english().has(own) ? phrase(own) : FieldWords.question(field);
    }

    private void status(RuleWords cards) {
        if (ahead.status() != plan.status()) {
            changes.add(phrase("follow.change-status").with("change", ahead.status()));
            stops(ahead)
                    .forEach(rule -> changes.add(phrase("follow.change-reason").with("change", cards.because(rule))));
        }
    }

    /** The rules behind a refusal, an impasse or a wait. */
    static List<String> stops(Recommendation ahead) {
        return stops(
                ahead,
                ahead.impasses().stream()
                        .filter(impasse -> impasse.topic().isBlocking())
                        .toList());
    }

    /** The rules behind a refusal, a wait, or one of these impasses. */
    static List<String> stops(Recommendation ahead, List<Impasse<?>> impasses) {
        List<Reason> reasons = new ArrayList<>(ahead.refusals());
        ahead.decision(Topics.VERDICT, Subject.FLOOR).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(Reason::certain)
                .forEach(reasons::add);
        impasses.forEach(impasse -> reasons.addAll(impasse.reasons()));
        return RuleWords.rules(reasons);
    }

    private void finish() {
        Optional<Finish> now = ahead.plan().flatMap(Plan::finish);
        Optional<Finish> before = plan.plan().flatMap(Plan::finish);
        if (now.isPresent() && before.isPresent() && now.get() != before.get()) {
            changes.add(phrase("follow.change-finish").with("now", now.get()).with("before", before.get()));
        }
    }

    private void grades() {
        Map<List<AbrasiveGrade>, List<Wording>> tracks = new LinkedHashMap<>();
        for (Track track : FollowText.tracks(ahead)) {
            List<AbrasiveGrade> planned = FollowText.tracks(plan).stream()
                    .filter(known -> known.kind() == track.kind())
                    .flatMap(known -> known.steps().stream())
                    .map(PlannedStep::grade)
                    .toList();
            List<AbrasiveGrade> added = track.steps().stream()
                    .map(PlannedStep::grade)
                    .filter(grade -> !planned.contains(grade))
                    .toList();
            if (!added.isEmpty()) {
                tracks.computeIfAbsent(added, grades -> new ArrayList<>()).add(ValueWords.track(track.kind()));
            }
        }
        tracks.forEach((grades, kinds) -> changes.add(phrase("follow.change-grade")
                .with("track", Wording.list(Joint.COMMA, kinds))
                .with("grades", Wording.list(Joint.COMMA, grades, ValueWords::grade))));
    }

    private <T extends Term> void added(String key, Function<Plan, List<T>> part) {
        added(
                key,
                plan.plan().map(part).orElse(List.of()),
                ahead.plan().map(part).orElse(List.of()),
                Function.identity(),
                Wording::of);
    }

    private <M, T> void added(String key, List<M> before, List<M> now, Function<M, T> part, Function<T, Wording> word) {
        List<T> known = before.stream().map(part).toList();
        now.stream()
                .map(part)
                .filter(added -> !known.contains(added))
                .forEach(added -> changes.add(phrase(key).with("change", word.apply(added))));
    }
}
