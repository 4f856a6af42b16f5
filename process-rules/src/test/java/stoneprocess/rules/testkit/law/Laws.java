package stoneprocess.rules.testkit.law;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.plan.Status;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.rules.space.Forgetting;

/** The laws. */
public final class Laws {
    public static final Law GRIT_PATH_IS_LEGAL = new Law(
            "grit-path-is-legal",
            "Inside a bond each grade is finer than the last, by no more than 2.7 times, or 3.75 times inside metal; after"
                    + " metal the number does not rise; no grade is skipped where the step rule forbids it; the path"
                    + " starts at the first cut and ends at the grade nearest the last grit",
            "Common practice, no source: published sequences reach 2.7 times, and 3.75 times between metal grades",
            Law.Meeting.where(PathLaws::isPath),
            PathLaws::illegal);

    public static final Law SCRATCH_NEVER_GETS_COARSER = new Law(
            "scratch-never-gets-coarser",
            "No grade leaves a coarser scratch than the grade before it",
            "A grade removes the scratches of the last one; metal cuts deeper than its number, so a softer bond may start"
                    + " up to 2.2 times coarser. Common practice, no source",
            Law.Meeting.where(PathLaws::isPath),
            PathLaws::coarser);

    public static final Law ORDER_MAKES_NO_DIFFERENCE = new Law(
            "order-makes-no-difference",
            "Rules and facts given in any order lead to an equal recommendation",
            "Rules do not know each other, and no rule reads what its own stage concludes",
            Law.Meeting.ALWAYS,
            OrderLaws::order);

    public static final Law UNKNOWN_IS_NEVER_BOLDER = unknownIsNeverBolder(4);

    public static final Law REFUSAL_STANDS = new Law(
            "refusal-stands",
            "A refusal stands however the answers change that neither the refusing rules read nor identify the stone",
            "Nothing outweighs a danger; a refusal is lifted at its cause alone",
            Law.Meeting.where(answer -> answer.status() == Status.REFUSED),
            RefusalLaw::lifted);

    public static final Law SAME_ANSWER_AGAIN = new Law(
            "same-answer-again",
            "The same survey asked twice gives equal recommendations with equal hash codes",
            "A run leaves nothing behind, and nothing in it depends on time or chance",
            Law.Meeting.ALWAYS,
            OrderLaws::again);

    public static final Law JSON_IS_LOSSLESS = new Law(
            "json-is-lossless",
            "A survey and its recommendation, printed and read back, are equal to what was printed",
            "What an embedder stores or sends must be what was advised",
            Law.Meeting.ALWAYS,
            OrderLaws::json);

    public static final Law LESS_ON_HAND_IS_NEVER_BETTER = new Law(
            "less-on-hand-is-never-better",
            "With a machine, a grade, the wet vacuum or the extractor less, where both floors have a plan, no finish is"
                    + " higher, no pick-up leaves less behind, no path of the same ends is closer, and no shortfall goes",
            "A crew must not gain by leaving something at home",
            EquipmentLaw::isCompared,
            new EquipmentLaw());

    private static final List<Law> OWN = List.of(
            GRIT_PATH_IS_LEGAL,
            SCRATCH_NEVER_GETS_COARSER,
            ORDER_MAKES_NO_DIFFERENCE,
            UNKNOWN_IS_NEVER_BOLDER,
            REFUSAL_STANDS,
            SAME_ANSWER_AGAIN,
            JSON_IS_LOSSLESS,
            LESS_ON_HAND_IS_NEVER_BETTER);

    private Laws() {}

    /**
     * Unknown is never bolder than known, tried on some of the answers of a survey and on all of them at once.
     *
     * @param answers how many answers are forgotten, one at a time; the seed chooses which. More than there are means
     *     each of them
     */
    public static Law unknownIsNeverBolder(int answers) {
        return new Law(
                "unknown-is-never-bolder",
                "Forgetting an answer never gives a bolder value on a topic that runs from cautious to bold, and, unless"
                        + " the floor is refused, takes no warning away",
                "What nobody knows is read cautiously; a crew must not gain by not looking",
                (respondent, survey, seed) -> !Forgetting.known(survey).isEmpty(),
                new UnknownLaw(answers));
    }

    /** All laws. */
    public static List<Law> all() {
        return Stream.of(OWN, AnswerLaws.ALL, PlanLaws.ALL, WarningLaws.ALL, FloorLaws.ALL)
                .flatMap(List::stream)
                .toList();
    }

    /** The laws that look at one answer: quick to check. */
    public static List<Law> ofOneAnswer() {
        return Stream.of(
                        List.of(GRIT_PATH_IS_LEGAL, SCRATCH_NEVER_GETS_COARSER),
                        AnswerLaws.ALL,
                        PlanLaws.ALL,
                        WarningLaws.ALL)
                .flatMap(List::stream)
                .filter(law -> law != WarningLaws.HAZARD_NEVER_SILENCES && law != AnswerLaws.OFFER_TAKEN_IS_KEPT)
                .toList();
    }

    /** The laws that ask again, of the same floor or of others: each takes several times as long. */
    public static List<Law> ofSeveralAnswers() {
        List<Law> one = ofOneAnswer();
        return all().stream().filter(law -> !one.contains(law)).toList();
    }

    /**
     * The law with the given id.
     *
     * @throws InvalidInputException when there is none
     */
    public static Law named(String id) {
        return all().stream()
                .filter(law -> law.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        "law",
                        id,
                        "one of "
                                + String.join(", ", all().stream().map(Law::id).toList())));
    }
}
