package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** What a plan asks for, in the order of the work. */
final class PlanSections {
    private PlanSections() {}

    static void write(Draft draft, Plan plan, FloorSurvey survey) {
        draft.list("acceptances.heading", plan.acceptances());
        preparation(draft, plan);
        draft.list("repairs.heading", plan.repairs());
        testArea(draft, plan, survey);
        draft.list("shortfalls.heading", plan.shortfalls());
        if (!plan.tracks().isEmpty()) {
            cuts(draft, plan);
        }
        draft.list("slurry.heading", plan.slurry());
        finishing(draft, plan);
        draft.list("upkeep.heading", plan.upkeep());
    }

    /** The grades of a track. */
    static Wording grades(Track track) {
        return Wording.list(
                Joint.COMMA,
                track.steps().stream()
                        .map(step -> ValueWords.grade(step.grade()))
                        .toList());
    }

    private static void preparation(Draft draft, Plan plan) {
        boolean densified = plan.densifier() == Densifier.BEFORE_CUTS;
        if (plan.preparation().isEmpty() && !densified) {
            return;
        }
        draft.section("preparation.heading");
        plan.preparation().forEach(preparation -> draft.numbered(preparation(preparation)));
        if (densified) {
            draft.numbered(Wording.of(plan.densifier()));
        }
    }

    private static Wording preparation(Preparation preparation) {
        Wording task = Wording.of(preparation.task());
        return preparation
                .rest()
                .map(rest -> sentences(task, phrase("preparation.wait").with("time", rest)))
                .orElse(task);
    }

    private static void testArea(Draft draft, Plan plan, FloorSurvey survey) {
        if (plan.testArea() != TestArea.REQUIRED) {
            return;
        }
        draft.section("test-area.heading").bullet(Wording.of(plan.testArea()));
        if (plan.testCuts().size() > 1) {
            draft.bullet(phrase("test-area.cuts")
                    .with("first", ValueWords.grade(plan.testCuts().get(0)))
                    .with("second", ValueWords.grade(plan.testCuts().get(1))));
        }
        boolean slip = plan.tracks().stream()
                .flatMap(track -> track.steps().stream())
                .anyMatch(step -> step.checks().contains(Check.WET_SLIP));
        if (slip) {
            draft.bullet(Wording.of(Check.WET_SLIP));
        }
        survey.readings().forEach(reading -> draft.bullet(baseline(reading)));
    }

    private static Wording baseline(GlossReading reading) {
        return phrase("test-area.baseline")
                .with("zone", reading.zone())
                .with("gloss", reading.gloss())
                .with("angle", reading.geometry().degrees())
                .with("state", reading.state());
    }

    private static void cuts(Draft draft, Plan plan) {
        List<PlannedStep> all =
                plan.tracks().stream().flatMap(track -> track.steps().stream()).toList();
        List<Handling> always = common(all, PlannedStep::handling);
        List<Check> alwaysChecked = common(all, PlannedStep::checks);
        draft.section("always.heading")
                .bullets(always)
                .bullet("always.passes")
                .bullet(phrase("always.hold").with("checks", sentences(alwaysChecked)))
                .bullet("always.fails");
        if (plan.densifier() == Densifier.AFTER_FINE_HONE || plan.densifier() == Densifier.AFTER_LAST_GRIT) {
            draft.bullet(Wording.of(plan.densifier()));
        }
        for (Track track : plan.tracks()) {
            List<Handling> onThisTrack = without(common(track.steps(), PlannedStep::handling), always);
            draft.section(Wording.of(track.kind())).bullets(onThisTrack);
            Set<Term> told = new LinkedHashSet<>(always);
            told.addAll(onThisTrack);
            told.addAll(alwaysChecked);
            track.steps().forEach(step -> draft.numbered(StepWords.setUp(step), step(track.kind(), step, told)));
        }
    }

    /** What holds for every step. */
    private static <T> List<T> common(List<PlannedStep> steps, Function<PlannedStep, List<T>> part) {
        return part.apply(steps.get(0)).stream()
                .filter(term -> steps.stream().allMatch(step -> part.apply(step).contains(term)))
                .toList();
    }

    private static <T> List<T> without(List<T> terms, Collection<?> told) {
        return terms.stream().filter(term -> !told.contains(term)).toList();
    }

    private static List<Item> step(TrackKind track, PlannedStep step, Set<Term> told) {
        List<Item> items = new ArrayList<>();
        items.add(label("step.water", StepWords.water(track, step)));
        items.add(label("step.passes", StepWords.passes(step)));
        List<Handling> work = without(step.handling(), told);
        if (!work.isEmpty()) {
            items.add(label("step.work", sentences(work)));
        }
        items.add(label("step.after", Wording.of(step.pickUp())));
        List<Check> checks = without(step.checks(), told);
        if (!checks.isEmpty()) {
            items.add(label("step.hold", sentences(checks)));
        }
        return items;
    }

    private static void finishing(Draft draft, Plan plan) {
        draft.section("finishing.heading");
        if (plan.polishingAgent() != PolishingAgent.NONE) {
            draft.bullet(Wording.of(plan.polishingAgent()));
        }
        finishTasks(draft, plan, task -> task.compareTo(FinishTask.MEASURE_SLIP) < 0);
        boolean later = plan.finishTasks().contains(FinishTask.SEAL_LATER);
        if (!later) {
            draft.bullet(Wording.of(plan.sealer()));
        }
        if (!later && plan.sealer() == Sealer.IMPREGNATOR) {
            draft.bullet(Wording.of(plan.sealer(), "check"));
        }
        finishTasks(draft, plan, task -> task.compareTo(FinishTask.MEASURE_SLIP) >= 0);
    }

    /** What is measured and handed over is the sealed floor. */
    private static void finishTasks(Draft draft, Plan plan, Predicate<FinishTask> which) {
        draft.bullets(plan.finishTasks().stream().filter(which).toList());
    }
}
