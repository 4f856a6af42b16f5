package stoneprocess.core.site;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stoneprocess.core.gloss.Film;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Gloss;

/**
 * What a zone read at a hold point, at 60 degrees.
 *
 * @param done the grit, its passes and the readings
 * @param read the readings in figures; empty when it was not read
 * @param gain against the readings before; empty when there were none
 * @param mostOfGrit the most that the grit gives on 99 % of floors; empty where no final values are listed
 * @param overGrit readings over that, which a film may have made
 * @param films films that could read as much as one of them
 */
public record HoldPointGloss(
        GritDone done,
        Optional<AngleGloss> read,
        Optional<Gain> gain,
        Optional<Gloss> mostOfGrit,
        List<Gloss> overGrit,
        Set<Film> films) {
    public HoldPointGloss {
        Refuse.nulls(HoldPointGloss.class, done, read, gain, mostOfGrit, overGrit, films);
        overGrit = List.copyOf(overGrit);
        films = Collections.unmodifiableSet(new TreeSet<>(films));
    }
}
