package stoneprocess.core.log;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.TrackKind;

/** One note in the job log. What is left out is not known. */
public sealed interface Entry {
    /** When it was noted. */
    Moment at();

    /**
     * Work with one grit on one track.
     *
     * @param at when the passes were done
     * @param track the track that was worked
     * @param grade bond and grit number
     * @param passes whole passes of the bays, 1 to 1000
     * @param machine the machine; empty when not noted
     * @param added weight added to the machine; empty when not noted
     */
    record Worked(
            Moment at,
            TrackKind track,
            AbrasiveGrade grade,
            int passes,
            Optional<MachineClass> machine,
            Optional<Mass> added)
            implements Entry {
        private static final int MOST_PASSES = 1000;

        public Worked {
            Refuse.nulls(Worked.class, at, track, grade, machine, added);
            if (passes < 1 || passes > MOST_PASSES) {
                throw new InvalidInputException("passes", Integer.toString(passes), "1 to " + MOST_PASSES);
            }
        }
    }

    /**
     * A look at one zone, in raking light.
     *
     * @param at when
     * @param zone name of the zone, as in the survey
     * @param face whether the surface was clean and dry
     * @param scratches which scratches show
     * @param film whether a film shows
     * @param pad the face of the pads
     * @param edges the edges beside the field
     * @param signs signs of faults; an empty set when somebody looked for them and found none
     */
    record Looked(
            Moment at,
            String zone,
            FaceState face,
            Optional<ScratchLook> scratches,
            Optional<Presence> film,
            Optional<PadLook> pad,
            Optional<EdgeLook> edges,
            Optional<Set<Sign>> signs)
            implements Entry {
        public Looked {
            Refuse.nulls(Looked.class, at, zone, face, scratches, film, pad, edges, signs);
            requireName("zone", zone);
            signs = signs.map(Entry::copy);
        }
    }

    /**
     * A gloss reading.
     *
     * @param at when
     * @param reading place, zone, direction, angle, value and state of the surface
     */
    record Read(Moment at, Reading reading) implements Entry {
        public Read {
            Refuse.nulls(Read.class, at, reading);
        }
    }

    /**
     * An event.
     *
     * @param at when
     * @param kind what happened
     * @param zone where
     * @param state whether it still stands
     */
    record Happened(Moment at, EventKind kind, String zone, EventState state) implements Entry {
        public Happened {
            Refuse.nulls(Happened.class, at, kind, zone, state);
            requireName("zone", zone);
        }
    }

    /**
     * A try on the test area.
     *
     * @param at when
     * @param grade the grit that it was started with
     * @param result how it came out
     * @param signed whether the owner signed it
     */
    record Tried(Moment at, AbrasiveGrade grade, TrialResult result, boolean signed) implements Entry {
        public Tried {
            Refuse.nulls(Tried.class, at, grade, result);
            if (signed && result != TrialResult.CLEARED) {
                throw new InvalidInputException("signed", "true", "false, until a try has cleared the damage");
            }
        }
    }

    private static Set<Sign> copy(Set<Sign> signs) {
        EnumSet<Sign> copy = EnumSet.noneOf(Sign.class);
        copy.addAll(signs);
        return Collections.unmodifiableSet(copy);
    }

    private static void requireName(String field, String name) {
        Printable.require(field, name, JobLog.LONGEST_NAME, "a name");
    }
}
