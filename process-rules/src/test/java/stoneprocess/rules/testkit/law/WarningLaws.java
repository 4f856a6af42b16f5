package stoneprocess.rules.testkit.law;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stoneprocess.core.plan.HazardSheet;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.stone.Body;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.survey.Access;
import stoneprocess.core.survey.Bed;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Historic;
import stoneprocess.core.survey.LaboratoryResult;
import stoneprocess.core.survey.LoadConfirmed;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.Slope;
import stoneprocess.core.survey.Structure;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WetUse;
import stoneprocess.core.survey.WorksKind;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.testkit.law.Breaches.Placed;

/** Laws about what can hurt somebody, from the published duties and from the plan itself, not from the rules. */
final class WarningLaws {
    /** Answers that make a floor more dangerous than any other answer to the same question. */
    private static final List<Consumer<FloorSurvey.Builder>> HAZARDOUS = List.of(
            worse -> worse.set(SurveyField.OCCUPIED, Occupied.YES),
            worse -> worse.set(SurveyField.CREW, new Count(1)),
            worse -> worse.set(SurveyField.WET_USE, WetUse.WET_BAREFOOT),
            worse -> worse.set(SurveyField.SLOPE, Slope.SLOPED),
            worse -> worse.set(SurveyField.HISTORIC, Historic.YES),
            worse -> worse.set(SurveyField.STRUCTURE, Structure.SUSPENDED)
                    .set(SurveyField.LOAD_CONFIRMED, LoadConfirmed.NOBODY),
            worse -> worse.set(SurveyField.BED, Bed.WOOD),
            worse -> worse.set(SurveyField.ACCESS, Access.STAIRS),
            worse -> worse.set(SurveyField.WORKS, WorksKind.FACILITY_MAINTENANCE),
            worse -> worse.set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED));

    static final Law WARNING_IS_COMPLETE = Breaches.law(
            "warning-is-complete",
            "A hazard is warned of once, in the order of the hazards, with the precautions and the deciding role of its"
                    + " sheet, the rules that raise it and their sources",
            "The same hazard has the same words on every floor, and somebody who decides",
            answer -> !answer.warnings().isEmpty(),
            WarningLaws::complete);

    static final Law SITE_IS_WARNED_OF = Breaches.law(
            "site-is-warned-of",
            "Where work is planned, what the survey says of the site is warned of: people about, somebody alone, a floor"
                    + " used wet, sloping or outdoors, a load that nobody confirmed where the floor is cut and a planetary machine,"
                    + " or outdoors a propane machine, is on hand, stairs; and whatever is planned: a suspect layer, fibres,"
                    + " historic fabric",
            "29 CFR 1910.22 (walking surfaces), 29 CFR 1926.1101 (asbestos); the rest common practice, no source",
            answer -> ofTheSite(answer).containsValue(true),
            (answer, breaches) -> require(ofTheSite(answer), answer, breaches));

    static final Law PLAN_IS_WARNED_OF = Breaches.law(
            "plan-is-warned-of",
            "What a plan does is warned of: dust, noise, electricity beside water, wet floors, lifting and slurry of any"
                    + " cut, cement in slurry, vibration of hand tools, exhaust of engines, strippers, poultices, fillers, mortar,"
                    + " sealers, densifiers and oxide powder",
            "29 CFR 1926.1153 (silica), 29 CFR 1910.95 (noise), 29 CFR 1926.404 (ground fault), 29 CFR 1910.1200"
                    + " (chemicals), NIOSH 94-110 (lifting), NIOSH 96-118 (engines), 2002/44/EC (vibration)",
            answer -> answer.plan().isPresent(),
            WarningLaws::plan);

    static final Law HAZARD_NEVER_SILENCES = Breaches.law(
            "hazard-never-silences-another",
            "A fact that calls for a warning takes no other warning away, unless the floor is refused because of it",
            "Two dangers are not less than one",
            (survey, random) -> {
                FloorSurvey.Builder worse = survey.toBuilder();
                HAZARDOUS.get(random.nextInt(HAZARDOUS.size())).accept(worse);
                return Optional.of(worse.build());
            },
            (before, after) -> !before.warnings().isEmpty() && after.status() != Status.REFUSED,
            WarningLaws::noneIsGone);

    static final List<Law> ALL =
            List.of(WARNING_IS_COMPLETE, SITE_IS_WARNED_OF, PLAN_IS_WARNED_OF, HAZARD_NEVER_SILENCES);

    private WarningLaws() {}

    private static Set<Hazard> hazards(Recommendation answer) {
        return answer.warnings().stream()
                .map(SafetyWarning::hazard)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Hazard.class)));
    }

    private static void complete(Recommendation answer, Breaches breaches) {
        List<Hazard> warned =
                answer.warnings().stream().map(SafetyWarning::hazard).toList();
        breaches.require(
                warned.equals(List.copyOf(hazards(answer))), Topics.WARNINGS, "each hazard once, in order", warned);
        breaches.require(
                warned.equals(answer.values(Topics.WARNINGS, Subject.FLOOR)),
                Topics.WARNINGS,
                "the hazards decided",
                warned);
        for (SafetyWarning warning : answer.warnings()) {
            HazardSheet sheet = HazardSheet.of(warning.hazard());
            boolean complete = !warning.precautions().isEmpty()
                    && !warning.decides().isEmpty()
                    && !warning.rules().isEmpty()
                    && !warning.sources().isEmpty();
            boolean asItsSheet = warning.precautions().equals(sheet.precautions())
                    && warning.decides().equals(sheet.decides());
            breaches.require(
                    complete && asItsSheet,
                    Topics.WARNINGS,
                    "precautions, role, rules and sources of "
                            + warning.hazard().key(),
                    warning);
        }
    }

    private static Map<Hazard, Boolean> ofTheSite(Recommendation answer) {
        Map<Hazard, Boolean> called = new LinkedHashMap<>();
        FloorSurvey survey = answer.survey();
        if (Breaches.isPlanned(answer)) {
            called.put(Hazard.BYSTANDERS, is(survey, SurveyField.OCCUPIED, Occupied.YES));
            called.put(
                    Hazard.LONE_WORK,
                    survey.answer(SurveyField.CREW)
                            .value()
                            .filter(crew -> crew.number() <= 1)
                            .isPresent());
            called.put(
                    Hazard.WET_SLIP_IN_USE,
                    is(survey, SurveyField.WET_USE, WetUse.WET_SHOD)
                            || is(survey, SurveyField.WET_USE, WetUse.WET_BAREFOOT)
                            || is(survey, SurveyField.SLOPE, Slope.SLOPED)
                            || is(survey, SurveyField.SETTING, Setting.OUTDOORS));
            boolean heavy = isOnHand(survey, MachineClass.PLANETARY)
                    || isOnHand(survey, MachineClass.PROPANE_MACHINE)
                            && is(survey, SurveyField.SETTING, Setting.OUTDOORS);
            called.put(
                    Hazard.FLOOR_LOAD,
                    heavy
                            && Breaches.cuts(answer)
                            && is(survey, SurveyField.STRUCTURE, Structure.SUSPENDED)
                            && is(survey, SurveyField.LOAD_CONFIRMED, LoadConfirmed.NOBODY));
            called.put(Hazard.LIFTING, is(survey, SurveyField.ACCESS, Access.STAIRS));
        }
        called.put(
                Hazard.HAZARDOUS_LAYER,
                is(survey, SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED)
                        || is(survey, SurveyField.HAZARDOUS_LAYER, HazardousLayer.CONFIRMED));
        called.put(Hazard.FIBROUS_STONE, is(survey, SurveyField.LABORATORY, LaboratoryResult.FIBRES_FOUND));
        called.put(Hazard.HISTORIC_FABRIC, is(survey, SurveyField.HISTORIC, Historic.YES));
        return called;
    }

    private static <T> boolean is(FloorSurvey survey, SurveyField<T> field, T value) {
        return survey.answer(field).value().equals(Optional.of(value));
    }

    private static boolean isOnHand(FloorSurvey survey, MachineClass machine) {
        return survey.answer(SurveyField.MACHINES)
                .value()
                .filter(machines -> machines.contains(machine))
                .isPresent();
    }

    private static void plan(Recommendation answer, Breaches breaches) {
        if (answer.plan().isEmpty()) {
            return;
        }
        Plan plan = answer.plan().get();
        List<Task> tasks = plan.tasks();
        List<MachineClass> machines = Breaches.steps(answer).stream()
                .map(Placed::step)
                .map(step -> step.machine())
                .toList();
        boolean cuts = !machines.isEmpty();
        Set<Family> families = Set.copyOf(answer.values(Topics.STONE, Subject.FLOOR));
        boolean cement = !families.isEmpty()
                && families.stream()
                        .allMatch(family -> Set.of(Body.CEMENT, Body.CONCRETE)
                                .containsAll(Traits.of(family).body()));
        Map<Hazard, Boolean> called = new LinkedHashMap<>();
        called.put(Hazard.SILICA_DUST, cuts);
        called.put(Hazard.NOISE, cuts);
        called.put(Hazard.ELECTRICITY, cuts);
        called.put(Hazard.WET_FLOOR, cuts);
        called.put(Hazard.LIFTING, cuts);
        called.put(Hazard.SLURRY, cuts);
        called.put(Hazard.ALKALINE_SLURRY, cuts && cement);
        called.put(Hazard.VIBRATION, machines.contains(MachineClass.EDGE_TOOL));
        called.put(Hazard.CARBON_MONOXIDE, machines.contains(MachineClass.PROPANE_MACHINE));
        called.put(Hazard.CAUSTIC_STRIPPER, tasks.contains(Task.STRIP_COATING));
        called.put(
                Hazard.POULTICE_CHEMICALS,
                tasks.contains(Task.POULTICE_OIL)
                        || tasks.contains(Task.POULTICE_ORGANIC)
                        || tasks.contains(Task.POULTICE_RUST));
        called.put(Hazard.FILLERS, tasks.contains(Task.FILL_CRACKS) || tasks.contains(Task.REGROUT));
        called.put(Hazard.MORTAR, tasks.contains(Task.RELAY_LIPPED) || tasks.contains(Task.FIX_HOLLOW));
        called.put(Hazard.SEALER_VAPOUR, plan.sealer() != Sealer.NONE);
        called.put(Hazard.DENSIFIER_ALKALI, plan.densifier() != Densifier.NONE);
        called.put(Hazard.OXIDE_DUST, plan.polishingAgent() == PolishingAgent.NEUTRAL_OXIDE);
        require(called, answer, breaches);
    }

    private static void require(Map<Hazard, Boolean> called, Recommendation answer, Breaches breaches) {
        Set<Hazard> warned = hazards(answer);
        called.forEach((hazard, calls) -> breaches.require(
                !calls || warned.contains(hazard), Topics.WARNINGS, "a warning of " + hazard.key(), warned));
    }

    private static void noneIsGone(Recommendation before, Recommendation after, Breaches breaches) {
        Set<Hazard> gone = hazards(before);
        gone.removeAll(hazards(after));
        breaches.require(gone.isEmpty(), Topics.WARNINGS, "all warnings of before", "none of " + gone);
    }
}
