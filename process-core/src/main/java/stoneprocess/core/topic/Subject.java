package stoneprocess.core.topic;

import java.util.List;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;

/** What a decision is about. */
public sealed interface Subject {
    /** The floor as a whole. */
    record Floor() implements Subject {
        @Override
        public String key() {
            return "floor";
        }
    }

    /** One track of the work. */
    record OfTrack(TrackKind track) implements Subject {
        public OfTrack {
            Refuse.nulls(OfTrack.class, track);
        }

        @Override
        public String key() {
            return track.key();
        }
    }

    /**
     * One track at one grit.
     *
     * @param track the track
     * @param grade key of the grit, for example {@code resin-800}, as a caller types it; which grits there are is told by a
     *     sequence, and a subject is read without one
     */
    record OfStep(TrackKind track, String grade) implements Subject {
        public OfStep {
            Refuse.nulls(OfStep.class, track, grade);
        }

        @Override
        public String key() {
            return track.key() + "/" + grade;
        }
    }

    /** One zone of the survey. */
    record OfZone(String zone) implements Subject {
        public OfZone {
            Refuse.nulls(OfZone.class, zone);
        }

        @Override
        public String key() {
            return "zone:" + zone;
        }
    }

    Subject FLOOR = new Floor();
    Subject OPEN_FIELD = new OfTrack(TrackKind.OPEN_FIELD);
    Subject EDGE = new OfTrack(TrackKind.EDGE);
    Subject LOCAL_REPAIR = new OfTrack(TrackKind.LOCAL_REPAIR);

    /** Stable key: {@code floor}, {@code edge}, {@code edge/resin-800}, {@code zone:lane}. */
    String key();

    /**
     * The subject with the given key.
     *
     * @throws InvalidInputException when the key has none of the four forms
     */
    static Subject parse(String key, String field) {
        if (key.equals("floor")) {
            return FLOOR;
        }
        if (key.startsWith("zone:") && key.length() > "zone:".length()) {
            return new OfZone(key.substring("zone:".length()));
        }
        for (TrackKind track : TrackKind.values()) {
            if (key.equals(track.key())) {
                return new OfTrack(track);
            }
            String step = track.key() + "/";
            if (key.startsWith(step) && key.length() > step.length()) {
                return new OfStep(track, key.substring(step.length()));
            }
        }
        throw new InvalidInputException(
                field,
                key,
                "floor, zone: and a name, or one of " + String.join(", ", Term.keys(List.of(TrackKind.values())))
                        + ", alone or with / and a grade");
    }
}
