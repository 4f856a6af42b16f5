package stoneprocess.rules;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.tool.GritSequence;

/**
 * How a recommendation is asked for.
 *
 * @param sequence the grits that there are to choose from; those on hand by the survey are chosen first
 */
public record Options(GritSequence sequence) {
    public Options {
        Refuse.nulls(Options.class, sequence);
    }

    /** The usual sequence of the trade. */
    public static Options defaults() {
        return new Options(GritSequence.standard());
    }

    /** The same options with another sequence. */
    public Options withSequence(GritSequence replacement) {
        return new Options(replacement);
    }
}
