package stoneprocess.rules.internal.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.meaning.RuleReach;
import stoneprocess.rules.space.Forgetting;
import stoneprocess.rules.space.SurveyGenerator;

/**
 * Surveys with a question that has an answer more often than not: a value that the floor lacks and that it would have
 * with one or two answers drawn anew. Drawn, invented.
 *
 * @param survey the floor
 * @param topic what is asked
 * @param subject for which part of the work
 * @param wanted the value
 */
record Questions(FloorSurvey survey, Topic<?> topic, Subject subject, String wanted) {
    private static final List<String> NAMES = Forgetting.names();
    private static final int[] KNOWN = {100, 95, 80, 50};

    /** Answers are drawn anew up to ten times; empty when they still make no difference. */
    static Optional<Questions> draw(RuleReach reach, SplittableRandom random) {
        SurveyGenerator generator = SurveyGenerator.of(new Share(KNOWN[random.nextInt(KNOWN.length)]));
        FloorSurvey survey = generator.draw(random);
        Situation now = answered(reach, survey);
        for (int i = 0; i < 10; i++) {
            List<String> anew = List.of(pick(NAMES, random), pick(NAMES, random));
            FloorSurvey redrawn = generator.redraw(survey, anew.subList(0, 1 + random.nextInt(2)), random);
            List<Questions> open = open(survey, now, answered(reach, redrawn));
            if (!open.isEmpty()) {
                return Optional.of(oneOfATopic(open, random));
            }
        }
        return Optional.empty();
    }

    private static List<Questions> open(FloorSurvey survey, Situation now, Situation other) {
        List<Questions> open = new ArrayList<>();
        for (Outcome outcome : other.outcomes()) {
            Topic<?> topic = outcome.topic();
            if (topic == Topics.PASSES || topic == Topics.LITRES || !(outcome instanceof Decision<?> decision)) {
                continue;
            }
            List<String> has = has(now, topic, outcome.subject());
            decision.keys().stream()
                    .filter(value -> !has.contains(value))
                    .forEach(value -> open.add(new Questions(survey, topic, outcome.subject(), value)));
        }
        return open;
    }

    private static Situation answered(RuleReach reach, FloorSurvey survey) {
        return new SurveyedFloor(survey, Parameters.standard(), GritSequence.standard())
                .run(reach.all(), Stage.SAFETY)
                .situation();
    }

    private static List<String> has(Situation situation, Topic<?> topic, Subject subject) {
        return situation.decision(topic, subject).map(Decision::keys).orElse(List.of());
    }

    /** Topics are drawn evenly: those that are decided for every step would crowd out the others. */
    private static Questions oneOfATopic(List<Questions> open, SplittableRandom random) {
        Topic<?> topic = pick(open.stream().map(Questions::topic).distinct().toList(), random);
        return pick(open.stream().filter(one -> one.topic() == topic).toList(), random);
    }

    /** A value of any topic that a floor with one zone lacks; mostly out of reach. */
    static Questions any(RuleReach reach, SplittableRandom random) {
        FloorSurvey drawn = SurveyGenerator.of(new Share(KNOWN[random.nextInt(KNOWN.length)]))
                .draw(random);
        Zone zone = drawn.zones().get(0);
        FloorSurvey survey =
                drawn.toBuilder().zones(List.of(zone)).readings(List.of()).build();
        Situation now = answered(reach, survey);
        List<Topic<?>> topics = RuleReach.decided().stream()
                .filter(topic -> !topic.domain().isEmpty())
                .toList();
        while (true) {
            Topic<?> topic = pick(topics, random);
            Subject subject = pick(subjects(topic), random);
            Term value = pick(topic.domain(), random);
            if (!has(now, topic, subject).contains(value.key())) {
                return new Questions(survey, topic, subject, value.key());
            }
        }
    }

    private static List<Subject> subjects(Topic<?> topic) {
        return switch (topic.scope()) {
            case FLOOR -> List.of(Subject.FLOOR);
            case TRACK -> List.of(Subject.OPEN_FIELD, Subject.EDGE, Subject.LOCAL_REPAIR);
            case STEP ->
                List.of(Subject.parse("open-field/resin-400", "subject"), Subject.parse("edge/resin-200", "subject"));
        };
    }

    private static <T> T pick(List<? extends T> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }
}
