package stoneprocess.rules.testkit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;

/** Draws surveys with one thing in them that cannot be, each of which has to be refused with the field at fault. */
public final class InvalidSurveys {
    /**
     * A survey that cannot be built.
     *
     * @param field what the refusal has to name, or the end of it
     * @param fault what is wrong
     * @param survey tries to build it
     */
    public record Attempt(String field, String fault, Supplier<FloorSurvey> survey) {
        @Override
        public String toString() {
            return field + ": " + fault;
        }
    }

    private InvalidSurveys() {}

    /** An attempt; the rest of the survey is the given one. */
    public static Attempt draw(FloorSurvey survey, SplittableRandom random) {
        List<Attempt> attempts = all(survey);
        return attempts.get(random.nextInt(attempts.size()));
    }

    /** Every fault that is known, each in the given survey. */
    public static List<Attempt> all(FloorSurvey survey) {
        List<Attempt> attempts = new ArrayList<>();
        for (SurveyField<?> field : SurveyField.all()) {
            attempts.add(put(survey, field, "another type", Map.of()));
            if (field.kind() instanceof FieldKind.Measure measure) {
                BigDecimal step =
                        BigDecimal.ONE.movePointLeft(measure.dimension().decimals());
                BigDecimal high = BigDecimal.valueOf(measure.limits().high()).add(step);
                attempts.add(put(
                        survey,
                        field,
                        "too much",
                        Quantity.of(high, measure.dimension().unit())));
                BigDecimal low = BigDecimal.valueOf(measure.limits().low()).subtract(step);
                if (low.signum() >= 0) {
                    attempts.add(put(
                            survey,
                            field,
                            "too little",
                            Quantity.of(low, measure.dimension().unit())));
                }
            }
        }
        attempts.add(put(survey, SurveyField.STONE_NAME, "no such stone", "moonstone of Merrowhithe"));
        attempts.add(new Attempt(
                SurveyField.ROOM_VOLUME.name(),
                "a room outdoors",
                () -> survey.toBuilder()
                        .set(SurveyField.SETTING, Setting.OUTDOORS)
                        .set(SurveyField.ROOM_VOLUME, new Volume(100_000))
                        .build()));
        attempts.add(new Attempt(
                SurveyField.FACE.name(),
                "a glaze that acid attacks",
                () -> survey.toBuilder()
                        .set(SurveyField.FACE, Face.GLAZED)
                        .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                        .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                        .build()));
        attempts.add(new Attempt(
                "zones.share",
                "more than the whole",
                () -> survey.toBuilder()
                        .zones(List.of(zone("one", 70), zone("other", 31)))
                        .readings(List.of())
                        .build()));
        attempts.add(new Attempt(
                "zones.name",
                "a name twice",
                () -> survey.toBuilder()
                        .zones(List.of(zone("one", 20), zone("one", 20)))
                        .readings(List.of())
                        .build()));
        attempts.add(new Attempt(
                "readings.zone",
                "a zone that is not there",
                () -> survey.toBuilder()
                        .reading(new GlossReading("nowhere", Geometry.DEG_60, new Gloss(40), SurfaceState.CLEAN_DRY))
                        .build()));
        attempts.add(new Attempt(
                "share",
                "a zone of nothing",
                () -> survey.toBuilder().zone(zone("none", 0)).build()));
        for (DamageKind kind : DamageKind.values()) {
            attempts.add(damaged(survey, kind.key() + ".share", "a share of nothing", kind, kind.none(), 5));
            attempts.add(damaged(
                    survey,
                    kind.key() + ".share",
                    "more than the whole",
                    kind,
                    kind.terms().get(1),
                    101));
            if (kind.depthScale().isEmpty()) {
                attempts.add(new Attempt(
                        kind.key() + ".depth",
                        "a depth that is not measured",
                        () -> survey.toBuilder()
                                .zone(zone("one", 1, Damage.measured(kind, new Length(1), new Share(5))))
                                .build()));
            }
        }
        attempts.add(new Attempt(
                "scratches.depth",
                "a depth that nobody feels",
                () -> survey.toBuilder()
                        .zone(zone(
                                "one",
                                1,
                                new Damage(
                                        DamageKind.SCRATCHES,
                                        Optional.of(ScratchClass.SEEN),
                                        Optional.of(new Length(0.1)),
                                        Optional.empty())))
                        .build()));
        return attempts;
    }

    private static Attempt put(FloorSurvey survey, SurveyField<?> field, String fault, Object value) {
        return new Attempt(
                field.name(), fault, () -> survey.toBuilder().put(field, value).build());
    }

    private static Attempt damaged(
            FloorSurvey survey, String field, String fault, DamageKind kind, Term look, int share) {
        return new Attempt(
                field,
                fault,
                () -> survey.toBuilder()
                        .zone(zone("one", 1, Damage.seen(kind, look, new Share(share))))
                        .build());
    }

    private static Zone zone(String name, int share, Damage... found) {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        for (Damage damage : found) {
            damages.put(damage.kind(), damage);
        }
        return new Zone(name, ZoneKind.FIELD, new Share(share), damages);
    }
}
