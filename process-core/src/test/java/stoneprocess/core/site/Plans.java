package stoneprocess.core.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.stone.Family;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PickUp;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;

/** An invented recommendation under construction. */
final class Plans {
    Status status = Status.PLANNED;
    FloorSurvey survey =
            FloorSurvey.builder("Hall").set(SurveyField.AREA, new Area(100)).build();
    List<Track> tracks = new ArrayList<>();
    List<Preparation> preparation = new ArrayList<>();
    List<Repair> repairs = new ArrayList<>();
    PolishingAgent agent = PolishingAgent.NONE;
    TestArea testArea = TestArea.REQUIRED;
    Densifier densifier = Densifier.NONE;
    Sealer sealer = Sealer.NONE;
    List<FinishTask> finishTasks = new ArrayList<>();
    List<Family> families = List.of(Family.CALCITE_MARBLE);

    /** Marble, resin 200 and 400 in the open field and at the edges. */
    static Plans marble() {
        Plans plans = new Plans();
        plans.track(TrackKind.OPEN_FIELD, step("resin-200"), step("resin-400"));
        plans.track(TrackKind.EDGE, byHand("resin-200"), byHand("resin-400"));
        return plans;
    }

    Plans track(TrackKind kind, PlannedStep... steps) {
        tracks.removeIf(track -> track.kind() == kind);
        if (steps.length > 0) {
            tracks.add(new Track(kind, List.of(steps)));
        }
        return this;
    }

    Plans prepare(Task task) {
        preparation.add(new Preparation(task, Optional.empty()));
        return this;
    }

    Plans prepare(Task task, double leastHours, double mostHours) {
        preparation.add(new Preparation(task, Optional.of(hours(leastHours, mostHours))));
        return this;
    }

    static Range<TimeSpan> hours(double least, double most) {
        return Range.of(TimeSpan.of(least, Unit.HOUR), TimeSpan.of(most, Unit.HOUR));
    }

    static AbrasiveGrade grade(String key) {
        return GritSequence.standard().get(key, "grade");
    }

    /** Single disc, 20 to 50 l for one pass. */
    static PlannedStep step(String grade, Handling... handling) {
        return step(grade, MachineClass.SINGLE_DISC, handling);
    }

    static PlannedStep byHand(String grade) {
        return step(grade, MachineClass.EDGE_TOOL);
    }

    static PlannedStep step(String grade, MachineClass machine, Handling... handling) {
        boolean hand = machine == MachineClass.EDGE_TOOL;
        return new PlannedStep(
                grade(grade),
                WorkMethod.WET,
                machine,
                hand ? AddedWeight.NONE : AddedWeight.USUAL,
                hand ? Range.of(new Mass(0), new Mass(0)) : Range.of(new Mass(15), new Mass(30)),
                WaterLevel.MODERATE,
                hand ? Optional.empty() : Optional.of(Range.of(new Volume(20), new Volume(50))),
                Range.of(6, 7),
                Range.of(new Length(0.02), new Length(0.04)),
                List.of(handling),
                PickUp.WET_VACUUM,
                List.of());
    }

    Recommendation recommendation() {
        boolean planned = status == Status.PLANNED || status == Status.PROVISIONAL;
        Plan plan = new Plan(
                preparation,
                List.of(),
                testArea,
                List.of(),
                repairs,
                Optional.of(Finish.SATIN),
                tracks,
                List.of(),
                List.of(),
                List.of(),
                agent,
                densifier,
                sealer,
                finishTasks,
                List.of());
        Decision<Family> stone =
                new Decision<>(Topics.STONE, Subject.FLOOR, families, List.of(), List.of(), List.of(), List.of());
        return new Recommendation(
                status,
                planned ? Optional.of(plan) : Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(stone),
                survey,
                GritSequence.standard(),
                Parameters.standard(),
                new RulebaseStamp("0.1.0", "ab".repeat(32), List.of(), List.of()));
    }
}
