package stoneprocess.rules.testkit.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.StepRule;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * Judges the grit path of a recommendation by its grades alone, without the code and the parameters that made it. The
 * limits are common practice, no source.
 */
final class PathLaws {
    private static final int MOST = 270;
    private static final int MOST_INSIDE_METAL = 375;
    private static final int ABOUT_A_FACTOR_OF_TWO = 220;
    private static final int GRADES_OF_A_REFRESH = 3;

    private PathLaws() {}

    /** The grades of one track, and what there was to choose from. */
    private record Path(Recommendation recommendation, Subject track, GritSequence inUse, List<AbrasiveGrade> grades) {
        <E extends Enum<E> & Term> E decided(Topic<E> topic) {
            Subject subject = topic.scope() == Scope.TRACK ? track : Subject.FLOOR;
            return recommendation.values(topic, subject).get(0);
        }
    }

    /** A path of two grits or more. */
    static boolean isPath(Recommendation answer) {
        return answer.outcomes().stream()
                .filter(outcome -> outcome.topic() == Topics.GRIT_PATH)
                .flatMap(outcome -> outcome.decided().stream())
                .anyMatch(path -> path.values().size() > 1);
    }

    static List<Violation> illegal(Respondent respondent, FloorSurvey survey, long seed) {
        Recommendation recommendation = respondent.recommend(survey);
        String law = Laws.GRIT_PATH_IS_LEGAL.id();
        List<Violation> violations = judged(law, recommendation, PathLaws::illegalSteps);
        violations.addAll(judged(law, recommendation, PathLaws::wrongEnds));
        recommendation
                .plan()
                .ifPresent(plan -> plan.tracks().forEach(track -> {
                    Subject subject = new Subject.OfTrack(track.kind());
                    List<String> decided = Topics.GRIT_PATH.keys(recommendation.values(Topics.GRIT_PATH, subject));
                    if (!keys(track).equals(decided)) {
                        violations.add(new Violation(
                                law,
                                Topics.GRIT_PATH.id(),
                                subject,
                                "a plan with the grades decided, " + decided,
                                keys(track).toString(),
                                survey));
                    }
                }));
        return violations;
    }

    static List<Violation> coarser(Respondent respondent, FloorSurvey survey, long seed) {
        return judged(Laws.SCRATCH_NEVER_GETS_COARSER.id(), respondent.recommend(survey), PathLaws::coarserScratches);
    }

    private static List<String> keys(Track track) {
        return track.steps().stream().map(step -> step.grade().key()).toList();
    }

    private static List<Violation> judged(
            String law, Recommendation recommendation, BiFunction<Path, List<String>, List<String>> faults) {
        List<Violation> violations = new ArrayList<>();
        GritSequence inUse = recommendation
                .survey()
                .answer(SurveyField.GRADES)
                .value()
                .filter(grades -> !grades.isEmpty())
                .map(GritSequence::of)
                .orElse(recommendation.sequence());
        recommendation.outcomes().stream()
                .filter(outcome -> outcome.topic() == Topics.GRIT_PATH)
                .flatMap(outcome -> outcome.decided().stream())
                .forEach(decision -> {
                    List<AbrasiveGrade> grades = decision.keys().stream()
                            .map(key -> recommendation.sequence().get(key, Topics.GRIT_PATH.id()))
                            .toList();
                    Path path = new Path(recommendation, decision.subject(), inUse, grades);
                    for (String fault : faults.apply(path, new ArrayList<>())) {
                        violations.add(new Violation(
                                law,
                                decision.topic().id(),
                                decision.subject(),
                                fault,
                                decision.keys().toString(),
                                recommendation.survey()));
                    }
                });
        return violations;
    }

    private static List<String> illegalSteps(Path path, List<String> faults) {
        List<Bond> bonds = path.recommendation().values(Topics.BONDS, Subject.FLOOR);
        boolean noSkip = path.decided(Topics.STEP_RULE) == StepRule.NO_SKIP;
        for (AbrasiveGrade grade : path.grades()) {
            if (!path.inUse().grades().contains(grade)) {
                faults.add(grade.key() + " is not in use");
            }
            if (!bonds.contains(grade.bond())) {
                faults.add(grade.key() + " is of a bond that is excluded");
            }
        }
        for (int i = 1; i < path.grades().size(); i++) {
            AbrasiveGrade from = path.grades().get(i - 1);
            AbrasiveGrade to = path.grades().get(i);
            String step = from.key() + " to " + to.key();
            if (to.bond().compareTo(from.bond()) < 0) {
                faults.add(step + " goes back to a harder bond");
            } else if (from.bond() == to.bond()) {
                int most = from.bond() == Bond.METAL ? MOST_INSIDE_METAL : MOST;
                if (to.number() <= from.number()) {
                    faults.add(step + " is not finer");
                }
                if (100 * to.number() > most * from.number()) {
                    faults.add(step + " rises by more than " + most + " %");
                }
                if (noSkip && skips(path.inUse(), from, to)) {
                    faults.add(step + " skips a grade");
                }
            } else if (from.bond() == Bond.METAL) {
                if (to.number() > from.number()) {
                    faults.add(step + " rises after metal");
                }
            } else {
                int most = noSkip ? 100 : ABOUT_A_FACTOR_OF_TWO;
                if (100 * to.number() > most * from.number()) {
                    faults.add(step + " rises by more than " + most + " %");
                }
            }
        }
        return faults;
    }

    private static boolean skips(GritSequence inUse, AbrasiveGrade from, AbrasiveGrade to) {
        return inUse.grades(from.bond()).stream()
                .anyMatch(grade -> grade.number() > from.number() && grade.number() < to.number());
    }

    private static List<String> wrongEnds(Path path, List<String> faults) {
        List<AbrasiveGrade> grades = path.grades();
        if (grades.isEmpty()) {
            faults.add("a path has a grade");
            return faults;
        }
        AbrasiveGrade first = grades.get(0);
        AbrasiveGrade last = grades.get(grades.size() - 1);
        int lastGrit = path.decided(Topics.LAST_GRIT).number();
        if (last.bond() != Bond.RESIN || nearer(path.inUse(), last, lastGrit).isPresent()) {
            faults.add("the path ends at the resin grade nearest " + lastGrit);
        }
        Cut cut = path.decided(Topics.FIRST_CUT);
        if (cut == Cut.REFRESH) {
            if (first.bond() != Bond.RESIN || grades.size() > GRADES_OF_A_REFRESH) {
                faults.add("a refresh has the last three resin grades at most");
            }
            return faults;
        }
        boolean floorIsFineEnough = grades.size() == 1 && cut.bond() == Bond.RESIN && cut.number() > last.number();
        boolean startsAtCut = first.bond() == cut.bond()
                && nearer(path.inUse(), first, cut.number()).isEmpty();
        if (!startsAtCut && !floorIsFineEnough) {
            faults.add("the path starts at the " + cut.bond().key() + " grade nearest " + cut.number());
        }
        return faults;
    }

    /** A grade in use of the same bond that lies nearer to a number, by ratio. */
    private static Optional<AbrasiveGrade> nearer(GritSequence inUse, AbrasiveGrade grade, int number) {
        return inUse.grades(grade.bond()).stream()
                .filter(other -> distance(other, number) < distance(grade, number) - 1e-9)
                .findFirst();
    }

    private static double distance(AbrasiveGrade grade, int number) {
        return Math.max((double) grade.number() / number, (double) number / grade.number());
    }

    /** The scratch that a grade leaves is as its grain; where the bond gets softer, it may be somewhat coarser. */
    private static List<String> coarserScratches(Path path, List<String> faults) {
        for (int i = 1; i < path.grades().size(); i++) {
            AbrasiveGrade from = path.grades().get(i - 1);
            AbrasiveGrade to = path.grades().get(i);
            double allowance = to.bond().compareTo(from.bond()) > 0 ? ABOUT_A_FACTOR_OF_TWO / 100.0 : 1;
            if (coarser(to.grain().low(), from.grain().low(), allowance)
                    || coarser(to.grain().high(), from.grain().high(), allowance)) {
                faults.add(to.key() + " leaves no coarser scratch than " + from.key());
            }
        }
        return faults;
    }

    private static boolean coarser(Length grain, Length before, double allowance) {
        return grain.millimetres() > before.millimetres() * allowance;
    }
}
