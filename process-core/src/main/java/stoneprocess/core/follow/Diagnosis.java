package stoneprocess.core.follow;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.log.Sign;

/**
 * Signs traced to their causes.
 *
 * @param signs the signs asked about, those of the log's latest looks included
 * @param remedy the causes, the checks that tell them apart, and what is done about the leading one
 */
public record Diagnosis(Set<Sign> signs, NextMove remedy) {
    /** Version of the answer's JSON form. */
    public static final String FORMAT = "diagnosis/1";

    public Diagnosis {
        Refuse.nulls(Diagnosis.class, signs, remedy);
        EnumSet<Sign> copy = EnumSet.noneOf(Sign.class);
        copy.addAll(signs);
        signs = Collections.unmodifiableSet(copy);
    }

    /** The causes, the likeliest first; those ruled out last. */
    public List<Cause> causes() {
        return remedy.causes();
    }
}
