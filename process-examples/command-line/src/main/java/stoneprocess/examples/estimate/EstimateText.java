package stoneprocess.examples.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.estimate.AbrasionResistance;
import stoneprocess.core.estimate.Assumption;
import stoneprocess.core.estimate.Basis;
import stoneprocess.core.estimate.Calendar;
import stoneprocess.core.estimate.Consumable;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.Cost;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Line;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.RouteCheck;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.site.JobNote;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.rules.text.Words;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

/** An estimate as a text: every line of hours, waits and consumables, what it rests on, and what it leaves out. */
public final class EstimateText {
    private static final List<String> THREE = List.of("low", "likely", "high");

    private final UnitSystem units;
    private final Recommendation recommendation;
    private final Texts texts;
    private final EstimatePage page = new EstimatePage();

    /** For the plan that the estimate is of. */
    public EstimateText(UnitSystem units, Recommendation recommendation) {
        this.units = units;
        this.recommendation = recommendation;
        this.texts = Texts.english().in(units).with(recommendation.parameters());
    }

    /**
     * The text of an estimate, ending with a line feed.
     *
     * @param planned the job of the plan
     * @param estimate its estimate
     * @param cost its cost by a price list, where there is one
     * @param comparison a section that compares it with another way, where one was asked for
     */
    public String render(
            PlannedJob planned, Estimate estimate, Optional<Cost> cost, Optional<ComparisonText> comparison) {
        page.title(recommendation.survey().title());
        summary(planned, estimate);
        hours(planned, estimate);
        waits(estimate);
        calendar(estimate.calendar());
        consumables(estimate);
        cost.ifPresent(this::cost);
        comparison.ifPresent(section -> section.write(page));
        leftOut(planned);
        pace(estimate);
        restsOn(planned, estimate);
        cautions(planned, estimate, cost.isPresent());
        return page.toString();
    }

    private void summary(PlannedJob planned, Estimate estimate) {
        List<String> steps = planned.job().steps().stream()
                .map(step -> EstimateWords.plain(step.name()))
                .toList();
        String finish = recommendation
                .plan()
                .flatMap(plan -> plan.finish())
                .map(value -> ", finish " + texts.word(Wording.of(value)))
                .orElse("");
        page.line("ESTIMATE for " + units.print(planned.job().area()) + " with "
                + units.print(planned.job().edges()) + " of edges" + finish + ": "
                + (steps.isEmpty() ? "by hand" : String.join(", ", steps)) + ".");
        page.line("Likely " + hours(estimate.personHours().likely()) + " person-hours on "
                + units.number(estimate.calendar().workingDays().likely()) + " working days, and "
                + units.number(estimate.calendar().days().likely()) + " days until the floor is used again.");
        if (planned.notes().contains(JobNote.PLAN_IS_PROVISIONAL)) {
            page.line(EstimateWords.note(JobNote.PLAN_IS_PROVISIONAL));
        }
    }

    private void hours(PlannedJob planned, Estimate estimate) {
        page.heading("Person-hours", THREE, "people, rests on");
        for (Line.WorkLine line : estimate.work()) {
            if (line.clock().high().minutes() > 0) {
                row(
                        EstimateWords.work(line),
                        line.personHours(),
                        EstimateText::hours,
                        line.people() + ", " + restsOn(planned, line));
            }
        }
        row("all", estimate.personHours(), EstimateText::hours, "");
        row("all, hours by the clock", estimate.clock(), EstimateText::hours, "");
    }

    private void waits(Estimate estimate) {
        List<Line.WaitLine> waits = estimate.lines().stream()
                .filter(Line.WaitLine.class::isInstance)
                .map(Line.WaitLine.class::cast)
                .toList();
        if (waits.isEmpty()) {
            return;
        }
        page.heading("Waits, hours day and night", THREE, "");
        waits.forEach(wait -> row(EstimateWords.wait(wait), wait.hours(), EstimateText::hours, ""));
        row("all", estimate.calendar().waiting(), EstimateText::hours, "");
    }

    private void calendar(Calendar calendar) {
        page.heading("Calendar", THREE, "");
        row("working days", calendar.workingDays(), units::number, "");
        row("days until the floor is used again", calendar.days(), units::number, "");
    }

    private void consumables(Estimate estimate) {
        if (estimate.consumables().isEmpty()) {
            return;
        }
        page.heading("Used up and left over", THREE, "");
        for (ConsumableKind kind : ConsumableKind.values()) {
            List<Consumable> lines = estimate.consumables().stream()
                    .filter(line -> line.kind() == kind)
                    .toList();
            String what = EstimateWords.consumable(kind);
            lines.forEach(line -> row(
                    what + ", " + EstimateWords.plain(line.step()), line.amount(), units::number, unit(line.amount())));
            if (lines.size() > 1 && kind != ConsumableKind.PAD_WEAR) {
                estimate.total(kind).ifPresent(all -> row(what + ", all", all, units::number, unit(all)));
            }
        }
    }

    private void cost(Cost cost) {
        String currency = cost.total().likely().currency();
        page.heading("Cost, " + currency, THREE, "");
        cost.lines().forEach(line -> row(costItem(line.name()), line.amount(), EstimateText::money, ""));
        row("all", cost.subtotal(), EstimateText::money, "");
        if (cost.minimumCharged()) {
            row("with the minimum charge", cost.total(), EstimateText::money, "");
        }
        if (!cost.unpriced().isEmpty()) {
            page.item("No price, and so not in the cost: "
                    + cost.unpriced().stream().map(EstimateText::costItem).collect(Collectors.joining(", ")) + ".");
        }
        if (!cost.exclusions().isEmpty()) {
            page.item("The price does not cover: " + String.join(", ", cost.exclusions()) + ".");
        }
    }

    static String costItem(String name) {
        return EstimateWords.plain(name);
    }

    private void leftOut(PlannedJob planned) {
        if (!planned.uncounted().isEmpty()) {
            page.heading("Not in the hours");
            page.item("The plan asks for these too, and nobody gave their hours: "
                    + planned.uncounted().stream().map(EstimateWords::plain).collect(Collectors.joining(", "))
                    + ". Give them with --work; until then they are left out, not free.");
        }
    }

    private void pace(Estimate estimate) {
        if (estimate.routes().isEmpty()) {
            return;
        }
        page.heading("Pace in the open field, for the whole step");
        for (RouteCheck route : estimate.routes()) {
            String causes = route.departures().stream()
                    .map(departure -> EstimateWords.cause(departure.cause()) + " x "
                            + departure.factor().decimal().movePointLeft(2).setScale(2, RoundingMode.HALF_EVEN))
                    .collect(Collectors.joining(", "));
            boolean agrees = route.agreement() == RouteCheck.Agreement.AGREE
                    || route.agreement() == RouteCheck.Agreement.NO_BAND;
            page.item(EstimateWords.plain(route.step()) + ": "
                    + units.print(route.walked().likely()) + " as walked"
                    + route.practice()
                            .map(band -> ", " + units.print(band) + " by common practice")
                            .orElse("")
                    + "; " + EstimateWords.agreement(route.agreement()) + (agrees ? "" : " " + causes) + ".");
        }
        Spread<Area> day = estimate.areaPerMachineDay();
        page.item("All steps: one machine finishes " + units.print(Range.of(day.low(), day.high())) + ", likely "
                + units.print(day.likely()) + ", in a working day.");
    }

    private void restsOn(PlannedJob planned, Estimate estimate) {
        page.heading("What the figures rest on");
        AbrasionResistance stone = planned.job().stone().resistance();
        if (!estimate.routes().isEmpty()) {
            page.item("The stone counts as " + planned.job().stone().hardness().key() + ", abrasion resistance Ha "
                    + plain(stone.ha()) + ". " + stone.source().print() + ".");
        }
        page.item("Grits, passes, weights, water and waits: the plan for this survey.");
        if (estimate.work().stream().anyMatch(line -> line.basis() == Basis.CREW_TIMING)) {
            page.item("Own timing: the crew's file, in place of the defaults.");
        }
        Set<Assumption> assumptions = Stream.of(
                        estimate.work().stream()
                                .filter(line -> line.clock().high().minutes() > 0)
                                .flatMap(line -> line.assumptions().stream()),
                        planned.rates().values().stream().flatMap(List::stream),
                        estimate.consumables().stream().flatMap(line -> line.assumptions().stream()))
                .flatMap(Function.identity())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> sources = assumptions.stream()
                .map(assumption -> assumption.source().print())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        for (String source : sources) {
            List<String> named = assumptions.stream()
                    .filter(assumption -> assumption.source().print().equals(source))
                    .map(assumption ->
                            EstimateWords.parameter(assumption.name()) + " " + units.print(assumption.value()))
                    .toList();
            page.item(source + ": " + String.join("; ", named) + ".");
        }
    }

    private void cautions(PlannedJob planned, Estimate estimate, boolean priced) {
        page.heading("Cautions");
        Share night = planned.job().site().night();
        if (night.percent() > 0 && !priced) {
            page.item("The share of " + units.print(night) + " at night rates has no effect here: it changes the cost"
                    + " alone, and without a price list there is none.");
        }
        planned.notes().stream()
                .filter(note -> note != JobNote.PLAN_IS_PROVISIONAL)
                .forEach(note -> page.item(EstimateWords.note(note)));
        estimate.remarks().stream().sorted().forEach(remark -> page.item(EstimateWords.remark(remark)));
        page.item("Figures are rounded one by one; totals are of the unrounded ones.");
        if (!recommendation.warnings().isEmpty()) {
            page.heading("Hazards of this work, told in the plan, and who decides");
            for (SafetyWarning warning : recommendation.warnings()) {
                page.item(texts.word(Words.whoDecides(warning)));
            }
        }
        page.heading(texts.word(Wording.phrase("closing.heading")));
        page.line(texts.word(Wording.phrase("closing.deference")));
    }

    private String unit(Spread<Quantity> amount) {
        Unit unit = units.unitFor(amount.high());
        return unit == Unit.COUNT ? "" : unit.symbol();
    }

    private <T extends Comparable<? super T>> void row(
            String label, Spread<T> spread, Function<T, String> print, String last) {
        List<String> figures = new ArrayList<>();
        for (T figure : List.of(spread.low(), spread.likely(), spread.high())) {
            figures.add(print.apply(figure));
        }
        page.row(label, figures, last);
    }

    /** One word for what a line of work rests on. */
    private static String restsOn(PlannedJob planned, Line.WorkLine line) {
        return switch (line.basis()) {
            case CREW_TIMING -> "own timing";
            case DEFAULT -> source(line.assumptions());
            case GIVEN ->
                line.subject()
                        .map(planned.rates()::get)
                        .map(EstimateText::source)
                        .orElse("given");
        };
    }

    private static String source(List<Assumption> assumptions) {
        if (assumptions.stream().anyMatch(assumption -> assumption.source().id().equals("house"))) {
            return "house";
        }
        return assumptions.stream().anyMatch(assumption -> assumption.source().published()) ? "published" : "practice";
    }

    static String hours(TimeSpan time) {
        return time.in(Unit.HOUR).setScale(1, RoundingMode.HALF_EVEN).toPlainString();
    }

    static String money(Money money) {
        return money.amount().setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
