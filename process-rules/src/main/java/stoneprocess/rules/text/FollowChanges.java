package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
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
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;

/** What is ahead and the plan did not say: for the crew first, then for the owner. */
final class FollowChanges {
    private final Recommendation plan;
    private final Recommendation ahead;
    private final List<Wording> changes = new ArrayList<>();

    private FollowChanges(Recommendation plan, Recommendation ahead) {
        this.plan = plan;
        this.ahead = ahead;
    }

    static void write(Draft draft, Recommendation plan, Recommendation ahead, RuleWords cards) {
        FollowChanges found = new FollowChanges(plan, ahead);
        found.status(cards);
        found.finish();
        found.grades();
        found.added("follow.change-prepare", Plan::tasks);
        found.added("follow.change-repair", Plan::repairs);
        found.hazards();
        found.added("follow.change-owner", Plan::acceptances);
        found.added("follow.change-closing", Plan::finishTasks);
        found.questions();
        draft.section("follow.changes");
        if (found.changes.isEmpty()) {
            draft.bullet("follow.unchanged");
        }
        found.changes.forEach(draft::bullet);
    }

    private void changed(String key, Wording change) {
        changes.add(phrase(key).with("change", change));
    }

    private void status(RuleWords cards) {
        if (ahead.status() != plan.status()) {
            changed("follow.change-status", Wording.of(ahead.status()));
            stops().forEach(rule -> changed("follow.change-reason", cards.because(rule)));
        }
    }

    /** The rules behind a refusal, an impasse or a wait of the plan ahead. */
    private List<String> stops() {
        Stream<Reason> verdict = ahead.decision(Topics.VERDICT, Subject.FLOOR).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(Reason::certain);
        Stream<Reason> impasses = ahead.impasses().stream()
                .filter(impasse -> impasse.topic().isBlocking())
                .flatMap(impasse -> Stream.concat(impasse.needs().stream(), impasse.vetoes().stream()));
        return Stream.of(ahead.refusals().stream(), verdict, impasses)
                .flatMap(Function.identity())
                .map(Reason::rule)
                .distinct()
                .toList();
    }

    private void finish() {
        Optional<Finish> now = ahead.plan().flatMap(Plan::finish);
        Optional<Finish> before = plan.plan().flatMap(Plan::finish);
        if (now.isPresent() && before.isPresent() && now.get() != before.get()) {
            changes.add(phrase("follow.change-finish").with("now", now.get()).with("before", before.get()));
        }
    }

    private void grades() {
        for (Track track : FollowText.tracks(ahead)) {
            List<AbrasiveGrade> planned = FollowText.tracks(plan).stream()
                    .filter(known -> known.kind() == track.kind())
                    .flatMap(known -> known.steps().stream())
                    .map(PlannedStep::grade)
                    .toList();
            track.steps().stream()
                    .map(PlannedStep::grade)
                    .filter(grade -> !planned.contains(grade))
                    .forEach(grade -> changes.add(phrase("follow.change-grade")
                            .with("grade", ValueWords.grade(grade))
                            .with("track", ValueWords.track(track.kind()))));
        }
    }

    private void hazards() {
        List<Hazard> known = plan.warnings().stream().map(SafetyWarning::hazard).toList();
        ahead.warnings().stream()
                .map(SafetyWarning::hazard)
                .filter(hazard -> !known.contains(hazard))
                .forEach(hazard -> changed("follow.change-hazard", Wording.of(hazard)));
    }

    private void questions() {
        List<String> known = plan.questions().stream().map(Question::field).toList();
        ahead.questions().stream()
                .map(Question::field)
                .filter(field -> !known.contains(field))
                .forEach(field -> changed("follow.change-question", FieldWords.question(field)));
    }

    private void added(String key, Function<Plan, List<? extends Term>> part) {
        List<? extends Term> before =
                plan.plan().<List<? extends Term>>map(part).orElse(List.of());
        ahead.plan().<List<? extends Term>>map(part).orElse(List.of()).stream()
                .filter(term -> !before.contains(term))
                .forEach(term -> changed(key, Wording.of(term)));
    }
}
