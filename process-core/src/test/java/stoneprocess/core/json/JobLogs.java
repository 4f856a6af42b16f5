package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Fresnel;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.TrackKind;

/** Any job log that can be. */
final class JobLogs {
    private JobLogs() {}

    static Arbitrary<JobLog> any() {
        return Combinators.combine(names(200), entries().list().ofMaxSize(8)).as(JobLog::new);
    }

    private static Arbitrary<Entry> entries() {
        return Arbitraries.oneOf(worked(), looked(), read(), happened(), tried());
    }

    private static Arbitrary<String> names(int longest) {
        return Names.upTo(longest);
    }

    private static Arbitrary<Moment> moments() {
        return Combinators.combine(
                        Arbitraries.integers().between(1, 9999),
                        Arbitraries.integers().between(0, 1439))
                .as(Moment::new);
    }

    private static Arbitrary<AbrasiveGrade> grades() {
        return Arbitraries.of(GritSequence.standard().grades());
    }

    private static Arbitrary<Entry> worked() {
        return Combinators.combine(
                        moments(),
                        Arbitraries.of(TrackKind.class),
                        grades(),
                        Arbitraries.integers().between(1, 30),
                        Arbitraries.of(MachineClass.class).optional(),
                        quantity(Dimension.MASS, 500).map(Mass.class::cast).optional())
                .as(Entry.Worked::new);
    }

    private static Arbitrary<Entry> looked() {
        Arbitrary<Set<Sign>> signs = Arbitraries.of(Sign.class).set().ofMaxSize(4);
        return Combinators.combine(
                        moments(),
                        names(60),
                        Arbitraries.of(FaceState.class),
                        Arbitraries.of(ScratchLook.class).optional(),
                        Arbitraries.of(Presence.class).optional(),
                        Arbitraries.of(PadLook.class).optional(),
                        Arbitraries.of(EdgeLook.class).optional(),
                        signs.optional(0.6))
                .as(Entry.Looked::new);
    }

    private static Arbitrary<Entry> read() {
        return Arbitraries.of(Geometry.class)
                .flatMap(geometry -> Combinators.combine(
                                moments(),
                                names(60),
                                names(60),
                                Arbitraries.of(Direction.class),
                                quantity(
                                        Dimension.GLOSS,
                                        Fresnel.mirror(geometry).gloss()),
                                Arbitraries.of(FaceState.class))
                        .as((at, place, zone, direction, gloss, state) -> new Entry.Read(
                                at, new Reading(place, zone, direction, geometry, (Gloss) gloss, state))));
    }

    private static Arbitrary<Entry> happened() {
        return Combinators.combine(
                        moments(), Arbitraries.of(EventKind.class), names(60), Arbitraries.of(EventState.class))
                .as(Entry.Happened::new);
    }

    private static Arbitrary<Entry> tried() {
        return Combinators.combine(moments(), grades(), Arbitraries.of(TrialResult.class), Arbitraries.of(true, false))
                .as((at, grade, result, signed) ->
                        new Entry.Tried(at, grade, result, signed && result == TrialResult.CLEARED));
    }

    static Arbitrary<Quantity> quantity(Dimension dimension, double high) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, BigDecimal.valueOf(high))
                .ofScale(dimension.decimals())
                .map(value -> Quantity.of(value, dimension.unit()));
    }
}
