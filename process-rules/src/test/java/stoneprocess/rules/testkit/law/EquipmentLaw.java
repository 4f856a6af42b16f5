package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.Extractor;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.PickUp;
import stoneprocess.core.topic.Shortfall;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * Compares the answer to a survey with the answers to surveys that have less on hand: one machine less, one grade less,
 * no wet vacuum, no extractor. Only answers that both have a plan are compared. A plan is better where the finish is
 * higher, where pick-up leaves less behind, where the grades of a path of the same first and last grade follow each
 * other more closely, and where less is missing.
 */
final class EquipmentLaw implements Law.Check {
    private static final String ID = "less-on-hand-is-never-better";

    @Override
    public List<Violation> violations(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation wide = respondent.recommend(survey);
        List<Violation> violations = new ArrayList<>();
        if (!planned(wide)) {
            return violations;
        }
        narrower(survey).forEach((without, less) -> {
            Recommendation narrow = respondent.recommend(less);
            if (planned(narrow)) {
                violations.addAll(compared(wide, narrow, without));
            }
        });
        return violations;
    }

    /** A floor that is cut, also with something less. */
    static boolean isCompared(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation wide = respondent.recommend(survey);
        return planned(wide)
                && Breaches.cuts(wide)
                && narrower(survey).values().stream()
                        .map(respondent::recommend)
                        .anyMatch(narrow -> planned(narrow) && Breaches.cuts(narrow));
    }

    private static boolean planned(Recommendation answer) {
        return answer.status() == Status.PLANNED || answer.status() == Status.PROVISIONAL;
    }

    private static Map<String, FloorSurvey> narrower(FloorSurvey survey) {
        Map<String, FloorSurvey> narrower = new LinkedHashMap<>();
        for (MachineClass machine : survey.answer(SurveyField.MACHINES).value().orElse(Set.of())) {
            Set<MachineClass> rest =
                    new TreeSet<>(survey.answer(SurveyField.MACHINES).value().orElseThrow());
            rest.remove(machine);
            narrower.put(
                    machine.key(),
                    survey.toBuilder().set(SurveyField.MACHINES, rest).build());
        }
        for (AbrasiveGrade grade : survey.answer(SurveyField.GRADES).value().orElse(List.of())) {
            List<AbrasiveGrade> rest =
                    new ArrayList<>(survey.answer(SurveyField.GRADES).value().orElseThrow());
            rest.remove(grade);
            narrower.put(
                    grade.key(),
                    survey.toBuilder().set(SurveyField.GRADES, rest).build());
        }
        narrower.put(
                "the wet vacuum",
                survey.toBuilder().set(SurveyField.WET_VACUUM, Presence.NONE).build());
        narrower.put(
                "the extractor",
                survey.toBuilder().set(SurveyField.EXTRACTOR, Extractor.NONE).build());
        return narrower;
    }

    private static List<Violation> compared(Recommendation wide, Recommendation narrow, String without) {
        List<Violation> violations = new ArrayList<>();
        higher(Topics.FINISH, wide, narrow, without, violations);
        Set<Shortfall> gone = new TreeSet<>(wide.values(Topics.SHORTFALLS, Subject.FLOOR));
        gone.removeAll(narrow.values(Topics.SHORTFALLS, Subject.FLOOR));
        // A planetary machine that the supply does not carry is no longer missed when it is left at home.
        boolean leftAtHome =
                gone.remove(Shortfall.SUPPLY_HOLDS_PLANETARY) && !without.equals(MachineClass.PLANETARY.key());
        if (leftAtHome || !gone.isEmpty()) {
            violations.add(violation(wide, Topics.SHORTFALLS, Subject.FLOOR, "no shortfall less", gone, without));
        }
        for (Outcome outcome : wide.outcomes()) {
            if (outcome.topic() == Topics.PICK_UP
                    && wide.values(Topics.PICK_UP, outcome.subject()).contains(PickUp.TWO_BUCKETS)
                    && narrow.values(Topics.PICK_UP, outcome.subject()).contains(PickUp.WET_VACUUM)) {
                violations.add(violation(
                        wide, Topics.PICK_UP, outcome.subject(), "two buckets", PickUp.WET_VACUUM.key(), without));
            }
            if (outcome.topic() == Topics.GRIT_PATH) {
                closer(outcome.subject(), wide, narrow, without, violations);
            }
        }
        return violations;
    }

    private static <V extends Term> void higher(
            Topic<V> topic, Recommendation wide, Recommendation narrow, String without, List<Violation> violations) {
        List<V> before = wide.values(topic, Subject.FLOOR);
        List<V> after = narrow.values(topic, Subject.FLOOR);
        boolean both = !before.isEmpty() && !after.isEmpty();
        if (both && topic.domain().indexOf(after.get(0)) > topic.domain().indexOf(before.get(0))) {
            violations.add(violation(
                    wide,
                    topic,
                    Subject.FLOOR,
                    "at most " + before.get(0).key(),
                    after.get(0).key(),
                    without));
        }
    }

    private static void closer(
            Subject track, Recommendation wide, Recommendation narrow, String without, List<Violation> violations) {
        List<Grit> before = wide.values(Topics.GRIT_PATH, track);
        List<Grit> after = narrow.values(Topics.GRIT_PATH, track);
        boolean sameEnds = !before.isEmpty()
                && !after.isEmpty()
                && before.get(0).equals(after.get(0))
                && before.get(before.size() - 1).equals(after.get(after.size() - 1));
        if (sameEnds && widest(after) < widest(before)) {
            violations.add(violation(
                    wide,
                    Topics.GRIT_PATH,
                    track,
                    "no closer steps than " + Topics.GRIT_PATH.keys(before),
                    Topics.GRIT_PATH.keys(after),
                    without));
        }
    }

    /** The widest step inside a bond, as a ratio. */
    private static double widest(List<Grit> grits) {
        double widest = 1;
        for (int i = 1; i < grits.size(); i++) {
            Grit from = grits.get(i - 1);
            Grit to = grits.get(i);
            if (from.bond() == to.bond()) {
                widest = Math.max(widest, (double) to.number() / from.number());
            }
        }
        return widest;
    }

    private static Violation violation(
            Recommendation wide, Topic<?> topic, Subject subject, String expected, Object found, String without) {
        return new Violation(ID, topic.id(), subject, expected, found + " without " + without, wide.survey());
    }
}
