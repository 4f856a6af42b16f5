package stoneprocess.rules.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Input;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Derived;
import stoneprocess.core.topic.LastGrit;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WaterLevel;

/** How a derived topic becomes an outcome: from which decisions and answers, and by what. Each decision names both. */
public enum Formula {
    /** The grit path of each track that is worked; an impasse where the grits in use allow none. */
    GRIT_PATH(
            Topics.GRIT_PATH,
            List.of(Topics.FIRST_CUT, Topics.LAST_GRIT, Topics.BONDS, Topics.STEP_RULE, Topics.TRANSITION),
            List.of(SurveyField.GRADES),
            GritPath.parameters()) {
        @Override
        public List<Outcome> close(Known known) {
            if (known.isBlocked()) {
                return List.of();
            }
            GritPath whole = pathOver(known.sequence(), known);
            Optional<GritPath> inUse = known.inUse().map(grades -> pathOver(grades, known));
            LastGrit last = known.values(Topics.LAST_GRIT, Subject.FLOOR).get(0);
            return Stream.of(TrackKind.values())
                    .filter(track -> isWorked(track, known))
                    .map(track -> path(new Subject.OfTrack(track), inUse, whole, cut(track, known), last))
                    .toList();
        }

        private Outcome path(Subject track, Optional<GritPath> inUse, GritPath whole, Cut cut, LastGrit last) {
            Optional<List<AbrasiveGrade>> found = inUse.flatMap(grades -> grades.plan(cut, last));
            if (found.isPresent()) {
                return decision(Topics.GRIT_PATH, track, grits(found.get().stream()), inputs());
            }
            Stream<AbrasiveGrade> lacking = whole.plan(cut, last).orElse(List.of()).stream()
                    .filter(grade -> inUse.isEmpty() || !inUse.get().has(grade));
            return new Impasse<>(Topics.GRIT_PATH, track, List.of(), List.of(), false, grits(lacking));
        }

        /** A local repair that the field's first cut clears is none, and neither is a field of nothing but stairs. */
        private boolean isWorked(TrackKind track, Known known) {
            boolean cleared = track == TrackKind.LOCAL_REPAIR
                    && cut(track, known).compareTo(cut(TrackKind.OPEN_FIELD, known)) <= 0;
            boolean reached = switch (track) {
                case OPEN_FIELD -> !known.isAllHandWork();
                case EDGE -> known.hasEdges();
                case LOCAL_REPAIR -> true;
            };
            return reached && cut(track, known) != Cut.NONE && !cleared;
        }

        private Cut cut(TrackKind track, Known known) {
            return known.values(Topics.FIRST_CUT, new Subject.OfTrack(track)).get(0);
        }

        private GritPath pathOver(GritSequence grades, Known known) {
            return new GritPath(
                    grades,
                    known.sequence(),
                    Set.copyOf(known.values(Topics.BONDS, Subject.FLOOR)),
                    known.values(Topics.STEP_RULE, Subject.FLOOR).get(0),
                    known.values(Topics.TRANSITION, Subject.FLOOR).get(0),
                    known.parameters());
        }
    },

    /**
     * What the test area is cut with: one grit finer than the path starts, then the path's own first grit. The open
     * field tells the path; without it the edges, then the repairs.
     */
    TEST_CUTS(Topics.TEST_CUTS, List.of(Topics.GRIT_PATH), List.of(), List.of()) {
        @Override
        public List<Outcome> close(Known known) {
            return paths(known).limit(1).<Outcome>map(this::cuts).toList();
        }

        private Decision<Grit> cuts(Decision<Grit> path) {
            List<Grit> grits = path.values();
            List<Grit> tried = grits.size() > 1 ? List.of(grits.get(1), grits.get(0)) : grits;
            return decision(Topics.TEST_CUTS, Subject.FLOOR, tried, inputs());
        }
    },

    /** The passes of each step: what it has to take off over what a pass takes. */
    PASSES(
            Topics.PASSES,
            List.of(Topics.GRIT_PATH, Topics.MACHINE, Topics.ADDED_WEIGHT, Topics.STONE),
            List.of(SurveyField.SCRIBER, SurveyField.AGGREGATE, SurveyField.CEMENT_SURFACE),
            List.of()) {
        @Override
        Outcome closeStep(TrackKind track, Grit grit, Optional<Grit> before, Known known) {
            Subject step = new Subject.OfStep(track, grit.key());
            AbrasiveGrade grade = known.sequence().get(grit, Topics.PASSES.id());
            Optional<AbrasiveGrade> coarser = before.map(
                            worked -> known.sequence().get(worked, Topics.PASSES.id()))
                    .or(() -> known.worked(track));
            MachineClass machine = known.values(Topics.MACHINE, step).get(0);
            AddedWeight weight = known.values(Topics.ADDED_WEIGHT, step).get(0);
            Removal removal = new Removal(known.stone().cutting(), known.parameters());
            Range<Integer> passes = removal.passes(
                    known.depth(track, coarser, grade),
                    grade,
                    machine,
                    StepFigures.middleMass(machine, weight, known.parameters()));
            return decision(
                    Topics.PASSES, step, List.of(passes), listed(removal.inputs(grade, machine), topics(), List.of()));
        }

        @Override
        public List<DamageKind> damages() {
            return List.of(DamageKind.SCRATCHES, DamageKind.LIPPAGE, DamageKind.WAVINESS);
        }
    },

    /** The water of each step; without values when the area is not known. */
    LITRES(Topics.LITRES, List.of(Topics.WATER_LEVEL), List.of(SurveyField.AREA), List.of()) {
        @Override
        Outcome closeStep(TrackKind track, Grit grit, Optional<Grit> before, Known known) {
            Subject step = new Subject.OfStep(track, grit.key());
            AbrasiveGrade grade = known.sequence().get(grit, Topics.LITRES.id());
            WaterLevel level = known.values(Topics.WATER_LEVEL, step).get(0);
            Optional<Range<Volume>> litres = StepFigures.litres(grade, level, known.areaOf(track), known.parameters());
            List<String> numbers = StepFigures.rangeOf(StepFigures.coverageParameter(grade, known.parameters()));
            return decision(Topics.LITRES, step, litres.stream().toList(), listed(numbers, topics(), fields()));
        }
    };

    private static final Map<Topic<?>, Formula> BY_TOPIC =
            Stream.of(values()).collect(Collectors.toUnmodifiableMap(Formula::topic, formula -> formula));

    private final Derived<?> topic;
    private final List<Topic<?>> topics;
    private final List<SurveyField<?>> fields;
    private final List<String> parameters;

    Formula(Derived<?> topic, List<Topic<?>> topics, List<SurveyField<?>> fields, List<String> parameters) {
        this.topic = topic;
        this.topics = topics;
        this.fields = fields;
        this.parameters = parameters;
    }

    /** The formula of a derived topic; empty for a choice, which rules make. */
    public static Optional<Formula> of(Topic<?> topic) {
        return Optional.ofNullable(BY_TOPIC.get(topic));
    }

    /** The topic that it closes. */
    public Derived<?> topic() {
        return topic;
    }

    /** The topics that go into it. */
    public List<Topic<?>> topics() {
        return topics;
    }

    /** The survey fields that go into it. */
    public List<SurveyField<?>> fields() {
        return fields;
    }

    /** The damage of the survey that goes into it. */
    public List<DamageKind> damages() {
        return List.of();
    }

    /** What its decisions do not name: the scriber tells how fast the stone is cut, the damage and the aggregate that is to show how deep. */
    public List<Input> untold() {
        List<Input> untold = new ArrayList<>();
        if (this == PASSES) {
            fields.forEach(field -> untold.add(new Input.OfField(field)));
        }
        damages().forEach(kind -> untold.add(new Input.OfDamage(kind)));
        return untold;
    }

    /** The topics, fields and parameters that go into every outcome of it. */
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(listed(List.of(), topics, fields));
        parameters.forEach(name -> inputs.add(new Input.OfParameter(name)));
        return inputs;
    }

    /** Closes its topic for every subject, in the order of the work. */
    public List<Outcome> close(Known known) {
        List<Outcome> outcomes = new ArrayList<>();
        paths(known).forEach(path -> {
            TrackKind track = ((Subject.OfTrack) path.subject()).track();
            Optional<Grit> before = Optional.empty();
            for (Grit grit : path.values()) {
                outcomes.add(closeStep(track, grit, before, known));
                before = Optional.of(grit);
            }
        });
        return outcomes;
    }

    /** Closes it for one step. */
    Outcome closeStep(TrackKind track, Grit grit, Optional<Grit> before, Known known) {
        throw new IllegalStateException(topic + " is not closed step by step");
    }

    private static Stream<Decision<Grit>> paths(Known known) {
        return Stream.of(TrackKind.values())
                .flatMap(track -> known.decision(Topics.GRIT_PATH, new Subject.OfTrack(track)).stream());
    }

    private static List<Grit> grits(Stream<AbrasiveGrade> grades) {
        return grades.map(AbrasiveGrade::grit).toList();
    }

    private static List<Input> listed(List<String> numbers, List<Topic<?>> topics, List<SurveyField<?>> fields) {
        List<Input> inputs = new ArrayList<>();
        numbers.forEach(name -> inputs.add(new Input.OfParameter(name)));
        topics.forEach(topic -> inputs.add(new Input.OfTopic(topic)));
        fields.forEach(field -> inputs.add(new Input.OfField(field)));
        return inputs;
    }

    private static <V> Decision<V> decision(Derived<V> topic, Subject subject, List<V> values, List<Input> inputs) {
        return new Decision<>(topic, subject, values, List.of(), List.of(), List.of(), inputs);
    }
}
