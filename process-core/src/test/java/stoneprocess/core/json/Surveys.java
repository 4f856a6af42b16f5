package stoneprocess.core.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import stoneprocess.core.gloss.Fresnel;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.stone.Stone;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.GlossReading;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;

/** Any survey that can be: fields, kinds and limits come from the tables. */
final class Surveys {
    private Surveys() {}

    static Arbitrary<FloorSurvey> any() {
        Arbitrary<String> titles = Names.upTo(200);
        return Combinators.combine(titles, answers(), zones(), readings().list().ofMaxSize(3))
                .as(Surveys::survey);
    }

    private static FloorSurvey survey(
            String title, List<Optional<Object>> answers, List<Zone> zones, List<GlossReading> readings) {
        FloorSurvey.Builder builder = FloorSurvey.builder(title).zones(zones);
        List<SurveyField<?>> fields = SurveyField.all();
        for (int i = 0; i < fields.size(); i++) {
            SurveyField<?> field = fields.get(i);
            answers.get(i).ifPresent(answer -> builder.put(field, answer));
        }
        // Facts that cannot hold together are left out.
        if (answers.contains(Optional.of(Setting.OUTDOORS))) {
            builder.unknown(SurveyField.ROOM_VOLUME);
        }
        if (answers.contains(Optional.of(Face.GLAZED))) {
            builder.unknown(SurveyField.SCRIBER);
        }
        List<String> names = zones.stream().map(Zone::name).toList();
        readings.stream().filter(reading -> names.contains(reading.zone())).forEach(builder::reading);
        return builder.build();
    }

    private static Arbitrary<List<Optional<Object>>> answers() {
        List<Arbitrary<Optional<Object>>> answers = new ArrayList<>();
        SurveyField.all().forEach(field -> answers.add(answer(field.kind()).optional(0.6)));
        return Combinators.combine(answers).as(values -> values);
    }

    private static Arbitrary<Object> answer(FieldKind kind) {
        if (kind instanceof FieldKind.Choice choice) {
            return Arbitraries.of(choice.type().getEnumConstants()).map(constant -> constant);
        }
        if (kind instanceof FieldKind.Choices choices) {
            return Arbitraries.subsetOf(
                            Arrays.<Object>asList((Object[]) choices.type().getEnumConstants()))
                    .map(LinkedHashSet::new);
        }
        if (kind instanceof FieldKind.Measure measure) {
            return quantity(
                            measure.dimension(),
                            measure.limits().low(),
                            measure.limits().high())
                    .map(quantity -> quantity);
        }
        if (kind instanceof FieldKind.Grades) {
            return Arbitraries.subsetOf(GritSequence.standard().grades()).map(ArrayList::new);
        }
        return Arbitraries.of(StoneCatalogue.standard().all()).map(Stone::name);
    }

    private static Arbitrary<Quantity> quantity(Dimension dimension, double low, double high) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.valueOf(low), BigDecimal.valueOf(high))
                .ofScale(dimension.decimals())
                .map(value -> Quantity.of(value, dimension.unit()));
    }

    private static Arbitrary<Share> share(double low, double high) {
        return quantity(Dimension.SHARE, low, high).map(Share.class::cast);
    }

    private static Arbitrary<List<Zone>> zones() {
        return Combinators.combine(Arbitraries.of(ZoneKind.class), share(0.0001, 25), damages())
                .as((kind, share, damages) -> new Zone(kind.key(), kind, share, damages))
                .list()
                .ofMaxSize(4)
                .uniqueElements(Zone::name);
    }

    private static Arbitrary<Map<DamageKind, Damage>> damages() {
        List<Arbitrary<Optional<Damage>>> each = new ArrayList<>();
        for (DamageKind kind : DamageKind.values()) {
            each.add(damage(kind).optional(0.7));
        }
        return Combinators.combine(each).as(found -> {
            Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
            found.forEach(damage -> damage.ifPresent(present -> damages.put(present.kind(), present)));
            return damages;
        });
    }

    private static Arbitrary<Damage> damage(DamageKind kind) {
        List<Term> bad = kind.terms().subList(1, kind.terms().size());
        Arbitrary<Damage> seen = Combinators.combine(
                        Arbitraries.of(bad), share(0, 100).optional())
                .as((look, share) -> new Damage(kind, Optional.of(look), Optional.empty(), share));
        if (kind.depthScale().isEmpty()) {
            return Arbitraries.oneOf(Arbitraries.just(Damage.none(kind)), seen);
        }
        Arbitrary<Length> depths = quantity(Dimension.LENGTH, 0, 100).map(Length.class::cast);
        Term worst = bad.get(bad.size() - 1);
        Arbitrary<Damage> measured = Combinators.combine(
                        Arbitraries.of(worst).optional(), depths, share(0, 100).optional())
                .as((look, depth, share) -> new Damage(kind, look, Optional.of(depth), share));
        return Arbitraries.oneOf(Arbitraries.just(Damage.none(kind)), seen, measured);
    }

    private static Arbitrary<GlossReading> readings() {
        return Combinators.combine(
                        Arbitraries.of(ZoneKind.class),
                        Arbitraries.of(Geometry.class),
                        Arbitraries.of(SurfaceState.class))
                .flatAs((zone, geometry, state) -> quantity(
                                Dimension.GLOSS, 0, Fresnel.mirror(geometry).gloss())
                        .map(gloss -> new GlossReading(zone.key(), geometry, (Gloss) gloss, state)));
    }
}
