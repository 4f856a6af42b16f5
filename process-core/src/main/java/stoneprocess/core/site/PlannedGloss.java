package stoneprocess.core.site;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * What the rest of a plan would bring, as {@link FloorForecast} tells it.
 *
 * @param now the zone as it stands; empty while no grit has run
 * @param ends the zone at the end of each resin grit that remains
 * @param coarserFirst metal and transition grits that go first
 * @param lastGrit the last grit of the plan
 * @param starts what each start would bring; none where the plan grinds the floor level
 * @param toTarget the way to the target; empty where there is none
 * @param basis what it rests on
 */
public record PlannedGloss(
        Optional<GlossPrediction> now,
        List<GlossPrediction> ends,
        List<AbrasiveGrade> coarserFirst,
        int lastGrit,
        List<GlossStart> starts,
        Optional<ToTarget> toTarget,
        ForecastBasis basis) {
    /**
     * The way to a target.
     *
     * @param target what is to be reached
     * @param chance how likely it is reached at the end of the plan
     * @param outlook which passes or grit would reach it, finer grits than the plan runs among them
     */
    public record ToTarget(GlossTarget target, Share chance, TargetOutlook outlook) {
        public ToTarget {
            Refuse.nulls(ToTarget.class, target, chance, outlook);
        }

        /** Whether only a grit that the plan does not run likely reaches it. */
        public boolean beyond(int lastGrit) {
            return outlook.reachedBy()
                    .filter(option -> option.grit() > lastGrit)
                    .isPresent();
        }
    }

    public PlannedGloss {
        Refuse.nulls(PlannedGloss.class, now, ends, coarserFirst, starts, toTarget, basis);
        ends = List.copyOf(ends);
        coarserFirst = List.copyOf(coarserFirst);
        starts = List.copyOf(starts);
    }

    static PlannedGloss of(FloorForecast forecast, Optional<GlossTarget> target) {
        return new PlannedGloss(
                forecast.now(),
                forecast.ends(),
                forecast.coarserFirst(),
                forecast.lastGrit(),
                forecast.starts(),
                target.map(wanted -> new ToTarget(
                        wanted, forecast.chance(wanted.gloss()), forecast.outlookBeyondPlan(wanted.gloss()))),
                forecast.basis());
    }
}
