package stoneprocess.rules.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Zone;
import stoneprocess.rules.space.Forgetting;

/** Makes a survey that breaks a law as small as it can while it still does. */
public final class Smallest {
    private Smallest() {}

    /**
     * Forgets one answer or zone after the other, as long as the law stays broken.
     *
     * @return a survey that breaks the law and stops doing so when any one thing more is forgotten; the survey itself
     *     when it breaks nothing
     */
    public static FloorSurvey of(Law law, Respondent respondent, FloorSurvey survey, long seed) {
        FloorSurvey smallest = survey;
        boolean smaller = true;
        while (smaller) {
            smaller = false;
            for (FloorSurvey less : oneLess(smallest).toList()) {
                if (!law.violations(respondent, less, seed).isEmpty()) {
                    smallest = less;
                    smaller = true;
                    break;
                }
            }
        }
        return smallest;
    }

    private static Stream<FloorSurvey> oneLess(FloorSurvey survey) {
        Stream<FloorSurvey> withoutZone = survey.readings().isEmpty()
                ? survey.zones().stream().map(zone -> {
                    List<Zone> rest = new ArrayList<>(survey.zones());
                    rest.remove(zone);
                    return survey.toBuilder().zones(rest).build();
                })
                : Stream.empty();
        return Stream.concat(withoutZone, Forgetting.oneByOne(survey).stream().map(Forgetting.LessKnown::survey));
    }
}
