package stoneprocess.rules.space;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.rules.internal.classify.Facts;

/** Surveys that know less than another. Answers go by the names that questions use. */
public final class Forgetting {
    private Forgetting() {}

    /** Names of all answers that a survey can give: every field, {@code damages.} with every kind of damage, and the
     * gloss readings. */
    public static List<String> names() {
        return Stream.concat(
                        SurveyField.all().stream().map(SurveyField::name),
                        Stream.concat(Stream.of(DamageKind.values()).map(Facts::damage), Stream.of(Facts.READINGS)))
                .toList();
    }

    /** Names of the answers that a survey gives; a kind of damage counts when any zone answers it. */
    public static List<String> known(FloorSurvey survey) {
        List<String> known = new ArrayList<>();
        for (SurveyField<?> field : SurveyField.all()) {
            if (survey.answer(field).isKnown()) {
                known.add(field.name());
            }
        }
        for (DamageKind kind : DamageKind.values()) {
            if (survey.zones().stream().anyMatch(zone -> zone.damage(kind).isKnown())) {
                known.add(Facts.damage(kind));
            }
        }
        if (!survey.readings().isEmpty()) {
            known.add(Facts.READINGS);
        }
        return List.copyOf(known);
    }

    /**
     * The same survey with one answer forgotten; a kind of damage is forgotten in all zones.
     *
     * @throws InvalidInputException when no answer has that name
     */
    public static FloorSurvey without(FloorSurvey survey, String name) {
        if (name.equals(Facts.READINGS)) {
            return survey.toBuilder().readings(List.of()).build();
        }
        for (DamageKind kind : DamageKind.values()) {
            if (Facts.damage(kind).equals(name)) {
                List<Zone> zones =
                        survey.zones().stream().map(zone -> zone.without(kind)).toList();
                return survey.toBuilder().zones(zones).build();
            }
        }
        return survey.toBuilder().unknown(SurveyField.named(name)).build();
    }

    /**
     * A survey that knows less.
     *
     * @param forgotten what was forgotten: the name of an answer, or a zone and the name
     * @param survey what is left
     */
    public record LessKnown(String forgotten, FloorSurvey survey) {
        public LessKnown {
            Refuse.nulls(LessKnown.class, forgotten, survey);
        }
    }

    /** Every survey that knows one answer less: a field, a kind of damage in all zones, or in one of several zones. */
    public static List<LessKnown> oneByOne(FloorSurvey survey) {
        return eachOne(survey).toList();
    }

    /** The same, each made when it is asked for. */
    static Stream<LessKnown> eachOne(FloorSurvey survey) {
        Stream<LessKnown> everywhere = known(survey).stream().map(name -> new LessKnown(name, without(survey, name)));
        Stream<Zone> severalZones = survey.zones().size() > 1 ? survey.zones().stream() : Stream.empty();
        Stream<LessKnown> inOneZone = severalZones.flatMap(zone -> zone.damages().keySet().stream()
                .map(kind -> new LessKnown(
                        zone.name() + "/" + Facts.damage(kind),
                        survey.toBuilder().replace(zone, zone.without(kind)).build())));
        return Stream.concat(everywhere, inOneZone);
    }

    /** The survey of a floor about which nothing is known, not even its zones. */
    public static LessKnown everything(FloorSurvey survey) {
        return new LessKnown("every answer", FloorSurvey.builder(survey.title()).build());
    }
}
