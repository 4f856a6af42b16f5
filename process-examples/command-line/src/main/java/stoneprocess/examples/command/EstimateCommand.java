package stoneprocess.examples.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import stoneprocess.core.estimate.SiteConditions;
import stoneprocess.core.estimate.WorkingTimes;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.site.JobOptions;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.survey.Finish;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Goal;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.term.Term;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.ComparedWay;
import stoneprocess.rules.text.sheet.EstimateSheet;
import stoneprocess.rules.text.sheet.ScheduleSheet;

/** Estimates the job of one survey's plan. */
@Command(
        name = "estimate",
        description = "Plans the floor of a survey and estimates hours, calendar, consumables and cost.")
final class EstimateCommand extends ConsoleCommand {
    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Option(
            names = "--edges",
            paramLabel = "LENGTH",
            description = "Length of walls and fittings, such as \"48 m\"; else that of a square.")
    private Optional<String> edges = Optional.empty();

    @Option(
            names = "--night",
            paramLabel = "SHARE",
            description = "Share of the work at night rates, such as \"50 %%\".")
    private Optional<String> night = Optional.empty();

    @Option(
            names = "--work",
            paramLabel = "NAME=HOURS",
            description = "Hours of one person for a task, in place of the usual ones, such as \"fill-cracks=3-5 h\".")
    private Map<String, String> work = new LinkedHashMap<>();

    @Option(
            names = "--timing",
            paramLabel = "FILE",
            description = "The crew's own times in JSON, instead of the defaults.")
    private Optional<String> timing = Optional.empty();

    @Option(names = "--prices", paramLabel = "FILE", description = "A price list in JSON; the cost is added.")
    private Optional<String> prices = Optional.empty();

    @Option(names = "--job", description = "Print the job that is estimated as JSON and nothing else.")
    private boolean job;

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
        List<CrewTiming> timings = timing.map(console()::read)
                .map(text -> Json.CREW_TIMES.read(text).times())
                .orElse(List.of());
        Advisor advisor = Advisor.standard();
        JobOptions options = options(advisor);
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
        if (job) {
            console().print(Json.PLANNED_JOB.print(planned));
            return ExitCode.DONE;
        }
        Estimator estimator = new Estimator(recommendation.parameters());
        Estimate estimate = estimator.estimate(planned.job(), timings);
        if (schedule.isAsked()) {
            printSchedule(recommendation, estimate, texts);
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

    private void printSchedule(Recommendation recommendation, Estimate estimate, Texts texts) {
        WorkingTimes times = schedule.times(recommendation.parameters());
        Schedule days = Schedule.of(estimate, times, recommendation.parameters());
        String page = schedule.isJson()
                ? Json.SCHEDULE.print(days)
                : texts.page(ScheduleSheet.of(recommendation, times, days, schedule.done(days)));
        console().print(page);
    }

    private JobOptions options(Advisor advisor) {
        JobOptions options = JobOptions.defaults();
        if (edges.isPresent()) {
            options = options.withEdges(Amounts.quantity(edges.get(), "--edges", Length.class, "48 m"));
        }
        if (night.isPresent()) {
            SiteConditions usual = SiteConditions.usual(advisor.rulebase().parameters());
            options = options.withSite(new SiteConditions(
                    usual.mobilisations(),
                    usual.signOff(),
                    usual.shift(),
                    Amounts.quantity(night.get(), "--night", Share.class, "50 %")));
        }
        for (Map.Entry<String, String> task : work.entrySet()) {
            options = options.withTime(
                    task.getKey(), Amounts.range(task.getValue(), "--work." + task.getKey(), TimeSpan.class, "3-5 h"));
        }
        return options;
    }

    private Optional<FloorSurvey> otherSurvey(FloorSurvey read) {
        if (other.survey.isPresent()) {
            return other.survey.map(this::survey);
        }
        return other.finish
                .map(key -> Term.parse(Finish.class, key, "--finish"))
                .map(finish -> read.toBuilder()
                        .set(SurveyField.GOAL, Goal.valueOf(finish.name()))
                        .unknown(SurveyField.GOAL_GLOSS)
                        .build());
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
        Alternative first = new Alternative("here", planned.job(), timings);
        Alternative other = Alternative.withTimingsOfItsSteps("there", second.job(), timings);
        return priceList
                .map(list -> EstimateComparison.of(first, other, estimator, list))
                .orElseGet(() -> EstimateComparison.of(first, other, estimator));
    }
}
