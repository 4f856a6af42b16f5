package stoneprocess.core.topic;

import java.util.List;
import stoneprocess.core.term.Term;

/** What a topic is decided for. */
public enum Scope implements Term {
    /** Once for the floor. */
    FLOOR,

    /** For each track. */
    TRACK,

    /** For each grit of each track. */
    STEP;

    /** True when a topic of this scope is decided for such a subject. */
    public boolean fits(Subject subject) {
        return switch (this) {
            case FLOOR -> subject instanceof Subject.Floor;
            case TRACK -> subject instanceof Subject.OfTrack;
            case STEP -> subject instanceof Subject.OfStep;
        };
    }

    /** The subjects that fit, as the end of the phrase "accepted: ...". */
    public String subjects() {
        String tracks = String.join(", ", Term.keys(List.of(TrackKind.values())));
        return switch (this) {
            case FLOOR -> Subject.FLOOR.key();
            case TRACK -> "one of " + tracks;
            case STEP -> "one of " + tracks + " with / and a grade";
        };
    }
}
