package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Json;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.Status;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.Detail;
import stoneprocess.rules.text.PlanText;

/** Plans one survey. */
@Command(name = "plan", description = "Plans the floor of a survey and prints the plan, its first page first.")
final class PlanCommand extends ConsoleCommand {
    @Parameters(paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Option(names = "--json", description = "Print the recommendation as JSON and nothing else.")
    private boolean json;

    @Option(
            names = "--full",
            description = "Print every safety sheet, all open questions and the reasons of the decisions too.")
    private boolean full;

    @Mixin
    private Reader reader = new Reader();

    @Override
    public Integer call() {
        FloorSurvey read = survey(survey);
        Advisor advisor = Advisor.standard();
        Recommendation recommendation = advisor.recommend(read);
        if (json) {
            console().print(Json.RECOMMENDATION.print(recommendation));
        } else {
            PlanText text = new PlanText(advisor.rulebase().cards());
            console().print(reader.texts().page(text.document(recommendation, full ? Detail.FULL : Detail.BRIEF)));
        }
        boolean planned = recommendation.status() == Status.PLANNED || recommendation.status() == Status.PROVISIONAL;
        return planned ? ExitCode.DONE : ExitCode.NO_PLAN;
    }
}
