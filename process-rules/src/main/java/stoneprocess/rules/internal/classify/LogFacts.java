package stoneprocess.rules.internal.classify;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.decide.ValuePolicies;
import stoneprocess.rules.feature.AngleFit;
import stoneprocess.rules.feature.CausesFound;
import stoneprocess.rules.feature.Compared;
import stoneprocess.rules.feature.EdgeWork;
import stoneprocess.rules.feature.Feature;
import stoneprocess.rules.feature.FloorUse;
import stoneprocess.rules.feature.GainOrder;
import stoneprocess.rules.feature.GainSeen;
import stoneprocess.rules.feature.GradeRun;
import stoneprocess.rules.feature.GritClass;
import stoneprocess.rules.feature.JobStage;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.OutlookClass;
import stoneprocess.rules.feature.PassCount;
import stoneprocess.rules.feature.PassesHelp;
import stoneprocess.rules.feature.ReturnCount;
import stoneprocess.rules.feature.SetUpUse;
import stoneprocess.rules.feature.StartFit;
import stoneprocess.rules.feature.StepOrder;
import stoneprocess.rules.feature.TrialState;
import stoneprocess.rules.feature.WayBack;
import stoneprocess.rules.feature.ZoneCoverage;
import stoneprocess.rules.internal.review.LogReview;

/** The part of the table of facts that is read from a job log. */
final class LogFacts {
    private LogFacts() {}

    /** The lines of the table. */
    static List<FactType<?>> lines() {
        return List.of(
                log(OnSite.JobState.class, JobStage.class, OnSite.JobState::new, one(LogReview::stage), "work"),
                log(
                        OnSite.LinesSeen.class,
                        ScratchLook.class,
                        OnSite.LinesSeen::new,
                        LogReview::lines,
                        "look.scratches"),
                log(OnSite.FilmSeen.class, Presence.class, OnSite.FilmSeen::new, LogReview::film, "look.film"),
                log(OnSite.FaceSeen.class, FaceState.class, OnSite.FaceSeen::new, LogReview::face, "look.face"),
                log(OnSite.PadFace.class, PadLook.class, OnSite.PadFace::new, LogReview::pad, "look.pad"),
                log(OnSite.EdgesSeen.class, EdgeLook.class, OnSite.EdgesSeen::new, LogReview::edgesSeen, "look.edges"),
                log(
                        OnSite.ZonesSeen.class,
                        ZoneCoverage.class,
                        OnSite.ZonesSeen::new,
                        one(LogReview::coverage),
                        "look.zone"),
                log(OnSite.EdgesWorked.class, EdgeWork.class, OnSite.EdgesWorked::new, LogReview::edgeWork, "work"),
                log(OnSite.PassesDone.class, PassCount.class, OnSite.PassesDone::new, one(LogReview::passes), "work"),
                log(
                        OnSite.SetUp.class,
                        SetUpUse.class,
                        OnSite.SetUp::new,
                        LogReview::setUp,
                        "work.machine",
                        "work.added"),
                log(OnSite.GoneBack.class, ReturnCount.class, OnSite.GoneBack::new, one(LogReview::returns), "work"),
                log(OnSite.GlossGain.class, GainSeen.class, OnSite.GlossGain::new, one(LogReview::gain), "reading"),
                log(
                        OnSite.LatestGain.class,
                        GainOrder.class,
                        OnSite.LatestGain::new,
                        one(LogReview::latestGain),
                        "reading"),
                log(OnSite.ReadAt.class, AngleFit.class, OnSite.ReadAt::new, one(LogReview::angle), "reading"),
                log(OnSite.Outlook.class, OutlookClass.class, OnSite.Outlook::new, one(LogReview::outlook), "reading"),
                log(OnSite.StartedAt.class, StartFit.class, OnSite.StartedAt::new, one(LogReview::start), "reading"),
                log(
                        OnSite.FurtherPasses.class,
                        PassesHelp.class,
                        OnSite.FurtherPasses::new,
                        one(LogReview::furtherPasses),
                        "reading"),
                log(
                        OnSite.TestAreaTried.class,
                        TrialState.class,
                        OnSite.TestAreaTried::new,
                        one(LogReview::trial),
                        "test-area"),
                log(
                        OnSite.BesideTestArea.class,
                        Compared.class,
                        OnSite.BesideTestArea::new,
                        one(LogReview::besideTestArea),
                        "reading"),
                log(OnSite.BondInWork.class, Bond.class, OnSite.BondInWork::new, LogReview::bond, "work"),
                log(OnSite.GritInWork.class, GritClass.class, OnSite.GritInWork::new, LogFacts::grit, "work"),
                log(OnSite.OverRead.class, Presence.class, OnSite.OverRead::new, one(LogReview::overRead), "reading"),
                log(OnSite.GradeOrder.class, StepOrder.class, OnSite.GradeOrder::new, LogReview::gradeOrder, "work"),
                log(OnSite.GradesDone.class, GradeRun.class, OnSite.GradesDone::new, LogReview::gradesDone, "work"),
                log(
                        OnSite.LinesBefore.class,
                        ScratchLook.class,
                        OnSite.LinesBefore::new,
                        LogReview::linesBefore,
                        "look.scratches"),
                log(OnSite.UseOfFloor.class, FloorUse.class, OnSite.UseOfFloor::new, one(LogReview::use), "work"),
                log(
                        OnSite.PlannedAgent.class,
                        PolishingAgent.class,
                        OnSite.PlannedAgent::new,
                        LogReview::agent,
                        "plan"),
                new FactType<>(
                        OnSite.CausesLeft.class,
                        CausesFound.class,
                        OnSite.CausesLeft::new,
                        LogFacts::causesLeft,
                        Optional.of(Stage.SIGNS),
                        List.of(),
                        List.of(Topics.CAUSES),
                        false),
                way(OnSite.BackToStart.class, OnSite.BackToStart::new, Move.BACK_TO_START),
                way(OnSite.OneBack.class, OnSite.OneBack::new, Move.ONE_GRADE_BACK),
                way(OnSite.TwoBack.class, OnSite.TwoBack::new, Move.TWO_GRADES_BACK),
                way(OnSite.CoarserStart.class, OnSite.CoarserStart::new, Move.START_COARSER));
    }

    private static <E extends Enum<E> & Term> FactType<E> log(
            Class<?> type,
            Class<E> classes,
            Function<Set<E>, Feature<E>> make,
            Function<LogReview, Set<E>> classify,
            String... fields) {
        return new FactType<>(
                type,
                classes,
                make,
                situation -> classify.apply(situation.log().orElseThrow()),
                Optional.empty(),
                List.of(fields),
                List.of(),
                false);
    }

    private static FactType<WayBack> way(Class<?> type, Function<Set<WayBack>, Feature<WayBack>> make, Move move) {
        return new FactType<>(
                type,
                WayBack.class,
                make,
                situation -> wayBack(situation, move),
                Optional.of(Stage.FIRST_CUT),
                List.of("work", SurveyField.THICKNESS.name()),
                List.of(Topics.FIRST_CUT, Topics.BONDS),
                false);
    }

    private static <E extends Enum<E>> Function<LogReview, Set<E>> one(Function<LogReview, E> known) {
        return review -> EnumSet.of(known.apply(review));
    }

    private static Set<GritClass> grit(LogReview review) {
        return review.at()
                .<Set<GritClass>>map(
                        point -> EnumSet.of(Facts.gritClass(point.grade().number())))
                .orElseGet(() -> EnumSet.allOf(GritClass.class));
    }

    /** Facts of which there is one for each constant, those that need no decision. */
    static List<Object> read(LogReview review) {
        List<Object> facts = new ArrayList<>();
        for (EventKind kind : EventKind.values()) {
            boolean stands = review.events().containsKey(kind);
            facts.add(new OnSite.EventStands(kind, EnumSet.of(stands ? Presence.PRESENT : Presence.NONE)));
        }
        for (Bond bond : Bond.values()) {
            facts.add(new OnSite.BondRun(bond, review.bondRun(bond)));
        }
        for (Sign sign : Sign.values()) {
            facts.add(new OnSite.SignSeen(sign, review.sign(sign)));
        }
        return facts;
    }

    /** How each cause stands once the causes are ranked. */
    static List<Object> suspected(Situation situation) {
        List<Object> facts = new ArrayList<>();
        Optional<Decision> causes = situation.decision(Topics.CAUSES, Subject.FLOOR);
        for (Fault fault : Fault.values()) {
            facts.add(new OnSite.Suspected(
                    fault,
                    EnumSet.of(causes.map(decision -> standing(decision, fault)).orElse(Standing.NOT_SUGGESTED))));
        }
        return facts;
    }

    /**
     * How a cause stands in the decision about the causes. For each sign seen that cause leads for which most speaks and
     * that is not ruled out.
     */
    static Standing standing(Decision causes, Fault fault) {
        List<Reason> reasons = Stream.concat(causes.won().stream(), causes.vetoed().stream())
                .filter(reason -> reason.kind() == ContributionKind.WISH)
                .toList();
        if (!ValuePolicies.weights(reasons).containsKey(fault.key())) {
            return Standing.NOT_SUGGESTED;
        }
        if (!causes.values().contains(fault.key())) {
            return Standing.EXCLUDED;
        }
        boolean leads = Stream.of(Sign.values()).anyMatch(sign -> leads(causes, fault, ofSign(sign, reasons)));
        return leads ? Standing.LEADING : Standing.POSSIBLE;
    }

    private static List<Reason> ofSign(Sign sign, List<Reason> reasons) {
        String name = name(OnSite.SignSeen.class, sign);
        return reasons.stream()
                .filter(reason ->
                        reason.facts().stream().anyMatch(fact -> fact.name().equals(name)))
                .toList();
    }

    private static boolean leads(Decision causes, Fault fault, List<Reason> reasons) {
        Map<String, Integer> weights = ValuePolicies.weights(reasons);
        int most = causes.values().stream()
                .mapToInt(cause -> weights.getOrDefault(cause, 0))
                .max()
                .orElse(0);
        return most > 0 && weights.getOrDefault(fault.key(), 0) == most;
    }

    /** The name of a fact of which there is one for each constant. */
    static String name(Class<?> type, Term which) {
        return type.getSimpleName() + ":" + which.key();
    }

    private static Set<CausesFound> causesLeft(Situation situation) {
        Optional<Decision> causes = situation.decision(Topics.CAUSES, Subject.FLOOR);
        if (causes.filter(decision -> !decision.values().isEmpty()).isPresent()) {
            return EnumSet.of(CausesFound.NAMED);
        }
        boolean signs = !situation.log().orElseThrow().signs().isEmpty();
        return EnumSet.of(signs ? CausesFound.NONE_LEFT : CausesFound.NO_SIGN);
    }

    /**
     * Going back is barred when there is no grade so coarse on hand, when the floor excludes the cut or the bond, or when
     * it would take more stone than may be taken off. A bar that rests on something unknown may be none.
     */
    private static Set<WayBack> wayBack(Situation situation, Move move) {
        LogReview review = situation.log().orElseThrow();
        Optional<GritSequence> inUse = situation.inUse();
        Optional<AbrasiveGrade> restart = inUse.flatMap(grades -> review.restart(move, grades))
                .filter(grade -> inUse.get().grades().contains(grade));
        if (restart.isEmpty()
                || !situation.values(Topics.BONDS).contains(restart.get().bond())) {
            return EnumSet.of(WayBack.BARRED);
        }
        Cut cut = Cut.of(restart.get());
        TrackKind track = review.at().map(HoldPoint::track).orElse(review.governing());
        List<Reason> bars = situation.decision(Topics.FIRST_CUT, new Subject.OfTrack(track)).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> bars(reason, cut))
                .toList();
        Set<WayBack> byStock = byStock(situation, review, restart.get(), inUse.orElseThrow());
        if (bars.stream().anyMatch(Reason::certain)) {
            return EnumSet.of(WayBack.BARRED);
        }
        return bars.isEmpty() ? byStock : EnumSet.allOf(WayBack.class);
    }

    /** A veto of the cut, or a demand for finer ones only. */
    private static boolean bars(Reason reason, Cut cut) {
        if (reason.kind() == ContributionKind.VETO) {
            return reason.values().contains(cut.key());
        }
        return reason.kind() == ContributionKind.NEED
                && reason.values().stream()
                        .map(Topics.FIRST_CUT::value)
                        .allMatch(allowed -> allowed.compareTo(cut) < 0);
    }

    private static Set<WayBack> byStock(
            Situation situation, LogReview review, AbrasiveGrade restart, GritSequence inUse) {
        Optional<Length> most = Facts.mostRemoval(situation);
        if (most.isEmpty()) {
            boolean grinding = restart.bond() != Bond.RESIN || restart.number() < Cut.COARSE_HONE.number();
            return grinding ? EnumSet.allOf(WayBack.class) : EnumSet.of(WayBack.OPEN);
        }
        double needed = review.removed().millimetres()
                + review.stockFrom(restart, inUse).millimetres();
        return EnumSet.of(needed > most.get().millimetres() ? WayBack.BARRED : WayBack.OPEN);
    }
}
