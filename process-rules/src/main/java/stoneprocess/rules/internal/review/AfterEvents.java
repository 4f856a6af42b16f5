package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.HazardousLayer;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
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
        events.forEach((kind, zones) -> {
            switch (kind) {
                case TILE_MOVED -> builder.set(SurveyField.SOUNDING, Sounding.LOOSE);
                case UNKNOWN_LAYER -> builder.set(SurveyField.HAZARDOUS_LAYER, HazardousLayer.UNTESTED);
                case DAMP_EDGE -> builder.unknown(SurveyField.MOISTURE);
                case FILL_OUT,
                        STAIN,
                        CRACK,
                        FLAKING,
                        SALTS,
                        AGGREGATE_SHOWS,
                        EDGES_SKIPPED,
                        PAD_CHANGED,
                        SLURRY_ESCAPED,
                        ALARM -> {
                    // No field of the survey as a whole tells it.
                }
            }
        });
        List<Zone> zones = new ArrayList<>();
        for (Zone zone : survey.zones()) {
            zones.add(changed(zone, events));
        }
        return builder.zones(zones).build();
    }

    private static Zone changed(Zone zone, Map<EventKind, Set<String>> events) {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        damages.putAll(zone.damages());
        events.forEach((kind, zones) -> {
            if (!zones.contains(zone.name())) {
                return;
            }
            switch (kind) {
                case FILL_OUT, CRACK -> present(DamageKind.CRACKS, damages);
                case FLAKING -> present(DamageKind.FLAKING, damages);
                case SALTS -> present(DamageKind.SALTS, damages);
                case STAIN ->
                    List.of(DamageKind.OIL_STAINS, DamageKind.ORGANIC_STAINS, DamageKind.RUST_STAINS)
                            .forEach(damages::remove);
                case TILE_MOVED,
                        DAMP_EDGE,
                        AGGREGATE_SHOWS,
                        UNKNOWN_LAYER,
                        EDGES_SKIPPED,
                        PAD_CHANGED,
                        SLURRY_ESCAPED,
                        ALARM -> {
                    // No damage of the zone tells it.
                }
            }
        });
        return new Zone(zone.name(), zone.kind(), zone.share(), damages);
    }

    private static void present(DamageKind kind, Map<DamageKind, Damage> damages) {
        damages.put(kind, new Damage(kind, Optional.of(Presence.PRESENT), Optional.empty(), Optional.empty()));
    }
}
