package stoneprocess.rules.text.sheet;

import static stoneprocess.rules.text.Words.hours;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.sheet.EstimateWords.NOTHING;
import static stoneprocess.rules.text.sheet.EstimateWords.number;
import static stoneprocess.rules.text.sheet.EstimateWords.row;
import static stoneprocess.rules.text.sheet.EstimateWords.subjects;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.Basis;
import stoneprocess.core.estimate.Calendar;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.Cost;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.FloorMachine;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.Line;
import stoneprocess.core.estimate.Plausibility;
import stoneprocess.core.estimate.Remark;
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.site.JobNote;
import stoneprocess.core.site.MachineHours;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.stone.Family;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.MachineToBring;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Ledger;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** An estimate: every line of hours, waits and consumables, what it rests on, and what it leaves out. */
public final class EstimateSheet {
    /** What is brought and taken away; wear and solids are for the price and the slurry. */
    private static final List<ConsumableKind> BROUGHT = List.of(
            ConsumableKind.PAD_SETS,
            ConsumableKind.POWDER,
            ConsumableKind.WATER,
            ConsumableKind.SLURRY,
            ConsumableKind.ENERGY);

    /** What is worth knowing only where a floor is cut. */
    private static final Set<Remark> OF_CUTTING =
            EnumSet.of(Remark.MATERIALS_ARE_NOT_COUNTED, Remark.MORE_CREWS_SHORTEN_THE_DAYS);

    private final Recommendation recommendation;
    private final PlannedJob planned;
    private final Estimate estimate;
    private final Draft draft;

    private EstimateSheet(Recommendation recommendation, PlannedJob planned, Estimate estimate) {
        this.recommendation = recommendation;
        this.planned = planned;
        this.estimate = estimate;
        this.draft = Draft.titled(Wording.name(recommendation.survey().title()), recommendation.parameters());
    }

    /**
     * The document of an estimate.
     *
     * @param recommendation the plan
     * @param planned its job
     * @param estimate the estimate of that job
     * @param cost its cost by a price list, where there is one
     * @param other another way to compare with, where one was asked for
     */
    public static Document of(
            Recommendation recommendation,
            PlannedJob planned,
            Estimate estimate,
            Optional<Cost> cost,
            Optional<ComparedWay> other) {
        Objects.requireNonNull(planned, "planned");
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(other, "other");
        EstimateSheet sheet = new EstimateSheet(recommendation, planned, estimate);
        sheet.summary();
        sheet.work();
        sheet.waits();
        sheet.calendar(estimate.calendar());
        sheet.consumables();
        cost.ifPresent(sheet::cost);
        other.ifPresent(way -> ComparedWords.write(sheet.draft, way));
        sheet.plausibility();
        sheet.machines();
        sheet.stock();
        sheet.cautions(cost.isPresent());
        sheet.restsOn();
        sheet.draft.list("estimate.hazards", Words.whoDecide(recommendation.warnings()), Function.identity());
        return sheet.draft
                .section("closing.heading")
                .paragraph("closing.beside-plan")
                .document();
    }

    /** That a recommendation has no work to estimate, and why. */
    public static Document none(Recommendation recommendation) {
        return Draft.untitled(recommendation.parameters())
                .paragraph(recommendation.plan().isPresent() ? "estimate.none.cuts-nothing" : "estimate.none.no-plan")
                .document();
    }

    private void summary() {
        List<String> steps = planned.job().steps().stream().map(JobStep::name).toList();
        Optional<Wording> finish = recommendation.plan().flatMap(Plan::finish).map(Wording::of);
        Calendar calendar = estimate.calendar();
        boolean cleaned =
                recommendation.plan().filter(plan -> plan.tracks().isEmpty()).isPresent();
        String withoutFinish = cleaned ? "estimate.summary.cleaned" : "estimate.summary-no-finish";
        draft.paragraph(phrase(finish.isPresent() ? "estimate.summary" : withoutFinish)
                        .with("area", planned.job().area())
                        .with("edges", edges())
                        .with("finish", finish.orElse(NOTHING))
                        .with("steps", steps.isEmpty() ? phrase("estimate.work.by-hand") : subjects(steps)))
                .paragraph(phrase(calendar.days().high().number() <= 1 ? "estimate.likely.same-day" : "estimate.likely")
                        .with("hours", hours(estimate.personHours().likely()))
                        .with("paid", hours(estimate.paidHours().likely()))
                        .with("working", (int) calendar.workingDays().likely().number())
                        .with("days", (int) calendar.days().likely().number())
                        .with("week", week()));
        WorkingTimes times = planned.job().site().times();
        if (times.crews() > 1) {
            draft.paragraph(
                    phrase("estimate.crews").with("crews", times.crews()).with("bays", times.bays()));
        }
        MachineToBring.of(recommendation, planned).ifPresent(draft::paragraph);
        if (planned.notes().contains(JobNote.PLAN_IS_PROVISIONAL)) {
            draft.paragraph(Wording.of(JobNote.PLAN_IS_PROVISIONAL));
        }
    }

    private Wording edges() {
        Range<Length> edges = planned.job().edges();
        Length low = new Length(1000 * Math.rint(edges.low().kept() / 1000));
        Length high = new Length(1000 * Math.rint(edges.high().kept() / 1000));
        return low.equals(high) ? Wording.amount(low) : new Wording.AmountRange(low, high);
    }

    private int week() {
        return planned.job().site().times().daysAWeek();
    }

    /** Begins a table of the three figures under a heading. */
    private Ledger ledger(Wording heading, Wording last) {
        draft.section(heading);
        return Ledger.headed(
                Stream.of("estimate.low", "estimate.middle", "estimate.high")
                        .map(Wording::phrase)
                        .toList(),
                last);
    }

    private void work() {
        Ledger hours = ledger(phrase("estimate.hours"), phrase("estimate.basis"));
        List<Line.WorkLine> beside = worked().stream()
                .filter(line -> line.personHours().high().minutes() == 0)
                .toList();
        for (Line.WorkLine line : worked()) {
            if (!beside.contains(line)) {
                Wording basis = EstimateWords.basis(planned, line);
                row(
                        hours,
                        EstimateWords.ofStep(line.work(), line.subject()),
                        line.personHours(),
                        Words::hours,
                        basis.equals(EstimateWords.PRACTICE) ? NOTHING : basis);
            }
        }
        row(hours, phrase("estimate.all"), estimate.personHours(), Words::hours, NOTHING);
        row(hours, phrase("estimate.hours-paid"), estimate.paidHours(), Words::hours, NOTHING);
        row(hours, phrase("estimate.by-the-clock"), estimate.clock(), Words::hours, NOTHING);
        draft.add(hours.table())
                .paragraph("estimate.people.practice")
                .bullet(paid(planned.job().site()));
        if (!beside.isEmpty()) {
            draft.bullet(phrase("estimate.beside")
                    .with("work", Wording.list(Joint.SEMICOLON, beside, EstimateSheet::beside)));
        }
    }

    private static Wording paid(SiteConditions site) {
        return phrase(site.atBarrier() > 0 ? "estimate.paid.barrier" : "estimate.paid")
                .with("people", site.people())
                .with("more", site.atBarrier());
    }

    private static Wording beside(Line.WorkLine line) {
        return phrase("estimate.beside.line")
                .with("line", EstimateWords.ofStep(line.work(), line.subject()))
                .with("low", hours(line.clock().low()))
                .with("high", hours(line.clock().high()));
    }

    private List<Line.WorkLine> worked() {
        return estimate.work().stream()
                .filter(line -> line.clock().high().minutes() > 0)
                .toList();
    }

    private void waits() {
        List<Line.WaitLine> all = estimate.lines().stream()
                .filter(Line.WaitLine.class::isInstance)
                .map(Line.WaitLine.class::cast)
                .toList();
        if (all.isEmpty()) {
            return;
        }
        Ledger waits = ledger(phrase("estimate.waits"), NOTHING);
        all.forEach(wait -> row(
                waits,
                EstimateWords.ofStep(wait.reason(), wait.subject()),
                wait.hours(),
                EstimateWords::waiting,
                NOTHING));
        row(waits, phrase("estimate.all"), estimate.calendar().waiting(), EstimateWords::waiting, NOTHING);
        draft.add(waits.table());
    }

    private void calendar(Calendar calendar) {
        Ledger days = ledger(phrase("estimate.calendar"), NOTHING);
        row(days, phrase("estimate.working-days"), calendar.workingDays(), EstimateSheet::whole, NOTHING);
        if (calendar.returns().high().number() > 0) {
            row(days, phrase("estimate.returns"), calendar.returns(), EstimateSheet::whole, NOTHING);
        }
        row(days, phrase("estimate.days").with("week", week()), calendar.days(), EstimateSheet::whole, NOTHING);
        draft.add(days.table());
    }

    private void consumables() {
        if (estimate.consumables().isEmpty()) {
            return;
        }
        Ledger used = ledger(phrase("estimate.consumables"), NOTHING);
        for (ConsumableKind kind : BROUGHT) {
            if (kind == ConsumableKind.PAD_SETS) {
                estimate.consumables().stream()
                        .filter(line -> line.kind() == kind)
                        .forEach(line -> consumable(
                                used,
                                phrase("estimate.consumable")
                                        .with("kind", kind)
                                        .with("step", EstimateWords.subject(line.step())),
                                line.amount()));
            } else {
                estimate.total(kind).ifPresent(all -> consumable(used, Wording.of(kind), all));
            }
        }
        draft.add(used.table());
    }

    private static void consumable(Ledger used, Wording label, Spread<Quantity> amount) {
        row(used, label, amount, EstimateWords::number, EstimateWords.unit(amount.high()));
    }

    private void cost(Cost cost) {
        String currency = cost.total().likely().currency();
        Ledger costs = ledger(phrase("estimate.cost").with("currency", currency), NOTHING);
        cost.lines()
                .forEach(line ->
                        row(costs, EstimateWords.priced(line.name()), line.amount(), EstimateWords::money, NOTHING));
        row(
                costs,
                phrase(cost.unpriced().isEmpty() ? "estimate.all" : "estimate.all-priced"),
                cost.total(),
                EstimateWords::money,
                NOTHING);
        draft.add(costs.table());
        if (!cost.unpriced().isEmpty()) {
            Wording items = Wording.list(Joint.COMMA, cost.unpriced(), EstimateWords::priced);
            draft.bullet(phrase("estimate.unpriced").with("items", items));
        }
        if (!cost.exclusions().isEmpty()) {
            Wording items = Wording.list(Joint.COMMA, cost.exclusions(), Wording::name);
            draft.bullet(phrase("estimate.not-covered").with("items", items));
        }
    }

    private void plausibility() {
        estimate.plausibility().ifPresent(beside -> {
            Wording verdict = beside.plausible()
                    ? phrase("estimate.plausible.inside")
                    : phrase(outside(beside)).with("steps", subjects(beside.outside()));
            Spread<Area> day = estimate.areaPerMachineDay();
            double minutes = estimate.personHours().likely().minutes();
            double hours = minutes / 60 / planned.job().area().squareMetres();
            draft.section("estimate.plausibility")
                    .bullet(phrase(stretched(beside) ? "estimate.plausible.stretched" : "estimate.plausible")
                            .with("reckoned", beside.reckoned().likely())
                            .with("published", beside.published())
                            .with("verdict", verdict))
                    .bullet(phrase("estimate.machine-day")
                            .with("range", Range.of(whole(day.low()), whole(day.high())))
                            .with("likely", whole(day.likely()))
                            .with("hours", number(BigDecimal.valueOf(hours), 1)));
        });
    }

    private static String outside(Plausibility beside) {
        if (stretched(beside)) {
            return "estimate.plausible.outside";
        }
        return beside.reckoned().likely().compareTo(beside.published().high()) > 0
                ? "estimate.plausible.faster"
                : "estimate.plausible.slower";
    }

    /** The floor machines beside one another, and what one that could be rented would save. */
    private void machines() {
        List<MachineHours> all = MachineHours.of(recommendation, planned);
        if (all.size() < 2) {
            return;
        }
        MachineHours best = all.get(0);
        MachineHours next = all.get(1);
        draft.section("estimate.machines")
                .bullet(phrase("estimate.machines.hours")
                        .with("first", best.machine())
                        .with("fewer", Words.hours(best.likely()))
                        .with("second", next.machine())
                        .with("more", Words.hours(next.likely())));
        double saved = next.likely().minutes() - best.likely().minutes();
        if (!best.onHand() && next.onHand() && saved > 0) {
            draft.bullet(phrase("estimate.machines.rent")
                    .with("machine", best.machine())
                    .with("hours", Words.hours(new TimeSpan(saved))));
            Power rated =
                    FloorMachine.usual(best.machine(), planned.parameters()).power();
            draft.bullet(phrase("estimate.machines.supply")
                    .with("machine", best.machine())
                    .with("power", rated)
                    .with("supply", Words.supply(rated)));
        }
    }

    /** Days are those of the plan. */
    private static Wording whole(Count days) {
        return number(days.decimal(), 0);
    }

    private static Area whole(Area area) {
        return new Area(Math.rint(area.squareMetres()));
    }

    /** Whether anything but the margin was added to the published rates from memory. */
    private static boolean stretched(Plausibility beside) {
        return beside.assumptions().stream()
                .anyMatch(assumption ->
                        List.of("estimate.band.hard", "estimate.band.planetary").contains(assumption.name()));
    }

    /** What the open field loses, against what it may lose where the survey tells its thickness. */
    private void stock() {
        List<JobStep> steps = planned.job().steps();
        if (steps.isEmpty()) {
            return;
        }
        Range<Length> taken = Range.of(
                sum(steps, step -> step.depth().low()),
                sum(steps, step -> step.depth().high()));
        Wording passes = Wording.list(
                Joint.COMMA,
                steps,
                step -> step.highSpots()
                        .map(spots -> phrase("estimate.passes.partly")
                                .with("share", new Share(Math.rint(spots.share().percent())))
                                .with("fewer", span(spots.passes())))
                        .orElseGet(() -> phrase("estimate.passes.of"))
                        .with("step", EstimateWords.subject(step.name()))
                        .with("passes", span(step.passes())));
        draft.section("estimate.stock")
                .bullet(phrase("estimate.passes").with("passes", passes))
                .bullet(phrase("estimate.stock.taken").with("range", taken));
        if (recommendation.values(Topics.STONE, Subject.FLOOR).equals(List.of(Family.CONCRETE))) {
            draft.bullet("estimate.stock.slab");
        }
    }

    private static Wording span(Range<Integer> passes) {
        return Words.span(passes.low(), passes.high());
    }

    private static Length sum(List<JobStep> steps, Function<JobStep, Length> depth) {
        return new Length(
                steps.stream().map(depth).mapToDouble(Length::millimetres).sum());
    }

    private void restsOn() {
        draft.section("estimate.rests-on");
        if (planned.job().steps().isEmpty()) {
            draft.bullet("estimate.from-the-plan.uncut");
        } else {
            draft.bullet(phrase("estimate.stone").with("stone", planned.job().stone()))
                    .bullet("estimate.from-the-plan");
        }
        if (estimate.work().stream().anyMatch(line -> line.basis() == Basis.CREW_TIMING)) {
            draft.bullet("estimate.own-timing");
        }
        bySource()
                .forEach((source, assumptions) ->
                        draft.bullet(phrase("estimate.assumptions").with("source", source), List.copyOf(assumptions)));
    }

    /** The numbers behind the figures, each once, by where they come from. */
    private Map<Wording, Set<Item>> bySource() {
        Map<Wording, Set<Item>> bySource = new LinkedHashMap<>();
        List<Assumption> all = new ArrayList<>();
        worked().forEach(line -> all.addAll(line.assumptions()));
        planned.rates().values().forEach(all::addAll);
        estimate.consumables().forEach(line -> all.addAll(line.assumptions()));
        estimate.plausibility().ifPresent(beside -> all.addAll(beside.assumptions()));
        all.forEach(assumption -> bySource.computeIfAbsent(
                        Wording.source(assumption.source()), source -> new LinkedHashSet<>())
                .add(new Item.Labelled(
                        phrase("estimate.assumption").with("name", EstimateWords.assumption(assumption.name())),
                        phrase("estimate.assumption.value").with("value", assumption.value()))));
        return bySource;
    }

    private void cautions(boolean priced) {
        draft.section("exposure.cautions");
        Share night = planned.job().site().night();
        if (night.percent() > 0 && !priced) {
            draft.bullet(
                    night.percent() == 100
                            ? phrase("estimate.night-without-prices.all")
                            : phrase("estimate.night-without-prices").with("share", night));
        }
        List<JobNote> notes = new ArrayList<>(planned.notes());
        notes.remove(JobNote.PLAN_IS_PROVISIONAL);
        Set<Remark> remarks = new TreeSet<>(estimate.remarks());
        if (planned.job().steps().isEmpty()) {
            remarks.removeAll(OF_CUTTING);
        }
        draft.bullets(notes, Wording::of)
                .bullets(remarks, Wording::of)
                .bullet(phrase("estimate.shift")
                        .with("shift", planned.job().site().shift()))
                .bullet("estimate.hours-paid.caution")
                .bullet("estimate.rounding");
    }
}
