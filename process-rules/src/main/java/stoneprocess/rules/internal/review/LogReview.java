package stoneprocess.rules.internal.review;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.ZoneProgress;
import stoneprocess.core.gloss.AcceptanceCheck;
import stoneprocess.core.gloss.AcceptanceFinding;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.TargetOutlook;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.site.KnownStone;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.site.TrackIntensity;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Move;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.feature.AngleFit;
import stoneprocess.rules.feature.Compared;
import stoneprocess.rules.feature.EdgeWork;
import stoneprocess.rules.feature.FloorUse;
import stoneprocess.rules.feature.GainOrder;
import stoneprocess.rules.feature.GainSeen;
import stoneprocess.rules.feature.GradeRun;
import stoneprocess.rules.feature.JobStage;
import stoneprocess.rules.feature.OutlookClass;
import stoneprocess.rules.feature.PassCount;
import stoneprocess.rules.feature.PassesHelp;
import stoneprocess.rules.feature.ReturnCount;
import stoneprocess.rules.feature.SetUpUse;
import stoneprocess.rules.feature.StartFit;
import stoneprocess.rules.feature.StepOrder;
import stoneprocess.rules.feature.TrialState;
import stoneprocess.rules.feature.ZoneCoverage;

/** A job log read against the plan that it follows, as classes and figures. */
public final class LogReview {
    private static final double MINUTES_OF_A_DAY = 24 * 60;

    private final Recommendation plan;
    private final Logbook book;
    private final Looks looks;
    private final LoggedReadings readings;
    private final List<LogNote> notes;
    private final Optional<HoldPoint> at;
    private final Set<Sign> asked;
    private final boolean finished;
    private final Map<EventKind, Set<String>> open;
    private final boolean followsUp;

    private LogReview(Recommendation plan, JobLog log, Set<Sign> asked, boolean followsUp) {
        this.plan = plan;
        this.followsUp = followsUp;
        this.asked = asked;
        Notes collected = new Notes();
        this.book = new Logbook(plan, log, collected);
        this.finished = !followsUp && book.holdPoint().isEmpty();
        this.looks = new Looks(plan.survey(), book, collected, finished);
        this.readings = new LoggedReadings(plan, book, collected);
        this.notes = collected.inOrder();
        this.at = this.finished ? lastPlanned() : book.holdPoint();
        this.open = openEvents();
    }

    /** Reads a log for following up. */
    public static LogReview of(Recommendation plan, JobLog log) {
        return new LogReview(plan, log, Set.of(), true);
    }

    /** Reads a log for a diagnosis. Where no work is noted, the signs are those of a finished floor. */
    public static LogReview of(Recommendation plan, JobLog log, Set<Sign> signs) {
        return new LogReview(plan, log, signs, false);
    }

    private Optional<HoldPoint> lastPlanned() {
        return tracks().stream().findFirst().map(track -> {
            List<PlannedStep> steps = book.steps(track);
            PlannedStep last = steps.get(steps.size() - 1);
            return new HoldPoint(track, last.grade(), last.passes().low());
        });
    }

    private Map<EventKind, Set<String>> openEvents() {
        Map<EventKind, Set<String>> events = new EnumMap<>(EventKind.class);
        for (Noted<Entry.Happened> noted : book.entries(Entry.Happened.class)) {
            Entry.Happened event = noted.entry();
            Set<String> zones = events.computeIfAbsent(event.kind(), kind -> new TreeSet<>());
            if (event.state() == EventState.OPEN) {
                zones.add(event.zone());
            } else {
                zones.remove(event.zone());
            }
        }
        events.values().removeIf(Set::isEmpty);
        return Collections.unmodifiableMap(events);
    }

    /** The events that stand, with the zones where. */
    public Map<EventKind, Set<String>> events() {
        return open;
    }

    public Recommendation plan() {
        return plan;
    }

    /** True for following up, false for a diagnosis. */
    public boolean followsUp() {
        return followsUp;
    }

    /** True when the signs are asked about a floor of which no work is noted. */
    public boolean finished() {
        return finished;
    }

    public Optional<HoldPoint> at() {
        return at;
    }

    public List<LogNote> notes() {
        return notes;
    }

    public List<ZoneProgress> progress() {
        return readings.progress();
    }

    /** Signs asked about and signs seen at the hold point. */
    public Set<Sign> signs() {
        EnumSet<Sign> signs = EnumSet.noneOf(Sign.class);
        signs.addAll(asked);
        signs.addAll(looks.signs());
        return signs;
    }

    /** The planned tracks. */
    public List<TrackKind> tracks() {
        return Stream.of(TrackKind.values())
                .filter(track -> !book.steps(track).isEmpty())
                .toList();
    }

    /** The numbers of the plan. */
    public Parameters parameters() {
        return plan.parameters();
    }

    public JobStage stage() {
        if (at.isEmpty()) {
            return JobStage.NOT_STARTED;
        }
        boolean last = tracks().stream().allMatch(track -> {
            List<AbrasiveGrade> planned = book.planned(track);
            AbrasiveGrade end = planned.get(planned.size() - 1);
            boolean reached = book.work(track)
                    .latest()
                    .filter(stage -> AbrasiveGrade.IN_ORDER.compare(stage.grade(), end) >= 0)
                    .isPresent();
            return reached || track != governing();
        });
        return last || finished ? JobStage.LAST_GRADE : JobStage.UNDER_WAY;
    }

    /** The track that the work is led by: the open field, else the first that is planned. */
    public TrackKind governing() {
        return tracks().stream().findFirst().orElse(TrackKind.OPEN_FIELD);
    }

    public Set<ScratchLook> lines() {
        return looks.lines();
    }

    public Set<Presence> film() {
        return looks.film();
    }

    public Set<FaceState> face() {
        return looks.face();
    }

    public Set<PadLook> pad() {
        return looks.pad();
    }

    public Set<EdgeLook> edgesSeen() {
        return looks.edges();
    }

    public ZoneCoverage coverage() {
        return looks.coverage();
    }

    public Set<Presence> sign(Sign sign) {
        return asked.contains(sign) ? EnumSet.of(Presence.PRESENT) : looks.sign(sign);
    }

    /** Edges do every planned grit up to the field's before the field goes on; unknown where no work of theirs is due. */
    public Set<EdgeWork> edgeWork() {
        Optional<AbrasiveGrade> field = book.work(TrackKind.OPEN_FIELD).latest().map(TrackWork.Stage::grade);
        Optional<AbrasiveGrade> due = field.flatMap(now -> book.planned(TrackKind.EDGE).stream()
                .filter(grade -> AbrasiveGrade.IN_ORDER.compare(grade, now) <= 0)
                .max(AbrasiveGrade.IN_ORDER));
        boolean skipped = open.containsKey(EventKind.EDGES_SKIPPED);
        boolean behind = due.isPresent()
                && book.work(TrackKind.EDGE)
                        .latest()
                        .filter(stage -> AbrasiveGrade.IN_ORDER.compare(stage.grade(), due.get()) >= 0)
                        .isEmpty();
        if (skipped || behind) {
            return EnumSet.of(EdgeWork.BEHIND_FIELD);
        }
        return due.isPresent() ? EnumSet.of(EdgeWork.UP_TO_FIELD) : EnumSet.allOf(EdgeWork.class);
    }

    /** The planned step of the grit in work; empty when the plan has none. */
    public Optional<PlannedStep> plannedStep() {
        return at.flatMap(point -> book.steps(point.track()).stream()
                .filter(step -> step.grade().equals(point.grade()))
                .findFirst());
    }

    public PassCount passes() {
        Optional<PlannedStep> step = plannedStep();
        if (step.isEmpty() || at.isEmpty()) {
            return PassCount.AS_PLANNED;
        }
        double done = book.work(at.get().track())
                .latest()
                .filter(stage -> !finished)
                .map(stage -> inPlannedPasses(stage.entries()))
                .orElse((double) at.get().passes());
        int most = step.get().passes().high();
        if (done > parameters().part("follow.many-more") * most) {
            return PassCount.MANY_MORE;
        }
        if (done > most) {
            return PassCount.MORE;
        }
        return done < step.get().passes().low() ? PassCount.FEWER : PassCount.AS_PLANNED;
    }

    /** What work on the track at the hold point took off, in passes of the planned machine. */
    private double inPlannedPasses(List<Entry.Worked> entries) {
        return new TrackIntensity(plan, at.orElseThrow().track()).inPlannedPasses(entries);
    }

    /** Weaker when any work of the stage was; unknown when some of it does not tell. */
    public Set<SetUpUse> setUp() {
        Optional<PlannedStep> step = plannedStep();
        if (step.isEmpty() || finished) {
            return EnumSet.allOf(SetUpUse.class);
        }
        List<Entry.Worked> entries = book.work(at.orElseThrow().track())
                .latest()
                .map(TrackWork.Stage::entries)
                .orElse(List.of());
        if (entries.stream().anyMatch(entry -> weakerMachine(entry, step.get()))) {
            return EnumSet.of(SetUpUse.WEAKER_MACHINE);
        }
        if (entries.stream().anyMatch(entry -> lighter(entry, step.get()))) {
            return EnumSet.of(SetUpUse.LIGHTER);
        }
        boolean told = entries.stream()
                .allMatch(entry -> entry.machine().isPresent() && entry.added().isPresent());
        return told ? EnumSet.of(SetUpUse.AS_PLANNED) : EnumSet.allOf(SetUpUse.class);
    }

    private boolean weakerMachine(Entry.Worked entry, PlannedStep step) {
        Removal removal = removal();
        return entry.machine()
                .filter(used -> removal.intensity(used, usualMass(used))
                                .compareTo(removal.intensity(step.machine(), usualMass(step.machine())))
                        < 0)
                .isPresent();
    }

    private static boolean lighter(Entry.Worked entry, PlannedStep step) {
        return entry.added()
                .filter(used -> used.compareTo(step.addedMass().low()) < 0)
                .isPresent();
    }

    /** How the planned grits of the track in work were worked, up to the one in work; unknown on a finished floor. */
    public Set<GradeRun> gradesDone() {
        if (finished || at.isEmpty()) {
            return EnumSet.allOf(GradeRun.class);
        }
        TrackWork work = book.work(at.get().track());
        List<PlannedStep> due = book.steps(at.get().track()).stream()
                .filter(step ->
                        AbrasiveGrade.IN_ORDER.compare(step.grade(), at.get().grade()) <= 0)
                .toList();
        boolean cutShort = false;
        for (PlannedStep step : due) {
            List<Entry.Worked> entries = work.entries(step.grade());
            if (entries.isEmpty()) {
                return EnumSet.of(GradeRun.SKIPPED);
            }
            cutShort |= inPlannedPasses(entries) < step.passes().low();
        }
        return EnumSet.of(cutShort ? GradeRun.CUT_SHORT : GradeRun.ALL_WORKED);
    }

    /** Whether pads of a bond ran; unknown on a finished floor. */
    public Set<Presence> bondRun(Bond bond) {
        if (finished) {
            return EnumSet.allOf(Presence.class);
        }
        boolean ran = tracks().stream()
                .flatMap(track -> book.work(track).stages().stream())
                .anyMatch(stage -> stage.grade().bond() == bond);
        return EnumSet.of(ran ? Presence.PRESENT : Presence.NONE);
    }

    /** In use again where no work is noted, or where somebody looks long after the last planned grit. */
    public FloorUse use() {
        return book.holdPoint().isEmpty() || lookedAtLongAfter() ? FloorUse.IN_USE : FloorUse.UNDER_WORK;
    }

    private boolean lookedAtLongAfter() {
        double days = parameters().get("follow.in-use-after", TimeSpan.class).minutes() / MINUTES_OF_A_DAY;
        int worked = lastDay(Entry.Worked.class);
        return stage() == JobStage.LAST_GRADE && lastDay(Entry.Looked.class) - worked >= days;
    }

    private <E extends Entry> int lastDay(Class<E> kind) {
        return book.entries(kind).stream()
                .mapToInt(noted -> noted.entry().at().day())
                .max()
                .orElse(0);
    }

    /** The scratches that showed at the end of the grit before the one in work. */
    public Set<ScratchLook> linesBefore() {
        return looks.linesBefore(at.map(HoldPoint::track).orElse(governing()));
    }

    /** The polishing agent that the plan names. */
    public Set<PolishingAgent> agent() {
        List<PolishingAgent> planned = plan.values(Topics.POLISHING_AGENT, Subject.FLOOR);
        return planned.isEmpty() ? EnumSet.allOf(PolishingAgent.class) : EnumSet.copyOf(planned);
    }

    public ReturnCount returns() {
        int returns = at.map(point -> book.work(point.track()).returns()).orElse(0);
        return returns == 0 ? ReturnCount.NONE : returns == 1 ? ReturnCount.ONCE : ReturnCount.OFTEN;
    }

    public GainSeen gain() {
        List<GainVerdict> verdicts = progress().stream()
                .flatMap(zone -> zone.gain().stream())
                .map(gain -> gain.verdict())
                .toList();
        if (verdicts.isEmpty()) {
            return GainSeen.NOT_COMPARED;
        }
        if (verdicts.contains(GainVerdict.WITHIN_SCATTER)) {
            return GainSeen.WITHIN_SCATTER;
        }
        return verdicts.contains(GainVerdict.NOT_ENOUGH_READINGS) ? GainSeen.TOO_FEW_READINGS : GainSeen.REAL;
    }

    /** The largest so far in every zone that has several gains. */
    public GainOrder latestGain() {
        List<List<Double>> series =
                readings.gains().stream().filter(gains -> gains.size() > 1).toList();
        if (series.isEmpty()) {
            return GainOrder.NOT_COMPARED;
        }
        boolean largest =
                series.stream().allMatch(gains -> Collections.max(gains).equals(gains.get(gains.size() - 1)));
        return largest ? GainOrder.LARGEST : GainOrder.NOT_LARGEST;
    }

    public AngleFit angle() {
        List<Geometry> best = progress().stream().map(ZoneProgress::angle).toList();
        if (best.isEmpty()) {
            return AngleFit.NOT_READ;
        }
        if (best.contains(Geometry.DEG_85)) {
            return AngleFit.BETTER_AT_85;
        }
        return best.contains(Geometry.DEG_20) ? AngleFit.BETTER_AT_20 : AngleFit.FITS;
    }

    /** The least hopeful of the zones. */
    public OutlookClass outlook() {
        return outlooks().stream()
                .map(outlook -> outlookClass(outlook.verdict()))
                .max(Comparator.naturalOrder())
                .orElse(OutlookClass.NOT_JUDGED);
    }

    private List<TargetOutlook> outlooks() {
        return progress().stream().flatMap(zone -> zone.outlook().stream()).toList();
    }

    private static OutlookClass outlookClass(TargetVerdict verdict) {
        return switch (verdict) {
            case REACHED -> OutlookClass.REACHED;
            case MORE_PASSES -> OutlookClass.BY_PASSES;
            case FINER_GRIT -> OutlookClass.BY_FINER_GRADE;
            case OPEN -> OutlookClass.OPEN;
            case OUT_OF_REACH -> OutlookClass.OUT_OF_REACH;
            case OVER_CEILING -> OutlookClass.OVER_STONE;
        };
    }

    /** The most passes that any zone needs to reach what is aimed at with the grit in work; empty when none is told. */
    public Optional<Integer> passesToTarget() {
        return outlooks().stream()
                .filter(outlook -> outlook.verdict() == TargetVerdict.MORE_PASSES)
                .flatMap(outlook -> outlook.reachedBy().stream())
                .map(option -> option.passes() - at.orElseThrow().passes())
                .max(Comparator.naturalOrder());
    }

    public StartFit start() {
        return outlooks().stream().anyMatch(TargetOutlook::startedTooFine) ? StartFit.TOO_FINE : StartFit.NOT_SHOWN;
    }

    public PassesHelp furtherPasses() {
        List<ZoneProgress> judged = progress().stream()
                .filter(zone -> zone.morePasses().isPresent())
                .toList();
        if (judged.isEmpty()) {
            return PassesHelp.NOT_JUDGED;
        }
        double resolved =
                parameters().get("gloss-meter.repeatability", Gloss.class).gloss();
        boolean rises = judged.stream()
                .anyMatch(zone -> zone.morePasses().orElseThrow().median().gloss()
                                - zone.now().mean().gloss()
                        > resolved);
        return rises ? PassesHelp.STILL_CLIMBS : PassesHelp.NO_MORE;
    }

    public TrialState trial() {
        boolean needed = plan.plan().map(Plan::testArea).equals(Optional.of(TestArea.REQUIRED));
        List<Noted<Entry.Tried>> tries = book.entries(Entry.Tried.class);
        if (!needed) {
            return TrialState.NOT_NEEDED;
        }
        if (tries.isEmpty()) {
            return TrialState.NOT_TRIED;
        }
        Entry.Tried latest = tries.get(tries.size() - 1).entry();
        if (latest.result() == TrialResult.TOO_MUCH) {
            return TrialState.TOO_MUCH;
        }
        if (latest.result() == TrialResult.NOT_CLEARED) {
            AbrasiveGrade start = book.planned(governing()).get(0);
            boolean finer = AbrasiveGrade.IN_ORDER.compare(latest.grade(), start) > 0;
            return finer ? TrialState.FINER_NOT_CLEARED : TrialState.START_NOT_CLEARED;
        }
        return latest.signed() ? TrialState.SIGNED : TrialState.NOT_SIGNED;
    }

    public Compared besideTestArea() {
        return readings.besideTestArea().map(this::compared).orElse(Compared.NOT_READ);
    }

    private Compared compared(AcceptanceCheck check) {
        Set<AcceptanceFinding> findings = EnumSet.noneOf(AcceptanceFinding.class);
        findings.addAll(check.findings());
        boolean edgesKnown = plan.survey().zones().stream().map(Zone::name).anyMatch(book::isEdge);
        if (!edgesKnown) {
            findings.remove(AcceptanceFinding.EDGES_NOT_READ);
        }
        if (findings.isEmpty()) {
            return Compared.MET;
        }
        if (findings.contains(AcceptanceFinding.MEAN_TOO_LOW) || findings.contains(AcceptanceFinding.SPOT_TOO_LOW)) {
            return Compared.MISSED;
        }
        return findings.contains(AcceptanceFinding.EDGES_TOO_LOW) ? Compared.EDGES_MISSED : Compared.NOT_READ;
    }

    /** Whether a reading at the hold point is higher than the stone can show. */
    public Presence overRead() {
        boolean over =
                notes.stream().anyMatch(note -> note.kind() == NoteKind.OVER_STONE && book.sinceLastWork(note.entry()));
        return over ? Presence.PRESENT : Presence.NONE;
    }

    /** Where the grit in work stands on its track; unknown before the first pass and on a finished floor. */
    public Set<StepOrder> gradeOrder() {
        if (at.isEmpty() || finished) {
            return EnumSet.allOf(StepOrder.class);
        }
        List<AbrasiveGrade> planned = book.planned(at.get().track());
        int coarser = (int) planned.stream()
                .filter(grade -> AbrasiveGrade.IN_ORDER.compare(grade, at.get().grade()) < 0)
                .count();
        return EnumSet.of(StepOrder.values()[Math.min(coarser, StepOrder.LATER.ordinal())]);
    }

    public Set<Bond> bond() {
        return at.<Set<Bond>>map(point -> EnumSet.of(point.grade().bond())).orElseGet(() -> EnumSet.allOf(Bond.class));
    }

    /** Where a move takes a track up again; empty when it has no more to do or nothing so coarse. */
    public Optional<AbrasiveGrade> restart(Move move, GritSequence inUse) {
        TrackKind track = at.map(HoldPoint::track).orElse(governing());
        return book.planned(track).isEmpty()
                ? Optional.empty()
                : ladder(track, inUse).restart(move);
    }

    private Ladder ladder(TrackKind track, GritSequence inUse) {
        List<AbrasiveGrade> worked = finished
                ? book.planned(track)
                : book.work(track).stages().stream().map(TrackWork.Stage::grade).toList();
        List<AbrasiveGrade> tried = book.entries(Entry.Tried.class).stream()
                .map(Noted::entry)
                .filter(entry -> track == governing() && entry.result() == TrialResult.NOT_CLEARED)
                .map(Entry.Tried::grade)
                .toList();
        return Ladder.of(inUse, book.planned(track), worked, tried);
    }

    /** The planned grits of a track that come after what was worked of it. */
    public List<AbrasiveGrade> after(TrackKind track) {
        Optional<AbrasiveGrade> now = finished
                ? Optional.of(at.orElseThrow().grade())
                : book.work(track).latest().map(TrackWork.Stage::grade);
        return book.planned(track).stream()
                .filter(grade -> now.isEmpty() || AbrasiveGrade.IN_ORDER.compare(grade, now.get()) > 0)
                .skip(triesFiner(track) ? 1 : 0)
                .toList();
    }

    /** Before the first pass, the grit that cleared the test area last. */
    public Optional<AbrasiveGrade> provenStart() {
        List<Noted<Entry.Tried>> tries = book.entries(Entry.Tried.class);
        return Optional.of(tries)
                .filter(any -> at.isEmpty() && !any.isEmpty())
                .map(any -> any.get(any.size() - 1).entry())
                .filter(latest -> latest.result() == TrialResult.CLEARED)
                .map(Entry.Tried::grade);
    }

    /** Before the first pass, when the planned start took more from the test area than was needed. */
    private boolean triesFiner(TrackKind track) {
        return at.isEmpty()
                && trial() == TrialState.TOO_MUCH
                && book.planned(track).size() > 1
                && track == governing();
    }

    /** The planned grade that was worked last of those before a planned grade; empty when the damage is still there. */
    public Optional<AbrasiveGrade> workedBefore(TrackKind track, AbrasiveGrade start) {
        List<AbrasiveGrade> planned = book.planned(track);
        List<AbrasiveGrade> before = planned.contains(start) ? planned.subList(0, planned.indexOf(start)) : List.of();
        Set<AbrasiveGrade> worked =
                book.work(track).stages().stream().map(TrackWork.Stage::grade).collect(Collectors.toSet());
        return before.stream()
                .filter(grade -> finished || worked.contains(grade))
                .reduce((first, last) -> last);
    }

    public List<AbrasiveGrade> planned(TrackKind track) {
        return book.planned(track);
    }

    /** The most stone that all grits from one on would take off in the passes that clear the grit before each. */
    public Length stockFrom(AbrasiveGrade restart, GritSequence inUse) {
        Removal removal = removal();
        List<AbrasiveGrade> grades =
                ladder(at.map(HoldPoint::track).orElse(governing()), inUse).grades();
        double millimetres = 0;
        for (int i = 0; i < grades.size(); i++) {
            AbrasiveGrade grade = grades.get(i);
            if (AbrasiveGrade.IN_ORDER.compare(grade, restart) >= 0) {
                Length before = removal.leaves(i == 0 ? grade : grades.get(i - 1));
                MachineClass machine = machineOf(grade);
                int most = removal.passes(Range.of(before, before), grade, machine, usualMass(machine))
                        .high();
                millimetres += removal.takes(most, grade, machine, usualMass(machine))
                        .high()
                        .millimetres();
            }
        }
        return new Length(millimetres);
    }

    /** The most stone that the logged work of the governing track may have taken off. */
    public Length removed() {
        Removal removal = removal();
        double millimetres = 0;
        for (TrackWork.Stage stage : book.work(governing()).stages()) {
            MachineClass machine = machineOf(stage.grade());
            millimetres += removal.takes(stage.passes(), stage.grade(), machine, usualMass(machine))
                    .high()
                    .millimetres();
        }
        return new Length(millimetres);
    }

    private Removal removal() {
        return new Removal(KnownStone.of(plan).cutting(), parameters());
    }

    private Mass usualMass(MachineClass machine) {
        return StepFigures.middleMass(machine, AddedWeight.USUAL, parameters());
    }

    /** The machine that the plan gives a grade of the governing track; that of its first grade for another. */
    private MachineClass machineOf(AbrasiveGrade grade) {
        List<PlannedStep> steps = plan.steps(governing());
        return steps.stream()
                .filter(step -> step.grade().equals(grade))
                .findFirst()
                .or(() -> steps.stream().findFirst())
                .map(PlannedStep::machine)
                .orElse(MachineClass.SINGLE_DISC);
    }
}
