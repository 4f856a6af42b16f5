package stoneprocess.core.site;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Gloss;

/**
 * What is asked about the gloss of a floor beside its survey.
 *
 * @param target gloss to reach at 60 degrees, over 0 GU; empty for what the plan aims at
 * @param within wanted half width of a mean, over 0 GU
 * @param zone zone to forecast, one of the survey's; empty for the dullest of the open field
 * @param done hold points since the survey, in the order worked
 */
public record GlossQuestion(Optional<Gloss> target, Gloss within, Optional<String> zone, List<GritDone> done) {
    public GlossQuestion {
        Refuse.nulls(GlossQuestion.class, target, within, zone, done);
        target.ifPresent(gloss -> requirePositive("target", gloss));
        requirePositive("within", within);
        done = List.copyOf(done);
    }

    private static void requirePositive(String field, Gloss gloss) {
        if (gloss.gloss() == 0) {
            throw new InvalidInputException(field, gloss.print(), "a gloss over 0 GU");
        }
    }
}
