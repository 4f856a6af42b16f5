package stoneprocess.rules.testkit.law;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.StepKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.FinishReach;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.testkit.law.Breaches.Placed;

/** Laws about a plan by itself, from the trade: what no crew should be handed, whatever the rules. */
final class PlanLaws {
    private static final Set<MachineClass> TAKES_WEIGHTS = Set.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY);

    static final Law SAYS_WHAT_WAS_DECIDED = Breaches.law(
            "plan-says-what-was-decided",
            "Every part of a plan is the value of its topic, and every figure is that of its step",
            "A plan that differs from its reasons cannot be explained",
            answer -> answer.plan().isPresent(),
            PlanLaws::saysWhatWasDecided);

    static final Law TEST_AREA_BEFORE_A_CUT = Breaches.law(
            "test-area-before-a-cut",
            "Where something is cut a test area comes first, tried from fine to coarse, and its cuts reach the first cut;"
                    + " a floor that is only cleaned has none",
            "The first cut is a guess until it has cleared the damage on this floor; the signed area is the standard of"
                    + " acceptance. Common practice, no source",
            Breaches::cuts,
            PlanLaws::testArea);

    static final Law EVERY_GRADE_IS_CHECKED = Breaches.law(
            "every-grade-is-checked",
            "After every grade the floor is rinsed, dried and looked at in low light before the next; after the last one it"
                    + " is held against the test area",
            "A scratch that is left behind shows only at the polish, when it costs the whole sequence. Common practice, no"
                    + " source",
            Breaches::cuts,
            PlanLaws::checked);

    static final Law ENDS_WITH_CARE = Breaches.law(
            "plan-ends-with-care",
            "Every plan closes with a hand-over and leaves a routine of upkeep",
            "Grit and the wrong cleaner undo the work within months. Common practice, no source",
            answer -> answer.plan().isPresent(),
            (answer, breaches) -> answer.plan().ifPresent(plan -> {
                breaches.require(
                        plan.finishTasks().contains(FinishTask.HAND_OVER),
                        Topics.FINISH_TASKS,
                        "a hand-over",
                        plan.finishTasks());
                breaches.require(!plan.upkeep().isEmpty(), Topics.UPKEEP, "a routine", plan.upkeep());
            }));

    static final Law COATING_COMES_OFF_FIRST = Breaches.law(
            "coating-comes-off-first",
            "A floor with a coat of wax or acrylic is stripped before it is cut, nearly dry where water would move salts;"
                    + " urethane and epoxy are removed, or tried on a spot where no trial has shown how",
            "A coat clogs the diamonds and hides the stone. Common practice, no source",
            answer -> Breaches.cuts(answer) && (isFilm(answer) || isSoftCoat(answer)),
            PlanLaws::stripped);

    static final Law ACID_ONLY_ON_CALCITE = Breaches.law(
            "acid-only-on-calcite",
            "Powder with acid and crystalliser are planned only where every family that the stone may be fizzes as calcite"
                    + " does",
            "Oxalic acid and fluorosilicates act on calcite alone. Common practice, no source",
            answer -> answer.plan()
                    .map(Plan::polishingAgent)
                    .filter(PlanLaws::isAcid)
                    .isPresent(),
            PlanLaws::acidOnCalcite);

    static final Law DENSIFIER_ONLY_ON_CONCRETE = Breaches.law(
            "densifier-only-on-concrete",
            "A densifier is planned only where every family that the floor may be is concrete or cement terrazzo",
            "Silicates react with the free lime of cement; on stone they leave a film. Common practice, no source",
            answer -> answer.plan()
                    .filter(plan -> plan.densifier() != Densifier.NONE)
                    .isPresent(),
            PlanLaws::densified);

    static final Law DRY_ONLY_WITH_EXTRACTOR = Breaches.law(
            "dry-only-with-extractor",
            "A grade is worked dry only where a high-efficiency extractor is known to be on hand",
            "29 CFR 1926.1153 Table 1: grinding dry wants a collector with a filter of 99 per cent or better",
            answer -> Breaches.steps(answer).stream()
                    .anyMatch(placed -> placed.step().method() == WorkMethod.DRY),
            (answer, breaches) -> Breaches.steps(answer).stream()
                    .filter(placed -> placed.step().method() == WorkMethod.DRY)
                    .forEach(placed -> breaches.require(
                            answer.survey()
                                    .answer(SurveyField.EXTRACTOR)
                                    .value()
                                    .equals(Optional.of(Extractor.HEPA)),
                            Topics.METAL_METHOD,
                            "wet work without an extractor",
                            placed.subject().key() + " dry")));

    static final Law NO_ENGINE_INDOORS = Breaches.law(
            "no-engine-indoors",
            "No machine with a combustion engine is planned but outdoors",
            "NIOSH 96-118: do not use engines in buildings or partly enclosed places; opening doors is not enough",
            answer -> Breaches.steps(answer).stream()
                    .anyMatch(placed -> placed.step().machine() == MachineClass.PROPANE_MACHINE),
            (answer, breaches) -> Breaches.steps(answer).stream()
                    .filter(placed -> placed.step().machine() == MachineClass.PROPANE_MACHINE)
                    .forEach(placed -> breaches.require(
                            answer.survey().answer(SurveyField.SETTING).value().equals(Optional.of(Setting.OUTDOORS)),
                            Topics.MACHINE,
                            placed.subject(),
                            "an electric machine indoors",
                            MachineClass.PROPANE_MACHINE.key())));

    static final Law MACHINES_ARE_ON_HAND = Breaches.law(
            "machines-are-on-hand",
            "Where the machines on hand are known, a plan uses no other",
            "A crew cannot work with what is not there",
            answer -> Breaches.cuts(answer)
                    && answer.survey().answer(SurveyField.MACHINES).isKnown(),
            PlanLaws::onHand);

    static final Law FINISH_IS_WITHIN_THE_WISH = Breaches.law(
            "finish-is-within-the-wish",
            "No plan goes for a higher finish than the owner named",
            "Each class of finish costs grades, time and stone, and grip in the wet",
            answer -> answer.plan().flatMap(Plan::finish).isPresent()
                    && most(answer).isPresent(),
            PlanLaws::withinTheWish);

    static final Law FINISH_IS_WITHIN_REACH = Breaches.law(
            "finish-is-within-reach",
            "No plan goes for a higher finish than some family that the stone may be can take; a family that no floor crew"
                    + " grinds is not cut",
            "Sandstone and slate do not polish, whatever the grade; the table of families with its sources",
            answer -> answer.plan().flatMap(Plan::finish).isPresent()
                    && !answer.values(Topics.STONE, Subject.FLOOR).isEmpty(),
            PlanLaws::withinReach);

    static final Law TRACKS_END_ALIKE = Breaches.law(
            "tracks-end-alike",
            "All tracks of a plan that is cut in the open field end at the same grade",
            "An edge or a repair that ends coarser or finer shows as a frame or a patch. Common practice, no source",
            answer -> !answer.steps(TrackKind.OPEN_FIELD).isEmpty()
                    && answer.plan().orElseThrow().tracks().size() > 1,
            PlanLaws::endAlike);

    static final Law FIGURES_ARE_POSSIBLE = Breaches.law(
            "figures-are-possible",
            "Every step takes at least one pass and no negative weight; a dry step takes no water, a wet one takes some"
                    + " where the area is known; only a single disc and a planetary machine take weights",
            "A figure that cannot be is worse than none",
            Breaches::cuts,
            PlanLaws::possible);

    static final Law MORE_LOAD_IS_NEVER_SLOWER = Breaches.law(
            "more-load-is-never-slower",
            "Of two steps of one plan with the same machine and bond, the one with as much weight or more, and no more to take"
                    + " off for the coarseness of its grit, takes no more passes",
            "Preston's law: removal goes with pressure; F. W. Preston, J. Soc. Glass Technol. 11 (1927), from memory",
            answer -> Breaches.steps(answer).stream()
                    .anyMatch(one ->
                            Breaches.steps(answer).stream().anyMatch(other -> one != other && isAsLight(one, other))),
            PlanLaws::passes);

    static final Law TOTALS_ARE_SUMS = Breaches.law(
            "totals-are-sums",
            "Where the area is known and a floor machine cuts the open field, the estimate has every grade of the plan's open field once,"
                    + " the last again after grout, with its passes, and its hours and its water are the sums of their lines",
            "An owner adds the lines up",
            PlanLaws::isEstimated,
            PlanLaws::totals);

    static final List<Law> ALL = List.of(
            SAYS_WHAT_WAS_DECIDED,
            TEST_AREA_BEFORE_A_CUT,
            EVERY_GRADE_IS_CHECKED,
            ENDS_WITH_CARE,
            COATING_COMES_OFF_FIRST,
            ACID_ONLY_ON_CALCITE,
            DENSIFIER_ONLY_ON_CONCRETE,
            DRY_ONLY_WITH_EXTRACTOR,
            NO_ENGINE_INDOORS,
            MACHINES_ARE_ON_HAND,
            FINISH_IS_WITHIN_THE_WISH,
            FINISH_IS_WITHIN_REACH,
            TRACKS_END_ALIKE,
            FIGURES_ARE_POSSIBLE,
            MORE_LOAD_IS_NEVER_SLOWER,
            TOTALS_ARE_SUMS);

    private PlanLaws() {}

    private static void saysWhatWasDecided(Recommendation answer, Breaches breaches) {
        if (answer.plan().isEmpty()) {
            return;
        }
        Plan plan = answer.plan().get();
        breaches.same(answer, Topics.PREPARATION, Subject.FLOOR, plan.tasks());
        breaches.same(answer, Topics.ACCEPTANCES, Subject.FLOOR, plan.acceptances());
        breaches.same(answer, Topics.REPAIRS, Subject.FLOOR, plan.repairs());
        breaches.same(answer, Topics.SHORTFALLS, Subject.FLOOR, plan.shortfalls());
        breaches.same(answer, Topics.SLURRY, Subject.FLOOR, plan.slurry());
        breaches.same(answer, Topics.POLISHING_AGENT, Subject.FLOOR, List.of(plan.polishingAgent()));
        breaches.same(answer, Topics.DENSIFIER, Subject.FLOOR, List.of(plan.densifier()));
        breaches.same(answer, Topics.SEALER, Subject.FLOOR, List.of(plan.sealer()));
        breaches.same(answer, Topics.FINISH_TASKS, Subject.FLOOR, plan.finishTasks());
        breaches.same(answer, Topics.UPKEEP, Subject.FLOOR, plan.upkeep());
        plan.finish().ifPresent(finish -> breaches.same(answer, Topics.FINISH, Subject.FLOOR, List.of(finish)));
        for (Placed placed : Breaches.steps(answer)) {
            PlannedStep step = placed.step();
            breaches.same(answer, Topics.MACHINE, placed.subject(), List.of(step.machine()));
            breaches.same(answer, Topics.ADDED_WEIGHT, placed.subject(), List.of(step.weight()));
            breaches.same(answer, Topics.WATER_LEVEL, placed.subject(), List.of(step.water()));
            breaches.same(answer, Topics.HANDLING, placed.subject(), step.handling());
            breaches.same(answer, Topics.PICK_UP, placed.subject(), List.of(step.pickUp()));
            breaches.same(answer, Topics.CHECKS, placed.subject(), step.checks());
        }
    }

    private static void testArea(Recommendation answer, Breaches breaches) {
        if (answer.plan().isEmpty()) {
            return;
        }
        Plan plan = answer.plan().get();
        boolean cuts = !plan.tracks().isEmpty();
        boolean cleanOnly = answer.values(Topics.VERDICT, Subject.FLOOR).contains(Verdict.CLEAN_ONLY);
        breaches.require(
                (plan.testArea() == TestArea.REQUIRED) == cuts || !cuts && !cleanOnly,
                Topics.TEST_AREA,
                "a test area exactly where something is cut",
                plan.testArea().key());
        List<AbrasiveGrade> tried = plan.testCuts();
        breaches.require(tried.isEmpty() || cuts, Topics.TEST_CUTS, "nothing tried where nothing is cut", tried);
        for (int i = 1; i < tried.size(); i++) {
            Cut before = Cut.of(tried.get(i - 1));
            Cut after = Cut.of(tried.get(i));
            breaches.require(
                    after.compareTo(before) >= 0,
                    Topics.TEST_CUTS,
                    "finer before coarser",
                    before.key() + " before " + after.key());
        }
        plan.tracks().stream()
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .map(track -> track.steps().get(0).grade())
                .forEach(first ->
                        breaches.require(tried.contains(first), Topics.TEST_CUTS, "a trial of " + first.key(), tried));
    }

    private static void checked(Recommendation answer, Breaches breaches) {
        for (Placed placed : Breaches.steps(answer)) {
            List<Check> checks = placed.step().checks();
            breaches.require(
                    checks.containsAll(Set.of(Check.RINSED_CLEAN_DRY, Check.LOW_LIGHT)),
                    Topics.CHECKS,
                    placed.subject(),
                    "rinsed, dry and looked at in low light",
                    checks);
            breaches.require(
                    !placed.isLast() || checks.contains(Check.AGAINST_TEST_AREA) || checks.contains(Check.BLENDS_IN),
                    Topics.CHECKS,
                    placed.subject(),
                    "held against the test area or the field",
                    checks);
        }
    }

    private static boolean isFilm(Recommendation answer) {
        return isCoated(answer, Set.of(Coating.URETHANE, Coating.EPOXY));
    }

    private static boolean isSoftCoat(Recommendation answer) {
        return isCoated(answer, Set.of(Coating.WAX, Coating.ACRYLIC));
    }

    private static boolean isCoated(Recommendation answer, Set<Coating> coats) {
        return answer.survey()
                .answer(SurveyField.COATING)
                .value()
                .filter(coats::contains)
                .isPresent();
    }

    private static boolean isAcid(PolishingAgent agent) {
        return agent == PolishingAgent.OXALIC_COMPOUND || agent == PolishingAgent.CRYSTALLISER;
    }

    private static void stripped(Recommendation answer, Breaches breaches) {
        boolean film = isFilm(answer);
        boolean soft = isSoftCoat(answer);
        boolean cuts = answer.plan().filter(plan -> !plan.tracks().isEmpty()).isPresent();
        if (!cuts) {
            return;
        }
        List<Task> tasks = answer.plan().orElseThrow().tasks();
        breaches.require(
                !soft || tasks.contains(Task.STRIP_COATING) || tasks.contains(Task.STRIP_NEARLY_DRY),
                Topics.PREPARATION,
                "the coat stripped",
                tasks);
        breaches.require(
                !film || tasks.contains(Task.REMOVE_FILM) || tasks.contains(Task.CLEANING_TRIAL),
                Topics.PREPARATION,
                "the film removed or tried",
                tasks);
    }

    private static void acidOnCalcite(Recommendation answer, Breaches breaches) {
        answer.plan()
                .map(Plan::polishingAgent)
                .filter(PlanLaws::isAcid)
                .ifPresent(agent -> answer.values(Topics.STONE, Subject.FLOOR).stream()
                        .filter(family -> !Traits.of(family).acid().contains(AcidReaction.STRONG))
                        .forEach(family ->
                                breaches.add(Topics.POLISHING_AGENT, "no acid on " + family.key(), agent.key())));
    }

    private static void densified(Recommendation answer, Breaches breaches) {
        answer.plan()
                .map(Plan::densifier)
                .filter(densifier -> densifier != Densifier.NONE)
                .ifPresent(densifier -> answer.values(Topics.STONE, Subject.FLOOR).stream()
                        .filter(family -> family != Family.CEMENT_TERRAZZO
                                && !Traits.of(family).body().contains(Body.CONCRETE))
                        .forEach(family ->
                                breaches.add(Topics.DENSIFIER, "no densifier on " + family.key(), densifier.key())));
    }

    private static void onHand(Recommendation answer, Breaches breaches) {
        answer.survey()
                .answer(SurveyField.MACHINES)
                .value()
                .ifPresent(onHand -> Breaches.steps(answer)
                        .forEach(placed -> breaches.require(
                                onHand.contains(placed.step().machine()),
                                Topics.MACHINE,
                                placed.subject(),
                                "one of " + onHand,
                                placed.step().machine().key())));
    }

    private static Optional<Finish> most(Recommendation answer) {
        Map<Goal, Finish> named = new EnumMap<>(Map.of(
                Goal.HONE, Finish.HONE,
                Goal.SATIN, Finish.SATIN,
                Goal.SEMI_GLOSS, Finish.SEMI_GLOSS,
                Goal.POLISH, Finish.POLISH,
                Goal.HIGH_GLOSS, Finish.HIGH_GLOSS));
        return answer.survey().answer(SurveyField.GOAL).value().map(named::get);
    }

    private static void withinTheWish(Recommendation answer, Breaches breaches) {
        Optional<Finish> most = most(answer);
        Optional<Finish> planned = answer.plan().flatMap(Plan::finish);
        if (most.isPresent() && planned.isPresent()) {
            breaches.require(
                    planned.get().compareTo(most.get()) <= 0,
                    Topics.FINISH,
                    "at most " + most.get().key(),
                    planned.get().key());
        }
    }

    private static void withinReach(Recommendation answer, Breaches breaches) {
        answer.plan().flatMap(Plan::finish).ifPresent(finish -> {
            List<Family> families = answer.values(Topics.STONE, Subject.FLOOR);
            boolean reached = families.isEmpty()
                    || families.stream()
                            .flatMap(family -> Traits.of(family).finish().stream())
                            .anyMatch(reach -> highest(reach)
                                    .filter(most -> finish.compareTo(most) <= 0)
                                    .isPresent());
            breaches.require(reached, Topics.FINISH, "a finish that one of " + families + " takes", finish.key());
        });
    }

    private static Optional<Finish> highest(FinishReach reach) {
        return switch (reach) {
            case NEVER_GROUND -> Optional.empty();
            case HONE -> Optional.of(Finish.HONE);
            case SATIN -> Optional.of(Finish.SATIN);
            case POLISH -> Optional.of(Finish.HIGH_GLOSS);
        };
    }

    private static void endAlike(Recommendation answer, Breaches breaches) {
        List<Track> tracks = answer.plan().map(Plan::tracks).orElse(List.of());
        List<String> ends = tracks.stream()
                .map(track ->
                        track.steps().get(track.steps().size() - 1).grade().key())
                .distinct()
                .toList();
        boolean field = tracks.stream().anyMatch(track -> track.kind() == TrackKind.OPEN_FIELD);
        breaches.require(!field || ends.size() == 1, Topics.GRIT_PATH, Subject.OPEN_FIELD, "one last grade", ends);
    }

    private static void possible(Recommendation answer, Breaches breaches) {
        boolean areaKnown = answer.survey().answer(SurveyField.AREA).isKnown();
        for (Placed placed : Breaches.steps(answer)) {
            PlannedStep step = placed.step();
            boolean dry = step.method() == WorkMethod.DRY;
            breaches.require(
                    step.passes().low() >= 1
                            && step.passes().high() >= step.passes().low(),
                    Topics.PASSES,
                    placed.subject(),
                    "one pass at least",
                    step.passes());
            breaches.require(
                    (step.water() == WaterLevel.NONE) == dry,
                    Topics.WATER_LEVEL,
                    placed.subject(),
                    "water exactly where it is worked wet",
                    step.method().key() + " with " + step.water().key());
            // The area of a repair is not measured; its litres may be left out.
            boolean litres = step.litresPerPass()
                    .filter(range -> range.low().litres() > 0)
                    .isPresent();
            boolean wanted = !dry && areaKnown;
            boolean field = placed.track().kind() == TrackKind.OPEN_FIELD;
            breaches.require(
                    litres == wanted || !field && !litres,
                    Topics.LITRES,
                    placed.subject(),
                    "litres where the area is known and the grade is worked wet",
                    step.litresPerPass());
            boolean weightless = step.weight() == AddedWeight.NONE || !TAKES_WEIGHTS.contains(step.machine());
            breaches.require(
                    weightless
                            ? step.addedMass().high().kilograms() == 0
                            : step.addedMass().high().kilograms() > 0,
                    Topics.ADDED_WEIGHT,
                    placed.subject(),
                    "a mass that fits " + step.weight().key(),
                    step.addedMass());
            breaches.require(
                    step.method() == WorkMethod.WET || step.grade().bond() == Bond.METAL,
                    Topics.METAL_METHOD,
                    placed.subject(),
                    "only metal worked dry",
                    step.method().key());
        }
    }

    private static void passes(Recommendation answer, Breaches breaches) {
        List<Placed> steps = Breaches.steps(answer);
        for (Placed one : steps) {
            for (Placed other : steps) {
                breaches.require(
                        !isAsLight(one, other)
                                || one.step().passes().high()
                                        <= other.step().passes().high(),
                        Topics.PASSES,
                        one.subject(),
                        "passes that go with weight, as at " + other.subject().key() + ": "
                                + other.step().passes(),
                        one.step().passes());
            }
        }
    }

    /** One with as much weight or more, and no more to take off. */
    private static boolean isAsLight(Placed one, Placed other) {
        return one.step().machine() == other.step().machine()
                && one.step().grade().bond() == other.step().grade().bond()
                && one.step().weight().compareTo(other.step().weight()) >= 0
                && toTakeOff(one) <= toTakeOff(other);
    }

    /** Depth for the coarseness of the grit, which a pass takes less of the finer it is. */
    private static double toTakeOff(Placed placed) {
        return placed.step().depth().high().millimetres()
                * placed.step().grade().number();
    }

    private static boolean isEstimated(Recommendation answer) {
        List<PlannedStep> field = answer.steps(TrackKind.OPEN_FIELD);
        boolean known = answer.survey().answer(SurveyField.AREA).isKnown();
        Set<MachineClass> estimated = Set.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY);
        boolean usual = field.stream().allMatch(step -> estimated.contains(step.machine()));
        return !field.isEmpty() && known && usual && PlannedJob.isThere(answer);
    }

    private static void totals(Recommendation answer, Breaches breaches) {
        if (!isEstimated(answer)) {
            return;
        }
        Estimate estimate = PlannedJob.of(answer, JobOptions.defaults()).estimate();
        List<String> planned = answer.plan().orElseThrow().tracks().stream()
                .filter(track -> track.kind() == TrackKind.OPEN_FIELD)
                .flatMap(track -> track.steps().stream())
                .map(step -> step.grade().key() + " " + step.passes())
                .toList();
        List<String> worked = estimate.job().steps().stream()
                .filter(step -> step.kind() != StepKind.POWDER && !step.name().startsWith("cut-grout "))
                .map(step -> step.name() + " " + step.passes())
                .toList();
        breaches.require(planned.equals(worked), Topics.PASSES, "the plan's steps " + planned, worked);
        double minutes = estimate.work().stream()
                .mapToDouble(line -> line.personHours().high().minutes())
                .sum();
        double total = estimate.personHours().high().minutes();
        breaches.require(Math.abs(minutes - total) <= 1e-6 * total, Topics.PASSES, minutes + " min", total);
        double litres = estimate.consumables().stream()
                .filter(line -> line.kind() == ConsumableKind.WATER)
                .mapToDouble(line -> line.amount().high().kept())
                .sum();
        double sum = estimate.total(ConsumableKind.WATER)
                .map(spread -> spread.high().kept())
                .orElse(0.0);
        breaches.require(Math.abs(litres - sum) <= 1e-6 * litres, Topics.LITRES, litres + " l", sum);
    }
}
