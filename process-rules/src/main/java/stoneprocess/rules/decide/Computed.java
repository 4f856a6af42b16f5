package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Derived;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** Decision records of the topics that are computed; each names what went into it. */
public final class Computed {
    private Computed() {}

    /**
     * The grit path of a track; an impasse when no grades are in use or they allow none.
     *
     * @param track the track
     * @param path over the grades in use; empty when there are none
     * @param whole over all grades that there are to choose from; tells which are missing
     * @param cut the first cut
     * @param last the last grade
     */
    public static Outcome gritPath(Subject track, Optional<GritPath> path, GritPath whole, Cut cut, LastGrit last) {
        Optional<List<AbrasiveGrade>> found = path.flatMap(grades -> grades.plan(cut, last));
        if (found.isEmpty()) {
            return new Impasse<>(Topics.GRIT_PATH, track, List.of(), List.of(), false, lacking(path, whole, cut, last));
        }
        return new Decision<>(
                Topics.GRIT_PATH,
                track,
                found.get().stream().map(AbrasiveGrade::grit).toList(),
                List.of(),
                List.of(),
                List.of(),
                pathInputs());
    }

    /** Names of the topics, the field and the parameters that go into a grit path. */
    public static List<String> pathInputs() {
        return Stream.concat(behind(Topics.GRIT_PATH).stream(), GritPath.inputs().stream())
                .toList();
    }

    /** Names of the topics and survey fields from which a topic is computed; none when rules decide it. */
    public static List<String> behind(Topic<?> topic) {
        if (Objects.requireNonNull(topic, "topic") == Topics.GRIT_PATH) {
            return List.of(
                    Topics.FIRST_CUT.id(),
                    Topics.LAST_GRIT.id(),
                    Topics.BONDS.id(),
                    Topics.STEP_RULE.id(),
                    Topics.TRANSITION.id(),
                    SurveyField.GRADES.name());
        }
        if (topic == Topics.TEST_CUTS) {
            return List.of(Topics.GRIT_PATH.id());
        }
        if (topic == Topics.PASSES) {
            return List.of(
                    Topics.MACHINE.id(), Topics.ADDED_WEIGHT.id(), Topics.STONE.id(), SurveyField.SCRIBER.name());
        }
        return topic == Topics.LITRES ? List.of(Topics.WATER_LEVEL.id(), SurveyField.AREA.name()) : List.of();
    }

    private static List<Grit> lacking(Optional<GritPath> path, GritPath whole, Cut cut, LastGrit last) {
        return whole.plan(cut, last).orElse(List.of()).stream()
                .filter(grade -> path.isEmpty() || !path.get().has(grade))
                .map(AbrasiveGrade::grit)
                .toList();
    }

    /** What the test area is cut with: one grade finer than the path starts, then the path's own first grade. */
    public static Decision<Grit> testCuts(Decision<Grit> path) {
        List<Grit> grades = path.values();
        List<Grit> tried = grades.size() > 1 ? List.of(grades.get(1), grades.get(0)) : grades;
        return figure(Topics.TEST_CUTS, Subject.FLOOR, tried, List.of(Topics.GRIT_PATH.id()));
    }

    /** The passes of a step. */
    public static Decision<Range<Integer>> passes(
            Subject step,
            boolean first,
            String cutRate,
            MachineClass machine,
            AddedWeight weight,
            Parameters parameters) {
        Range<Integer> passes = StepFigures.passes(first, cutRate, machine, weight, parameters);
        List<String> inputs = new ArrayList<>(StepFigures.rangeOf(StepFigures.passesParameter(first)));
        inputs.addAll(List.of(
                cutRate,
                StepFigures.removalParameter(machine),
                StepFigures.loadParameter(weight),
                Topics.STONE.id(),
                Topics.MACHINE.id(),
                Topics.ADDED_WEIGHT.id()));
        return figure(Topics.PASSES, step, List.of(passes), inputs);
    }

    /** The water of a step; without values when the area is not known. */
    public static Decision<Range<Volume>> litres(
            Subject step, AbrasiveGrade grade, Optional<Range<Volume>> litres, Parameters parameters) {
        List<String> inputs = new ArrayList<>(StepFigures.rangeOf(StepFigures.coverageParameter(grade, parameters)));
        inputs.add(Topics.WATER_LEVEL.id());
        inputs.add(SurveyField.AREA.name());
        return figure(Topics.LITRES, step, litres.stream().toList(), inputs);
    }

    private static <V> Decision<V> figure(Derived<V> topic, Subject step, List<V> values, List<String> inputs) {
        return new Decision<>(topic, step, values, List.of(), List.of(), List.of(), inputs);
    }
}
