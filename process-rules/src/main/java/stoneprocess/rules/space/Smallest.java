package stoneprocess.rules.space;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;

/**
 * Makes a survey as small as it can be while it still shows what it is to show: forgets what does not matter, and puts
 * the answer of an unremarkable floor where something has to be known but need not be remarkable.
 */
public final class Smallest {
    private Smallest() {}

    /**
     * Forgets one answer or zone after the other, or replaces it by what an unremarkable floor would show, as long as
     * the survey shows what it is to show.
     *
     * @param shows whether a survey still shows it; the given one does
     * @return a survey that shows it and stops doing so when any one thing more is forgotten or becomes unremarkable
     */
    public static FloorSurvey of(FloorSurvey survey, Predicate<FloorSurvey> shows) {
        FloorSurvey smallest = survey;
        Optional<FloorSurvey> smaller = Optional.of(survey);
        while (smaller.isPresent()) {
            smallest = smaller.get();
            smaller = less(smallest).filter(shows).findFirst();
        }
        return smallest;
    }

    /** Surveys that know one thing less, then those with one thing less that is remarkable, lazily. */
    public static Stream<FloorSurvey> less(FloorSurvey survey) {
        Stream<FloorSurvey> withoutZone = survey.readings().isEmpty()
                ? survey.zones().stream().map(zone -> {
                    List<Zone> rest = new ArrayList<>(survey.zones());
                    rest.remove(zone);
                    return survey.toBuilder().zones(rest).build();
                })
                : Stream.empty();
        return Stream.of(
                        withoutZone,
                        Forgetting.eachOne(survey).map(Forgetting.LessKnown::survey),
                        unremarkableAnswers(survey),
                        unremarkableZones(survey))
                .flatMap(surveys -> surveys);
    }

    private static Stream<FloorSurvey> unremarkableAnswers(FloorSurvey survey) {
        FloorSurvey floor = Unremarkable.floor().build();
        return SurveyField.all().stream()
                .filter(field -> survey.answer(field).isKnown()
                        && floor.answer(field).isKnown()
                        && !survey.answer(field).equals(floor.answer(field)))
                .flatMap(field -> possible(() -> survey.toBuilder()
                        .put(field, floor.answer(field).value().orElseThrow())
                        .build()));
    }

    private static Stream<FloorSurvey> unremarkableZones(FloorSurvey survey) {
        return survey.zones().stream()
                .flatMap(zone -> zone.damages().values().stream()
                        .filter(damage -> !damage.equals(Damage.none(damage.kind())))
                        .map(damage -> survey.toBuilder()
                                .replace(zone, zone.with(Damage.none(damage.kind())))
                                .build()));
    }

    /** An answer that cannot hold together with the others leads nowhere. */
    private static Stream<FloorSurvey> possible(Supplier<FloorSurvey> survey) {
        try {
            return Stream.of(survey.get());
        } catch (InvalidInputException impossible) {
            return Stream.empty();
        }
    }
}
