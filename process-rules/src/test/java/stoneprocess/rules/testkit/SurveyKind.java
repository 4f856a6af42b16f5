package stoneprocess.rules.testkit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.space.SurveyGenerator;

/** Kinds of drawn surveys. */
public enum SurveyKind implements Term {
    /** Floors as a crew meets them: mostly known, mostly planned and cut. */
    TYPICAL,

    /** Any answers that are accepted. */
    VALID,

    /** Measured answers lie exactly where a class begins, or at an end of what is accepted. */
    BOUNDARY,

    /** Measured answers lie one step of their precision before where a class begins. */
    NEAR_MISS;

    /**
     * Draws a survey of this kind. At a limit or before it, half of the measured answers that are known, and half of the measured depths of
     * damage, are moved to a limit of their classes as the parameters make them, or one step before it.
     *
     * @param parameters the numbers that part the classes
     */
    public FloorSurvey draw(SurveyGenerator generator, Parameters parameters, SplittableRandom random) {
        if (this == TYPICAL) {
            return TypicalFloors.draw(generator.sequence(), random);
        }
        FloorSurvey survey = generator.draw(random);
        if (this == VALID) {
            return survey;
        }
        FieldClasses classes = new FieldClasses(parameters, GritSequence.standard());
        for (SurveyField<?> field : SurveyField.all()) {
            if (field.kind() instanceof FieldKind.Measure measure
                    && survey.answer(field).isKnown()
                    && random.nextBoolean()) {
                List<Quantity> limits = classes.limits(field, measure, survey);
                if (!limits.isEmpty()) {
                    Quantity limit = pick(limits, random);
                    Quantity before = FieldClasses.stepBefore(limit);
                    boolean near = this == NEAR_MISS && measure.limits().contains(before.kept());
                    survey =
                            survey.toBuilder().put(field, near ? before : limit).build();
                }
            }
        }
        List<Zone> zones = new ArrayList<>();
        for (Zone zone : survey.zones()) {
            Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
            zone.damages().forEach((kind, damage) -> damages.put(kind, moved(damage, classes.depths(kind), random)));
            zones.add(new Zone(zone.name(), zone.kind(), zone.share(), damages));
        }
        return survey.toBuilder().zones(zones).build();
    }

    private Damage moved(Damage damage, List<Length> limits, SplittableRandom random) {
        if (damage.depth().isEmpty() || limits.isEmpty() || random.nextBoolean()) {
            return damage;
        }
        Length limit = pick(limits, random);
        Length depth = this == BOUNDARY ? limit : (Length) FieldClasses.stepBefore(limit);
        return new Damage(damage.kind(), damage.look(), Optional.of(depth), damage.share());
    }

    private static <T> T pick(List<T> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }
}
