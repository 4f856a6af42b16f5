package stoneprocess.core.json;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Input;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.HouseRule;
import stoneprocess.core.plan.HouseRuleKind;
import stoneprocess.core.plan.LaneStart;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Precaution;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Acceptance;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PickUp;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Shortfall;
import stoneprocess.core.topic.SlurryRoute;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;

/** Invented objects that use every part of the two forms. */
final class Examples {
    private Examples() {}

    static FloorSurvey survey() {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        damages.put(
                DamageKind.SCRATCHES,
                new Damage(
                        DamageKind.SCRATCHES,
                        Optional.of(ScratchClass.FELT_BY_NAIL),
                        Optional.of(new Length(0.05)),
                        Optional.of(new Share(12.5))));
        damages.put(DamageKind.ETCHES, Damage.none(DamageKind.ETCHES));
        damages.put(
                DamageKind.LIPPAGE,
                new Damage(DamageKind.LIPPAGE, Optional.empty(), Optional.of(new Length(1.2)), Optional.empty()));
        return FloorSurvey.builder("Lamp room, \"upper\" floor")
                .set(SurveyField.STONE_NAME, "white-marble")
                .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                .set(SurveyField.AREA, new Area(42.125))
                .set(SurveyField.MACHINES, EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.EDGE_TOOL))
                .set(SurveyField.GRADES, List.of())
                .set(SurveyField.GOAL, Goal.MATCH_SAMPLE)
                .set(SurveyField.GOAL_GLOSS, new Gloss(55))
                .zone(new Zone("lane", ZoneKind.LANE, new Share(40), damages))
                .zone(new Zone("rest", ZoneKind.FIELD, new Share(60), Map.of()))
                .reading(new GlossReading("lane", Geometry.DEG_60, new Gloss(12.3), SurfaceState.CLEAN_DRY))
                .build();
    }

    static GritSequence sequence() {
        return GritSequence.of(List.of(
                new AbrasiveGrade(Bond.RESIN, 120, Range.of(new Length(0.09), new Length(0.13))),
                new AbrasiveGrade(Bond.RESIN, 320, Range.of(new Length(0.03), new Length(0.05)))));
    }

    static Reason reason(ContributionKind kind) {
        return reason(kind, List.of(Cut.HONE, Cut.COARSE_HONE));
    }

    static Reason reason(ContributionKind kind, List<? extends Term> values) {
        return new Reason(
                kind,
                "CUT-003",
                values,
                List.of(new MatchedFact(
                        "Scratches", List.of("seen", "felt-by-nail"), false, List.of("damages.scratches"), List.of())));
    }

    static Recommendation planned() {
        AbrasiveGrade grade = sequence().grades().get(0);
        PlannedStep step = new PlannedStep(
                grade,
                WorkMethod.WET,
                MachineClass.SINGLE_DISC,
                AddedWeight.REDUCED,
                Range.of(new Mass(11.25), new Mass(22.5)),
                WaterLevel.GENEROUS,
                Optional.of(Range.of(new Volume(7), new Volume(10))),
                Range.of(6, 10),
                Range.of(new Length(0.038), new Length(0.0775)),
                List.of(Handling.CROSS_HATCH, Handling.NEVER_DRY),
                PickUp.TWO_BUCKETS,
                List.of(Check.LOW_LIGHT));
        PlannedStep edge = new PlannedStep(
                grade,
                WorkMethod.WET,
                MachineClass.EDGE_TOOL,
                AddedWeight.NONE,
                Range.of(new Mass(0), new Mass(0)),
                WaterLevel.SCANT,
                Optional.empty(),
                Range.of(8, 10),
                Range.of(new Length(0.038), new Length(0.038)),
                List.of(),
                PickUp.WET_VACUUM,
                List.of());
        Plan plan = new Plan(
                List.of(
                        new Preparation(Task.MASK, Optional.empty()),
                        new Preparation(
                                Task.REGROUT,
                                Optional.of(Range.of(TimeSpan.of(24, Unit.HOUR), TimeSpan.of(72, Unit.HOUR))))),
                List.of(Acceptance.LEAVING_IT_IS_AN_OPTION),
                TestArea.REQUIRED,
                List.of(sequence().grades().get(1)),
                List.of(Repair.LOCAL_ETCHES),
                Optional.of(Finish.SATIN),
                List.of(new Track(TrackKind.OPEN_FIELD, List.of(step)), new Track(TrackKind.EDGE, List.of(edge))),
                List.of(new LaneStart("lane", sequence().grades().get(1))),
                List.of(Shortfall.NO_WET_VACUUM),
                List.of(SlurryRoute.COLLECT_AND_SETTLE),
                PolishingAgent.NEUTRAL_OXIDE,
                Densifier.NONE,
                Sealer.IMPREGNATOR,
                List.of(FinishTask.HAND_OVER),
                List.of(Upkeep.DUST_MOP));
        Decision<Cut> decision = new Decision<>(
                Topics.FIRST_CUT,
                Subject.FLOOR,
                List.of(Cut.HONE),
                List.of(reason(ContributionKind.NEED)),
                List.of(reason(ContributionKind.WISH)),
                List.of(reason(ContributionKind.WISH)),
                List.of());
        Decision<Grit> path = new Decision<>(
                Topics.GRIT_PATH,
                new Subject.OfTrack(TrackKind.EDGE),
                List.of(new Grit(Bond.RESIN, 120)),
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        new Input.OfTopic(Topics.FIRST_CUT),
                        new Input.OfField(SurveyField.GRADES),
                        new Input.OfParameter("step-ratio.aim")));
        return new Recommendation(
                Status.PROVISIONAL,
                Optional.of(plan),
                List.of(),
                List.of(new SafetyWarning(
                        Hazard.NOISE,
                        List.of(Precaution.QUIETER_FIRST, Precaution.HEARING_PROTECTION),
                        List.of(Role.HYGIENIST),
                        List.of("SAF-007"),
                        List.of("29-CFR-1910.95"),
                        true)),
                List.of(new Question(
                        "damages.scratches", List.of("CUT-003"), List.of("CUT-004"), List.of(Topics.FIRST_CUT))),
                List.of(),
                Stream.concat(Stream.of(decision, path), outcomes(plan)).toList(),
                survey(),
                sequence(),
                Parameters.standard().with("lippage.high", new Length(4)),
                new RulebaseStamp(
                        "0.1.0",
                        "ab".repeat(32),
                        List.of("UPK-006"),
                        List.of(
                                new HouseRule(
                                        HouseRuleKind.SWITCHED_OFF, "UPK-006", "the master", "nobody burnishes here"),
                                new HouseRule(HouseRuleKind.RETUNED, "lippage.high", "the master", "old floors"))));
    }

    /** The outcomes that such a plan and its warning come from; the path of the edge and the first cut stand apart. */
    private static Stream<Outcome> outcomes(Plan plan) {
        PlannedStep step = plan.steps(TrackKind.OPEN_FIELD).get(0);
        PlannedStep edge = plan.steps(TrackKind.EDGE).get(0);
        Stream<Outcome> ofFloor = Stream.of(
                settled(Topics.PREPARATION, Subject.FLOOR, plan.tasks()),
                settled(Topics.ACCEPTANCES, Subject.FLOOR, plan.acceptances()),
                settled(Topics.TEST_AREA, Subject.FLOOR, List.of(plan.testArea())),
                settled(Topics.TEST_CUTS, Subject.FLOOR, List.of(new Grit(Bond.RESIN, 320))),
                settled(Topics.REPAIRS, Subject.FLOOR, plan.repairs()),
                settled(Topics.FINISH, Subject.FLOOR, plan.finish().stream().toList()),
                settled(Topics.GRIT_PATH, Subject.OPEN_FIELD, List.of(new Grit(Bond.RESIN, 120))),
                settled(Topics.SHORTFALLS, Subject.FLOOR, plan.shortfalls()),
                settled(Topics.SLURRY, Subject.FLOOR, plan.slurry()),
                settled(Topics.POLISHING_AGENT, Subject.FLOOR, List.of(plan.polishingAgent())),
                settled(Topics.SEALER, Subject.FLOOR, List.of(plan.sealer())),
                settled(Topics.FINISH_TASKS, Subject.FLOOR, plan.finishTasks()),
                settled(Topics.UPKEEP, Subject.FLOOR, plan.upkeep()),
                new Decision<>(
                        Topics.WARNINGS,
                        Subject.FLOOR,
                        List.of(Hazard.NOISE),
                        List.of(new Reason(ContributionKind.NEED, "SAF-007", List.of(Hazard.NOISE), List.of())),
                        List.of(),
                        List.of(),
                        List.of()));
        return Stream.of(
                        ofFloor,
                        ofStep(new Subject.OfStep(TrackKind.OPEN_FIELD, "resin-120"), step),
                        ofStep(new Subject.OfStep(TrackKind.EDGE, "resin-120"), edge))
                .flatMap(outcomes -> outcomes);
    }

    private static Stream<Outcome> ofStep(Subject subject, PlannedStep step) {
        return Stream.of(
                settled(Topics.MACHINE, subject, List.of(step.machine())),
                settled(Topics.ADDED_WEIGHT, subject, List.of(step.weight())),
                settled(Topics.WATER_LEVEL, subject, List.of(step.water())),
                settled(Topics.PASSES, subject, List.of(step.passes())),
                settled(Topics.LITRES, subject, step.litresPerPass().stream().toList()),
                settled(Topics.HANDLING, subject, step.handling()),
                settled(Topics.PICK_UP, subject, List.of(step.pickUp())),
                settled(Topics.CHECKS, subject, step.checks()));
    }

    private static <V> Decision<V> settled(Topic<V> topic, Subject subject, List<V> values) {
        return new Decision<>(topic, subject, values, List.of(), List.of(), List.of(), List.of());
    }

    static Recommendation impasse() {
        Impasse<Grit> impasse = new Impasse<>(
                Topics.GRIT_PATH, Subject.EDGE, List.of(), List.of(), true, List.of(new Grit(Bond.RESIN, 400)));
        Impasse<Cut> cut = new Impasse<>(
                Topics.FIRST_CUT,
                Subject.EDGE,
                List.of(reason(ContributionKind.NEED)),
                List.of(reason(ContributionKind.VETO)),
                false,
                List.of());
        return new Recommendation(
                Status.IMPASSE,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        new CounterOffer<>(
                                OfferKind.KEEP_THE_MARKS, Topics.FIRST_CUT, List.of(Cut.HONE), List.of("CUT-003")),
                        new CounterOffer<>(OfferKind.LEAVE_IT, Topics.FIRST_CUT, List.of(), List.of())),
                List.of(impasse, cut),
                FloorSurvey.builder("empty").build(),
                GritSequence.standard(),
                Parameters.standard(),
                new RulebaseStamp("0.1.0", "cd".repeat(32), List.of(), List.of()));
    }
}
