package stoneprocess.core.json;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import stoneprocess.core.follow.Cause;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.ForecastBasis;
import stoneprocess.core.gloss.Gain;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.GlossChange;
import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.TargetOption;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.gloss.ZoneStatistics;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Ask;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Fault;
import stoneprocess.core.topic.Finding;
import stoneprocess.core.topic.Mend;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.SiteCheck;
import stoneprocess.core.topic.TrackKind;

/** Invented answers that use every part of their forms, with or without what may be left out. */
final class NextMoves {
    private NextMoves() {}

    static Arbitrary<Diagnosis> diagnoses() {
        return Combinators.combine(Arbitraries.of(Sign.class).set().ofMinSize(1), any())
                .as(Diagnosis::new);
    }

    static Arbitrary<NextMove> any() {
        Recommendation ahead = Examples.planned();
        Arbitrary<HoldPoint> points = Combinators.combine(
                        Arbitraries.of(TrackKind.class),
                        Arbitraries.of(ahead.sequence().grades()),
                        whole(1))
                .as(HoldPoint::new);
        Arbitrary<LogNote> notes = Combinators.combine(
                        whole(0), Arbitraries.of(NoteKind.class), Arbitraries.of(Effect.class))
                .as(LogNote::new);
        return Combinators.combine(
                        Arbitraries.of(Move.class),
                        points.optional(),
                        Combinators.combine(
                                        each(Finding.class), each(SiteCheck.class), each(Mend.class), each(Ask.class))
                                .as(Lists::new),
                        causes().list().ofMaxSize(3),
                        passes().optional(),
                        progress().list().ofMaxSize(3),
                        notes.list().ofMaxSize(3))
                .as((move, at, lists, causes, passes, progress, notesOfLog) -> new NextMove(
                        move,
                        at,
                        lists.findings(),
                        causes,
                        lists.checks(),
                        lists.mends(),
                        lists.asks(),
                        passes,
                        progress,
                        notesOfLog,
                        List.of("look.film"),
                        ahead.outcomes(),
                        ahead));
    }

    private record Lists(List<Finding> findings, List<SiteCheck> checks, List<Mend> mends, List<Ask> asks) {}

    private static <E extends Enum<E>> Arbitrary<List<E>> each(Class<E> type) {
        return Arbitraries.of(type).list().uniqueElements().ofMaxSize(4);
    }

    private static Arbitrary<Integer> whole(int least) {
        return Arbitraries.integers().between(least, 3000);
    }

    private static Arbitrary<Range<Integer>> passes() {
        return Combinators.combine(whole(1), whole(1))
                .as((one, other) -> Range.of(Math.min(one, other), Math.max(one, other)));
    }

    private static Arbitrary<Cause> causes() {
        return Combinators.combine(
                        Arbitraries.of(Fault.class), Arbitraries.of(Standing.class), Arbitraries.of(true, false))
                .as((fault, standing, excluded) -> new Cause(
                        fault,
                        standing,
                        List.of(Examples.reason(ContributionKind.WISH, List.of(Fault.RESIDUE))),
                        excluded
                                ? List.of(Examples.reason(ContributionKind.VETO, List.of(Fault.RESIDUE)))
                                : List.of()));
    }

    private static Arbitrary<ZoneProgress> progress() {
        return Combinators.combine(
                        Arbitraries.of("lane", "rest"),
                        statistics(),
                        gains().optional(),
                        Arbitraries.of(Geometry.class),
                        outlooks().optional(),
                        predictions().optional())
                .as(ZoneProgress::new);
    }

    private static Arbitrary<Gloss> gloss() {
        return JobLogs.quantity(Dimension.GLOSS, 120).map(Gloss.class::cast);
    }

    private static Arbitrary<Share> share() {
        return JobLogs.quantity(Dimension.SHARE, 100).map(Share.class::cast);
    }

    private static Arbitrary<Range<Gloss>> glossRange() {
        return Combinators.combine(gloss(), gloss())
                .as((one, other) -> one.compareTo(other) <= 0 ? Range.of(one, other) : Range.of(other, one));
    }

    private static Arbitrary<GlossChange> changes() {
        return Arbitraries.doubles().between(-120, 120).map(GlossChange::new);
    }

    private static Arbitrary<Range<GlossChange>> changeRange() {
        return Combinators.combine(changes(), changes())
                .as((one, other) -> one.compareTo(other) <= 0 ? Range.of(one, other) : Range.of(other, one));
    }

    private static Arbitrary<ZoneStatistics> statistics() {
        return Combinators.combine(
                        whole(1), gloss(), gloss().optional(), glossRange().optional(), gloss(), gloss())
                .as(ZoneStatistics::new);
    }

    private static Arbitrary<Gain> gains() {
        return Combinators.combine(
                        Arbitraries.of(GainVerdict.class),
                        changes(),
                        changeRange().optional(),
                        share().optional(),
                        whole(0),
                        whole(0))
                .as(Gain::new);
    }

    private static Arbitrary<TargetOption> options() {
        return Combinators.combine(whole(1), whole(0), share()).as(TargetOption::new);
    }

    private static Arbitrary<ForecastBasis> bases() {
        return Combinators.combine(
                        whole(0),
                        whole(0),
                        Arbitraries.of(Sources.standard().all()).list().ofMaxSize(2))
                .as(ForecastBasis::new);
    }

    private static Arbitrary<TargetOutlook> outlooks() {
        return Combinators.combine(
                        Arbitraries.of(TargetVerdict.class),
                        gloss(),
                        options().optional(),
                        options().optional(),
                        share(),
                        Arbitraries.of(true, false),
                        bases())
                .as(TargetOutlook::new);
    }

    private static Arbitrary<GlossPrediction> predictions() {
        return Combinators.combine(whole(1), whole(0), gloss(), glossRange(), share(), bases())
                .as(GlossPrediction::new);
    }

    /** One answer with every part of the form. */
    static NextMove whole() {
        ForecastBasis basis = new ForecastBasis(6, 2, List.of(Sources.standard().get("practice")));
        TargetOption option = new TargetOption(3000, 8, new Share(71.5));
        Gloss some = new Gloss(18.4);
        Recommendation ahead = Examples.planned();
        return new NextMove(
                Move.MORE_PASSES,
                Optional.of(new HoldPoint(
                        TrackKind.OPEN_FIELD, ahead.sequence().grades().get(0), 8)),
                List.of(Finding.GAIN_IS_REAL),
                List.of(new Cause(
                        Fault.RESIDUE,
                        Standing.EXCLUDED,
                        List.of(Examples.reason(ContributionKind.WISH, List.of(Fault.RESIDUE))),
                        List.of(Examples.reason(ContributionKind.VETO, List.of(Fault.RESIDUE))))),
                List.of(SiteCheck.WIPE_AND_DRY),
                List.of(Mend.DRESS_PAD),
                List.of(Ask.OWNER),
                Optional.of(Range.of(2, 4)),
                List.of(new ZoneProgress(
                        "lane",
                        new ZoneStatistics(
                                3,
                                some,
                                Optional.of(new Gloss(0.4)),
                                Optional.of(Range.of(new Gloss(17.4), new Gloss(19.4))),
                                new Gloss(18),
                                new Gloss(0.8)),
                        Optional.of(new Gain(
                                GainVerdict.REAL,
                                new GlossChange(3),
                                Optional.of(Range.of(new GlossChange(-0.5), new GlossChange(4))),
                                Optional.of(new Share(0.2)),
                                0,
                                0)),
                        Geometry.DEG_85,
                        Optional.of(new TargetOutlook(
                                TargetVerdict.OPEN,
                                new Gloss(35),
                                Optional.of(option),
                                Optional.of(option),
                                new Share(12),
                                false,
                                basis)),
                        Optional.of(new GlossPrediction(
                                3000, 12, some, Range.of(new Gloss(16), new Gloss(21)), new Share(90), basis)))),
                List.of(new LogNote(4, NoteKind.WET_READING, Effect.SET_ASIDE)),
                List.of("look.film"),
                ahead.outcomes(),
                ahead);
    }
}
