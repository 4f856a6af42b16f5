package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.decision.MatchedFact;
import stoneprocess.core.parameter.NamedScale;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StepEnd;
import stoneprocess.rules.feature.StepOrder;

/** The line of the steps: one fact for each grit of each track, made when a track's path is decided. */
record StepFacts() implements FactLine {
    /** Makes classes of grit numbers. */
    static final NamedScale<GritClass> GRIT = new NamedScale<>("grit", GritClass.class);

    private static final Origin ORIGIN = Origin.decisions(Topics.GRIT_PATH);

    @Override
    public Class<Step> type() {
        return Step.class;
    }

    @Override
    public Origin origin() {
        return ORIGIN;
    }

    /** None: the run adds the steps of a track as its path closes. */
    @Override
    public List<Step> facts(Situation situation) {
        return List.of();
    }

    @Override
    public Object again(Object fact, Situation situation) {
        return fact;
    }

    /** The steps of a track. */
    static List<Step> of(TrackKind track, List<AbrasiveGrade> path, WorkMethod metal, Parameters parameters) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < path.size(); i++) {
            AbrasiveGrade grade = path.get(i);
            steps.add(new Step(
                    new Subject.OfStep(track, grade.key()),
                    track,
                    grade.bond(),
                    gritClass(grade, parameters),
                    i == 0 ? StepOrder.FIRST : i == 1 ? StepOrder.SECOND : StepOrder.LATER,
                    i == path.size() - 1 ? StepEnd.LAST : StepEnd.NOT_LAST,
                    grade.bond() == Bond.METAL ? metal : WorkMethod.WET));
        }
        return steps;
    }

    static GritClass gritClass(AbrasiveGrade grade, Parameters parameters) {
        return GRIT.in(parameters).classify(new Count(grade.number()));
    }

    @Override
    public List<Object> space() {
        List<Object> space = new ArrayList<>();
        for (TrackKind track : TrackKind.values()) {
            for (Bond bond : Bond.values()) {
                for (GritClass grit : GritClass.values()) {
                    for (StepOrder order : StepOrder.values()) {
                        for (StepEnd end : StepEnd.values()) {
                            for (WorkMethod method : WorkMethod.values()) {
                                String grade = String.join("-", Term.keys(List.of(bond, grit, order, end, method)));
                                Subject.OfStep subject = new Subject.OfStep(track, grade);
                                space.add(new Step(subject, track, bond, grit, order, end, method));
                            }
                        }
                    }
                }
            }
        }
        return List.copyOf(space);
    }

    @Override
    public MatchedFact matched(Object fact) {
        Step step = (Step) fact;
        return new MatchedFact("Step", List.of(step.subject().key()), true, List.of(), ORIGIN.topics());
    }
}
