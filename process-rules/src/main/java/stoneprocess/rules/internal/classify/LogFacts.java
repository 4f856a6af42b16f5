package stoneprocess.rules.internal.classify;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.Sign;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.feature.WayBack;
import stoneprocess.rules.internal.classify.FactLine.Origin;
import stoneprocess.rules.internal.review.LogReview;

/** The part of the table of facts that is read from a job log. */
final class LogFacts {
    private LogFacts() {}

    /** The lines of the table. */
    static List<FactLine> lines() {
        return List.of(
                // A diagnosis does not ask how far the job has come.
                SingleFact.of(
                        OnSite.JobState.class,
                        situation -> EnumSet.of(situation.log().orElseThrow().stage()),
                        Origin.fields("work")
                                .when(situation -> situation
                                        .log()
                                        .filter(LogReview::followsUp)
                                        .isPresent())),
                log(OnSite.LinesSeen.class, LogReview::lines, "look.scratches"),
                log(OnSite.FilmSeen.class, LogReview::film, "look.film"),
                log(OnSite.FaceSeen.class, LogReview::face, "look.face"),
                log(OnSite.PadFace.class, LogReview::pad, "look.pad"),
                log(OnSite.EdgesSeen.class, LogReview::edgesSeen, "look.edges"),
                log(OnSite.ZonesSeen.class, one(LogReview::coverage), "look.zone"),
                log(OnSite.EdgesWorked.class, LogReview::edgeWork, "work"),
                log(OnSite.PassesDone.class, one(LogReview::passes), "work"),
                log(OnSite.SetUp.class, LogReview::setUp, "work.machine", "work.added"),
                log(OnSite.GoneBack.class, one(LogReview::returns), "work"),
                log(OnSite.GlossGain.class, one(LogReview::gain), "reading"),
                log(OnSite.LatestGain.class, one(LogReview::latestGain), "reading"),
                log(OnSite.ReadAt.class, one(LogReview::angle), "reading"),
                log(OnSite.Outlook.class, one(LogReview::outlook), "reading"),
                log(OnSite.StartedAt.class, one(LogReview::start), "reading"),
                log(OnSite.FurtherPasses.class, one(LogReview::furtherPasses), "reading"),
                log(OnSite.TestAreaTried.class, one(LogReview::trial), "test-area"),
                log(OnSite.BesideTestArea.class, one(LogReview::besideTestArea), "reading"),
                log(OnSite.BondInWork.class, LogReview::bond, "work"),
                log(OnSite.GritInWork.class, LogFacts::grit, "work"),
                log(OnSite.OverRead.class, one(LogReview::overRead), "reading"),
                log(OnSite.GradeOrder.class, LogReview::gradeOrder, "work"),
                log(OnSite.GradesDone.class, LogReview::gradesDone, "work"),
                log(OnSite.LinesBefore.class, LogReview::linesBefore, "look.scratches"),
                log(OnSite.UseOfFloor.class, one(LogReview::use), "work"),
                log(OnSite.PlannedAgent.class, LogReview::agent, "plan"),
                SingleFact.of(
                        OnSite.CausesLeft.class,
                        Suspicion::causesLeft,
                        Origin.decisions(Topics.CAUSES).when(LogFacts::isRead)),
                way(OnSite.BackToStart.class, Move.BACK_TO_START),
                way(OnSite.OneBack.class, Move.ONE_GRADE_BACK),
                way(OnSite.TwoBack.class, Move.TWO_GRADES_BACK),
                way(OnSite.CoarserStart.class, Move.START_COARSER));
    }

    /** The lines of facts of which there is one for each constant. */
    static List<FactLine> linesPerConstant() {
        return List.of(
                each(OnSite.EventStands.class, EventKind.class, LogFacts::stands, "event"),
                each(OnSite.BondRun.class, Bond.class, LogReview::bondRun, "work"),
                each(OnSite.SignSeen.class, Sign.class, LogReview::sign, "look.signs"),
                FactPerConstant.of(
                        OnSite.Suspected.class,
                        Fault.class,
                        Suspicion::of,
                        Origin.decisions(Topics.CAUSES).when(LogFacts::isRead)));
    }

    private static <E extends Enum<E> & Term, F extends Feature<E>> FactLine log(
            Class<F> type, Function<LogReview, Set<E>> classify, String... parts) {
        return SingleFact.of(type, situation -> classify.apply(situation.log().orElseThrow()), Origin.log(parts));
    }

    private static <K extends Enum<K> & Term, E extends Enum<E> & Term, F extends OneOfMany<E>> FactLine each(
            Class<F> type, Class<K> constants, BiFunction<LogReview, K, Set<E>> classify, String... parts) {
        return FactPerConstant.of(
                type,
                constants,
                (situation, constant) -> classify.apply(situation.log().orElseThrow(), constant),
                Origin.log(parts));
    }

    private static <F extends Feature<WayBack>> FactLine way(Class<F> type, Move move) {
        return SingleFact.of(
                type,
                situation -> WaysBack.of(situation, move),
                Origin.decisions(Topics.FIRST_CUT, Topics.BONDS)
                        .withFields("work", SurveyField.THICKNESS.name())
                        .when(LogFacts::isRead));
    }

    private static boolean isRead(Situation situation) {
        return situation.log().isPresent();
    }

    private static <E extends Enum<E>> Function<LogReview, Set<E>> one(Function<LogReview, E> known) {
        return review -> EnumSet.of(known.apply(review));
    }

    private static Set<GritClass> grit(LogReview review) {
        return review.at()
                .<Set<GritClass>>map(point -> EnumSet.of(StepFacts.gritClass(point.grade(), review.parameters())))
                .orElseGet(() -> EnumSet.allOf(GritClass.class));
    }

    private static Set<Presence> stands(LogReview review, EventKind kind) {
        return EnumSet.of(review.events().containsKey(kind) ? Presence.PRESENT : Presence.NONE);
    }
}
