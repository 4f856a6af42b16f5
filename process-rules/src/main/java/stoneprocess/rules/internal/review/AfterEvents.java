package stoneprocess.rules.internal.review;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Extent;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.Zone;

/** Enters what happened on the job into the survey, so that go or no-go is asked again. */
public final class AfterEvents {
    private AfterEvents() {}

    /**
     * The survey with the events that stand. What an event leaves open, such as what made a stain, becomes unknown. A
     * survey without zones has no place for damage; the event itself then speaks alone.
     *
     * @param events the kinds that stand, with the zones where
     */
    public static FloorSurvey enter(FloorSurvey survey, Map<EventKind, Set<String>> events) {
        FloorSurvey.Builder builder = survey.toBuilder();
        for (EventKind kind : events.keySet()) {
            switch (kind) {
                case TILE_MOVED -> builder.set(SurveyField.SOUNDING, Sounding.LOOSE);
                case UNKNOWN_LAYER -> builder.set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED);
                case DAMP_EDGE -> builder.unknown(SurveyField.MOISTURE);
                default -> {
                    // No field of the survey as a whole tells it.
                }
            }
        }
        survey.zones().forEach(zone -> builder.replace(zone, changed(zone, events)));
        return builder.build();
    }

    /**
     * A finished floor whose lanes alone have gone dull and are worked alone; what else the survey said of its wear was
     * said before the work.
     */
    public static FloorSurvey lanesDull(FloorSurvey survey) {
        FloorSurvey.Builder builder = survey.toBuilder();
        for (Zone zone : survey.zones()) {
            Damage wear = zone.kind().isTrodden()
                    ? Damage.seen(DamageKind.WEAR, WearClass.DULL, new Share(100))
                    : Damage.none(DamageKind.WEAR);
            builder.replace(zone, zone.with(wear));
        }
        return builder.set(SurveyField.EXTENT, Extent.LANES_ALONE).build();
    }

    private static Zone changed(Zone zone, Map<EventKind, Set<String>> events) {
        Zone changed = zone;
        for (Map.Entry<EventKind, Set<String>> event : events.entrySet()) {
            if (event.getValue().contains(zone.name())) {
                changed = after(event.getKey(), changed);
            }
        }
        return changed;
    }

    private static Zone after(EventKind event, Zone zone) {
        return switch (event) {
            case FILL_OUT, CRACK -> zone.with(present(DamageKind.CRACKS));
            case FLAKING -> zone.with(present(DamageKind.FLAKING));
            case SALTS -> zone.with(present(DamageKind.SALTS));
            case STAIN ->
                zone.without(DamageKind.OIL_STAINS)
                        .without(DamageKind.ORGANIC_STAINS)
                        .without(DamageKind.RUST_STAINS);
            default -> zone;
        };
    }

    private static Damage present(DamageKind kind) {
        return new Damage(kind, Optional.of(Presence.PRESENT), Optional.empty(), Optional.empty());
    }
}
