package stoneprocess.rules.internal.assemble;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Impasse;
import stoneprocess.core.decision.Outcome;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.plan.CounterOffer;
import stoneprocess.core.plan.HazardSheet;
import stoneprocess.core.plan.LaneStart;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Preparation;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.plan.Status;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.site.StepFigures;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Grit;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.TestArea;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Verdict;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.core.topic.WorkMethod;
import stoneprocess.rules.internal.classify.Situation;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.run.Run;

/** Makes a recommendation of a finished run. Decides nothing. */
public final class Assembler {
    private final Run run;
    private final Situation situation;
    private final List<LoadedRule> rules;
    private final Map<String, Card> cards = new HashMap<>();
    private final List<LaneStart> starts;

    private Assembler(Run run, List<LoadedRule> rules, List<LaneStart> starts) {
        this.run = run;
        this.starts = starts;
        this.situation = run.situation();
        this.rules = rules;
        rules.forEach(rule -> cards.put(rule.id(), rule.card()));
    }

    /**
     * The recommendation of a run.
     *
     * @param run the finished run
     * @param rules the rules that it ran with
     * @param stamp which rulebase that was
     */
    public static Recommendation assemble(Run run, List<LoadedRule> rules, RulebaseStamp stamp) {
        return assemble(run, rules, stamp, List.of());
    }

    /** The same with the first grit of each lane where lanes are worked alone. */
    public static Recommendation assemble(
            Run run, List<LoadedRule> rules, RulebaseStamp stamp, List<LaneStart> starts) {
        return new Assembler(run, rules, starts).assemble(stamp);
    }

    private Recommendation assemble(RulebaseStamp stamp) {
        List<Impasse<?>> blocking = run.cutsPlanned()
                ? run.outcomes().stream()
                        .flatMap(outcome -> outcome.stuck().stream())
                        .filter(impasse -> impasse.topic().isBlocking())
                        .toList()
                : List.of();
        Verdict verdict = situation.values(Topics.VERDICT).get(0);
        Status status = status(verdict, blocking);
        boolean planned = status == Status.PLANNED || status == Status.PROVISIONAL;
        return new Recommendation(
                status,
                planned ? Optional.of(plan()) : Optional.empty(),
                status == Status.REFUSED ? verdictReasons() : List.of(),
                warnings(),
                Questions.of(run, rules),
                offers(status, blocking),
                run.outcomes(),
                situation.survey(),
                situation.sequence(),
                situation.parameters(),
                stamp);
    }

    private static Status status(Verdict verdict, List<Impasse<?>> blocking) {
        if (verdict == Verdict.REFUSE) {
            return Status.REFUSED;
        }
        boolean held = verdict == Verdict.HOLD;
        if (!blocking.isEmpty()) {
            boolean untilKnown = blocking.stream().allMatch(Impasse::untilKnown);
            return untilKnown || held && blocking.stream().allMatch(Assembler::isShopping)
                    ? Status.UNDECIDED
                    : Status.IMPASSE;
        }
        return held ? Status.PROVISIONAL : Status.PLANNED;
    }

    /** True where only a machine or a grit is lacking; no shopping list hides what holds a floor. */
    private static boolean isShopping(Impasse<?> impasse) {
        return impasse.topic() == Topics.MACHINE || impasse.topic() == Topics.GRIT_PATH;
    }

    private OptionalInt finestOnHand() {
        return situation.survey().answer(SurveyField.GRADES).value().stream()
                .flatMap(List::stream)
                .filter(grade -> grade.bond() == Bond.RESIN)
                .mapToInt(AbrasiveGrade::number)
                .max();
    }

    /** What the verdict rests on, the gravest first. */
    private List<Reason> verdictReasons() {
        return reasons(Topics.VERDICT).stream()
                .sorted(Comparator.comparing(
                        reason -> card(reason.rule()).protects().orElseThrow()))
                .toList();
    }

    private List<Reason> reasons(Topic<?> topic) {
        return situation
                .outcome(topic, Subject.FLOOR)
                .flatMap(Outcome::decided)
                .<List<Reason>>map(Decision::won)
                .orElse(List.of());
    }

    private Card card(String rule) {
        return cards.get(rule);
    }

    /** Ways out of a refusal, of what holds the floor for certain, of what the owner is to accept, and of each impasse. */
    private List<CounterOffer<?>> offers(Status status, List<Impasse<?>> impasses) {
        if (status == Status.REFUSED) {
            List<CounterOffer<?>> offers = new ArrayList<>(CounterOffers.of(verdictReasons(), this::card));
            run.outcomes().stream()
                    .filter(outcome -> outcome.topic() == Topics.FINISH && stoneIsKnown())
                    .flatMap(outcome -> outcome.stuck().stream())
                    .flatMap(impasse -> CounterOffers.of(impasse, this::card, finestOnHand()).stream())
                    .filter(offer -> offer.kind() == OfferKind.LOWER_FINISH || offer.kind() == OfferKind.TOOL_FINISH)
                    .findFirst()
                    .ifPresent(offers::add);
            return fitting(offers);
        }
        List<CounterOffer<?>> offers = new ArrayList<>();
        if (status == Status.PROVISIONAL) {
            offers.addAll(CounterOffers.ofHold(verdictReasons(), this::card));
        }
        if (status == Status.PLANNED || status == Status.PROVISIONAL) {
            CounterOffers.released(Topics.ACCEPTANCES, reasons(Topics.ACCEPTANCES), this::card).stream()
                    .filter(offer -> offers.stream().noneMatch(other -> other.kind() == offer.kind()))
                    .forEach(offers::add);
        }
        for (Impasse<?> impasse : impasses) {
            CounterOffers.of(impasse, this::card, finestOnHand()).stream()
                    .filter(offer -> offer.kind() != OfferKind.LOWER_FINISH || stoneIsKnown())
                    .filter(offer -> offers.stream().noneMatch(other -> sameWayOut(offer, other)))
                    .forEach(offers::add);
        }
        return fitting(offers);
    }

    /** A floor that was poured has no pieces to relay or replace. */
    private List<CounterOffer<?>> fitting(List<CounterOffer<?>> offers) {
        boolean poured = situation.stone().isPoured(situation.survey());
        boolean trips = situation.survey().answer(SurveyField.SOUNDING).value().equals(Optional.of(Sounding.LOOSE));
        List<CounterOffer<?>> fitting = offers.stream()
                .filter(offer ->
                        !poured || offer.kind() != OfferKind.LIFT_AND_RELAY && offer.kind() != OfferKind.REPLACE_PIECES)
                .toList();
        // A piece that rocks under people is not left as it is where anything else can be done.
        return !trips || fitting.size() < 2
                ? fitting
                : fitting.stream()
                        .filter(offer -> offer.kind() != OfferKind.LEAVE_IT)
                        .toList();
    }

    /** False where name and tests contradict each other: the stone is tested again before a wish is given up for it. */
    private boolean stoneIsKnown() {
        return situation.decision(Topics.STONE, Subject.FLOOR).isPresent();
    }

    private static boolean sameWayOut(CounterOffer<?> one, CounterOffer<?> other) {
        return one.kind() == other.kind() && one.values().equals(other.values());
    }

    private Plan plan() {
        boolean cuts = run.cutsPlanned();
        return new Plan(
                situation.values(Topics.PREPARATION).stream()
                        .map(task -> new Preparation(
                                task,
                                StepFigures.rest(task, situation.survey(), situation.stone(), situation.parameters())))
                        .toList(),
                situation.values(Topics.ACCEPTANCES),
                first(Topics.TEST_AREA, TestArea.NOT_NEEDED),
                grades(Topics.TEST_CUTS, Subject.FLOOR),
                situation.values(Topics.REPAIRS),
                cuts ? situation.values(Topics.FINISH).stream().findFirst() : Optional.empty(),
                tracks(),
                starts,
                situation.values(Topics.SHORTFALLS),
                situation.values(Topics.SLURRY),
                first(Topics.POLISHING_AGENT, PolishingAgent.NONE),
                first(Topics.DENSIFIER, Densifier.NONE),
                first(Topics.SEALER, Sealer.NONE),
                situation.values(Topics.FINISH_TASKS),
                situation.values(Topics.UPKEEP));
    }

    private <V> V first(Topic<V> topic, V otherwise) {
        return situation.values(topic).stream().findFirst().orElse(otherwise);
    }

    private List<AbrasiveGrade> grades(Topic<Grit> topic, Subject subject) {
        return situation.values(topic, subject).stream()
                .map(grit -> situation.sequence().get(grit, topic.id()))
                .toList();
    }

    private List<Track> tracks() {
        return Stream.of(TrackKind.values())
                .map(this::track)
                .filter(track -> !track.steps().isEmpty())
                .toList();
    }

    private Track track(TrackKind kind) {
        return new Track(kind, steps(kind));
    }

    private List<PlannedStep> steps(TrackKind kind) {
        List<PlannedStep> steps = new ArrayList<>();
        Optional<AbrasiveGrade> before = situation.worked(kind);
        for (AbrasiveGrade grade : grades(Topics.GRIT_PATH, new Subject.OfTrack(kind))) {
            steps.add(step(kind, grade, situation.depth(kind, before, grade)));
            before = Optional.of(grade);
        }
        return steps;
    }

    private PlannedStep step(TrackKind kind, AbrasiveGrade grade, Range<Length> depth) {
        Subject subject = new Subject.OfStep(kind, grade.key());
        MachineClass machine = situation.values(Topics.MACHINE, subject).get(0);
        AddedWeight weight = situation.values(Topics.ADDED_WEIGHT, subject).get(0);
        WaterLevel water = situation.values(Topics.WATER_LEVEL, subject).get(0);
        return new PlannedStep(
                grade,
                grade.bond() == Bond.METAL ? first(Topics.METAL_METHOD, WorkMethod.WET) : WorkMethod.WET,
                machine,
                weight,
                StepFigures.mass(machine, weight, situation.parameters()),
                water,
                situation.values(Topics.LITRES, subject).stream().findFirst(),
                situation.values(Topics.PASSES, subject).get(0),
                depth,
                situation.values(Topics.HANDLING, subject),
                situation.values(Topics.PICK_UP, subject).get(0),
                situation.values(Topics.CHECKS, subject));
    }

    private List<SafetyWarning> warnings() {
        Optional<Decision<Hazard>> decision = situation.decision(Topics.WARNINGS, Subject.FLOOR);
        if (decision.isEmpty()) {
            return List.of();
        }
        List<SafetyWarning> warnings = new ArrayList<>();
        for (Hazard hazard : situation.values(Topics.WARNINGS)) {
            List<Reason> raising = decision.get().won().stream()
                    .filter(reason -> reason.values().contains(hazard))
                    .toList();
            HazardSheet sheet = HazardSheet.of(hazard);
            Set<String> sources = new TreeSet<>();
            sheet.limitSources().forEach(source -> sources.add(source.id()));
            raising.forEach(reason -> sources.add(card(reason.rule()).source().id()));
            warnings.add(new SafetyWarning(
                    hazard,
                    sheet.precautions(),
                    sheet.decides(),
                    raising.stream().map(Reason::rule).distinct().sorted().toList(),
                    List.copyOf(sources),
                    raising.stream().anyMatch(Reason::certain)));
        }
        return warnings;
    }
}
