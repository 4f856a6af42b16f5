package stoneprocess.core.gloss;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;

/**
 * Whether a reading is possible.
 *
 * @param suspicion what it tells
 * @param films films that could read as much; empty unless the suspicion is a film
 */
public record GlossCheck(GlossSuspicion suspicion, Set<Film> films) {
    public GlossCheck {
        Refuse.nulls(GlossCheck.class, suspicion, films);
        EnumSet<Film> copy = EnumSet.noneOf(Film.class);
        copy.addAll(films);
        films = Collections.unmodifiableSet(copy);
    }

    /**
     * Compares a reading with the stone's ceiling. The meter's reproducibility ({@code gloss-meter.reproducibility})
     * and the diffuse light of a white stone are allowed for.
     *
     * @param gloss what was read, any gloss
     * @param geometry angle of the meter
     * @param ceiling what the stone would read if it were smooth
     * @param parameters see above and {@link DiffuseLight}
     */
    public static GlossCheck of(Gloss gloss, Geometry geometry, GlossCeiling ceiling, Parameters parameters) {
        double allowed = ceiling.at(geometry).gloss() + tolerance(geometry, parameters);
        return new GlossCheck(gloss.gloss() > allowed ? GlossSuspicion.OVER_CEILING : GlossSuspicion.NONE, Set.of());
    }

    /**
     * Compares a reading with the ceiling and with what the last grit can give.
     *
     * @param gloss what was read, any gloss
     * @param geometry angle of the meter
     * @param ceiling what the stone would read if it were smooth
     * @param ofGrit what the last grit may give at that angle, for example of {@link GritPrior#interval}
     * @param parameters as in the check without a grit
     */
    public static GlossCheck of(
            Gloss gloss, Geometry geometry, GlossCeiling ceiling, Range<Gloss> ofGrit, Parameters parameters) {
        GlossCheck check = of(gloss, geometry, ceiling, parameters);
        double tolerance = tolerance(geometry, parameters);
        if (check.suspicion() != GlossSuspicion.NONE
                || gloss.gloss() <= ofGrit.high().gloss() + tolerance) {
            return check;
        }
        EnumSet<Film> films = EnumSet.noneOf(Film.class);
        for (Film film : Film.values()) {
            if (gloss.gloss() <= film.cap(geometry).gloss() + tolerance) {
                films.add(film);
            }
        }
        return new GlossCheck(GlossSuspicion.FILM, films);
    }

    private static double tolerance(Geometry geometry, Parameters parameters) {
        return parameters.get("gloss-meter.reproducibility", Gloss.class).gloss()
                + DiffuseLight.most(new Share(100), geometry, parameters).gloss();
    }
}
