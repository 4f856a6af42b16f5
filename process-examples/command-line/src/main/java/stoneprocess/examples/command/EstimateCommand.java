package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stoneprocess.core.estimate.Alternative;
import stoneprocess.core.estimate.CrewTiming;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.EstimateComparison;
import stoneprocess.core.estimate.Estimator;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.site.Variant;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.term.Term;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.ComparedWay;
import stoneprocess.rules.text.sheet.EstimateSheet;
import stoneprocess.rules.text.sheet.ScheduleSheet;
import stoneprocess.rules.text.sheet.ScheduleSheet.FinishBy;

/** Estimates the job of one survey's plan. */
@Command(
        name = "estimate",
        description = "Plans the floor of a survey and estimates hours, calendar, consumables and cost.")
final class EstimateCommand extends ConsoleCommand {
    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Option(names = "--prices", paramLabel = "FILE", description = "A price list in JSON; the cost is added.")
    private Optional<String> prices = Optional.empty();

    @Option(names = "--job", description = "Print the job that is estimated as JSON and nothing else.")
    private boolean jobAlone;

    @Mixin
    private JobArguments job = new JobArguments();

    @Mixin
    private ScheduleOptions schedule = new ScheduleOptions();

    @ArgGroup
    private Other other = new Other();

    @Mixin
    private Reader reader = new Reader();

    /** What to compare with. */
    static final class Other {
        @Option(
                names = "--finish",
                paramLabel = "FINISH",
                description = "Compare with another finish: hone, satin, semi-gloss, polish or high-gloss.")
        private Optional<String> finish = Optional.empty();

        @Option(names = "--compare", paramLabel = "SURVEY", description = "Compare with the plan of another survey.")
        private Optional<String> survey = Optional.empty();
    }

    @Override
    public Integer call() {
        FloorSurvey read = survey(survey);
        Optional<PriceList> priceList = prices.map(console()::read).map(Json.PRICE_LIST::read);
        List<CrewTiming> timings = job.timings(console());
        Advisor advisor = Advisor.standard();
        JobOptions options = job.options(read, advisor.rulebase().parameters());
        Optional<FloorSurvey> otherSurvey = otherSurvey(read);

        Recommendation recommendation = advisor.recommend(read);
        Texts texts = reader.texts();
        if (!PlannedJob.isThere(recommendation)) {
            console()
                    .print(texts.page(EstimateSheet.none(recommendation))
                            + "\n"
                            + texts.page(
                                    new PlanText(advisor.rulebase().cards()).document(recommendation, Detail.BRIEF)));
            return ExitCode.NO_PLAN;
        }
        PlannedJob planned = PlannedJob.of(recommendation, options);
        if (jobAlone) {
            console().print(Json.PLANNED_JOB.print(planned));
            return ExitCode.DONE;
        }
        Estimator estimator = new Estimator(recommendation.parameters());
        Estimate estimate = estimator.estimate(planned.job(), timings);
        if (schedule.isAsked()) {
            printSchedule(
                    recommendation,
                    planned,
                    estimate,
                    schedule.isUntil() && !schedule.isJson() ? finishes(read, options, timings, advisor) : List.of(),
                    texts);
            return ExitCode.DONE;
        }
        Optional<ComparedWay> way = otherSurvey.map(otherWay -> {
            Recommendation second = advisor.recommend(otherWay);
            return new ComparedWay(
                    otherName(),
                    Optional.of(second)
                            .filter(PlannedJob::isThere)
                            .map(plan ->
                                    compare(planned, PlannedJob.beside(plan, options), estimator, timings, priceList)));
        });
        console()
                .print(texts.page(EstimateSheet.of(
                        recommendation, planned, estimate, priceList.map(list -> list.cost(estimate)), way)));
        return way.filter(compared -> compared.comparison().isEmpty()).isPresent() ? ExitCode.NO_PLAN : ExitCode.DONE;
    }

    /** The finishes that the floor could have, as far as they are planned, each by its own plan. */
    private List<FinishBy> finishes(FloorSurvey read, JobOptions options, List<CrewTiming> timings, Advisor advisor) {
        List<FinishBy> could = new ArrayList<>();
        for (Finish finish : Finish.values()) {
            Recommendation plan = advisor.recommend(Variant.of(finish).on(read));
            if (plan.status() == Status.PLANNED
                    && PlannedJob.isThere(plan)
                    && plan.plan().flatMap(Plan::finish).equals(Optional.of(finish))) {
                PlannedJob planned = PlannedJob.beside(plan, options);
                Alternative timed = Alternative.withTimingsOfItsSteps(finish.key(), planned.job(), timings);
                Estimate estimate = new Estimator(plan.parameters()).estimate(timed.job(), timed.timings());
                Schedule days = Schedule.of(estimate, planned.coldFloor(plan.survey()), plan.parameters());
                long tasks = days.bars().stream().filter(bar -> !bar.isWait()).count();
                boolean done = days.held().isEmpty()
                        && schedule.done(days, job.start())
                                .filter(bars -> bars.size() == tasks)
                                .isPresent();
                could.add(new FinishBy(finish, done, days.days()));
            }
        }
        return could;
    }

    private void printSchedule(
            Recommendation recommendation,
            PlannedJob planned,
            Estimate estimate,
            List<FinishBy> finishes,
            Texts texts) {
        Schedule days = Schedule.of(estimate, planned.coldFloor(recommendation.survey()), recommendation.parameters());
        String page = schedule.isJson()
                ? Json.SCHEDULE.print(days)
                : texts.page(ScheduleSheet.of(
                        recommendation,
                        planned.job().site().times(),
                        days,
                        schedule.done(days, job.start()),
                        finishes));
        console().print(page);
    }

    private Optional<FloorSurvey> otherSurvey(FloorSurvey read) {
        if (other.survey.isPresent()) {
            return other.survey.map(this::survey);
        }
        return other.finish
                .map(key -> Term.parse(Finish.class, key, "--finish"))
                .map(finish -> Variant.of(finish).on(read));
    }

    private String otherName() {
        return other.finish.orElseGet(() -> other.survey.orElse(""));
    }

    private static EstimateComparison compare(
            PlannedJob planned,
            PlannedJob second,
            Estimator estimator,
            List<CrewTiming> timings,
            Optional<PriceList> priceList) {
        Alternative chosen = new Alternative("here", planned.job(), timings);
        Alternative compared = Alternative.withTimingsOfItsSteps("there", second.job(), timings);
        return priceList
                .map(list -> EstimateComparison.of(chosen, compared, estimator, list))
                .orElseGet(() -> EstimateComparison.of(chosen, compared, estimator));
    }
}
