package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.Job;
import stoneprocess.core.estimate.Spread;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.rules.text.document.Wording;

/**
 * What a plan's job needs in all, as its estimate reckons it; the estimate tells what the figures rest on.
 *
 * @param estimate the estimate of the job; empty where the area is not known or nothing is cut
 * @param bring what to bring that the crew does not have, and the likely hours with it
 */
record PlanTotals(Optional<Estimate> estimate, Optional<Wording> bring) {
    private static final Set<MachineClass> RECKONED =
            EnumSet.of(MachineClass.SINGLE_DISC, MachineClass.PLANETARY, MachineClass.EDGE_TOOL);

    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_EVEN);

    static PlanTotals of(Recommendation recommendation) {
        boolean known = recommendation.survey().answer(SurveyField.AREA).value().isPresent();
        if (!known
                || !PlannedJob.isThere(recommendation)
                || recommendation.plan().filter(PlanTotals::isReckoned).isEmpty()) {
            return new PlanTotals(Optional.empty(), Optional.empty());
        }
        PlannedJob planned = PlannedJob.of(recommendation, JobOptions.defaults());
        return new PlanTotals(Optional.of(planned.estimate()), MachineToBring.of(recommendation, planned));
    }

    private static boolean isReckoned(Plan plan) {
        return plan.tracks().stream()
                .flatMap(track -> track.steps().stream())
                .allMatch(step -> RECKONED.contains(step.machine()));
    }

    /** One sentence where the end of the work lies likely, or at worst, after the deadline of the survey; else none. */
    Optional<Wording> late(FloorSurvey survey) {
        Optional<TimeSpan> deadline = survey.answer(SurveyField.DEADLINE).value();
        if (deadline.isEmpty() || estimate.isEmpty()) {
            return Optional.empty();
        }
        double last = StrictMath.ceil(deadline.get().in(Unit.DAY).doubleValue());
        Spread<Count> days = estimate.get().calendar().days();
        Wording asked = inDays(deadline.get());
        if (days.likely().number() > last) {
            return Optional.of(phrase(bring.isPresent() ? "totals.late.bring" : "totals.late")
                    .with("days", Wording.number(days.likely().decimal()))
                    .with("deadline", asked));
        }
        return days.high().number() > last
                ? Optional.of(phrase("totals.in-time").with("deadline", asked))
                : Optional.empty();
    }

    private static Wording inDays(TimeSpan deadline) {
        return Wording.number(deadline.in(Unit.DAY).round(TWO_DIGITS).stripTrailingZeros());
    }

    /** Where no hours can be told, the deadline of the survey beside the waits of the plan; no deadline, no sentence. */
    Optional<Wording> openDeadline(Recommendation recommendation) {
        if (estimate.isPresent()) {
            return Optional.empty();
        }
        List<Range<TimeSpan>> waits = recommendation.plan().stream()
                .flatMap(plan -> plan.preparation().stream())
                .flatMap(step -> step.rest().stream())
                .toList();
        return recommendation.survey().answer(SurveyField.DEADLINE).value().map(deadline -> {
            Wording open = phrase("totals.deadline-open").with("deadline", inDays(deadline));
            return waits.isEmpty()
                    ? open
                    : Wording.sentences(
                            open,
                            phrase("totals.deadline-waits")
                                    .with(
                                            "range",
                                            new Wording.AmountRange(sum(waits, Range::low), sum(waits, Range::high))));
        });
    }

    private static TimeSpan sum(List<Range<TimeSpan>> waits, Function<Range<TimeSpan>, TimeSpan> end) {
        return new TimeSpan(
                waits.stream().map(end).mapToDouble(TimeSpan::minutes).sum());
    }

    Optional<Job> job() {
        return estimate.map(Estimate::job);
    }

    /** One line; empty where nothing can be told. */
    Optional<Wording> words() {
        List<Wording> totals = new ArrayList<>();
        estimate.ifPresent(reckoned -> {
            boolean sameDay = reckoned.calendar().days().high().number() <= 1;
            totals.add(phrase(sameDay ? "totals.work.same-day" : "totals.work")
                    .with("hours", work(reckoned))
                    .with("days", days(reckoned))
                    .with("week", reckoned.job().site().times().daysAWeek()));
            total(reckoned, ConsumableKind.WATER, "totals.water").ifPresent(totals::add);
            total(reckoned, ConsumableKind.SLURRY, "totals.slurry").ifPresent(totals::add);
            Spread<TimeSpan> waits = reckoned.calendar().waiting();
            if (waits.high().minutes() > 0) {
                totals.add(phrase("totals.waits").with("range", new Wording.AmountRange(waits.low(), waits.high())));
            }
        });
        return totals.isEmpty() ? Optional.empty() : Optional.of(Wording.list(Wording.Joint.SENTENCES, totals));
    }

    /** Hours, and days to reopening, of two plans, where both can be told and they differ. */
    static List<Wording> instead(Recommendation one, Recommendation other) {
        Optional<Estimate> first = of(one).estimate();
        Optional<Estimate> second = of(other).estimate();
        if (first.isEmpty() || second.isEmpty()) {
            return List.of();
        }
        List<Wording> lines = new ArrayList<>();
        instead(work(first.get()), work(second.get())).ifPresent(lines::add);
        instead(days(first.get()), days(second.get())).ifPresent(lines::add);
        return lines;
    }

    private static Optional<Wording> instead(Wording first, Wording second) {
        return first.equals(second)
                ? Optional.empty()
                : Optional.of(phrase("totals.instead").with("second", second).with("first", first));
    }

    private static Wording work(Estimate estimate) {
        Spread<TimeSpan> work = estimate.personHours();
        return spread(
                "totals.person-hours", Words.hours(work.likely()), Words.hours(work.low()), Words.hours(work.high()));
    }

    private static Wording days(Estimate estimate) {
        Spread<Count> days = estimate.calendar().days();
        if (days.low().equals(days.high())) {
            return phrase("totals.days.sure")
                    .with("likely", Wording.number(days.likely().decimal()));
        }
        return spread(
                "totals.days",
                Wording.number(days.likely().decimal()),
                Wording.number(days.low().decimal()),
                Wording.number(days.high().decimal()));
    }

    private static Wording spread(String key, Wording likely, Wording low, Wording high) {
        return phrase(key)
                .with("likely", likely)
                .with("range", phrase("table.range").with("low", low).with("high", high));
    }

    /** Hours of the crew. */
    Optional<Wording> work() {
        return estimate.map(PlanTotals::work);
    }

    /** Days until the floor is used again. */
    Optional<Wording> days() {
        return estimate.map(PlanTotals::days);
    }

    private static Optional<Wording> total(Estimate estimate, ConsumableKind kind, String key) {
        return estimate.total(kind)
                .map(spread -> phrase(key)
                        .with("likely", round(spread.likely()))
                        .with("range", new Wording.AmountRange(round(spread.low()), round(spread.high()))));
    }

    /** To two digits: an estimate promises no more. */
    private static Quantity round(Quantity quantity) {
        return Quantity.of(
                quantity.decimal().round(TWO_DIGITS), quantity.dimension().unit());
    }
}
