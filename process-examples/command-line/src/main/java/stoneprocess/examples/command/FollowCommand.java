package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.FollowText;

/** Says what comes next on a job. */
@Command(
        name = "follow",
        description = "Plans the floor of a survey, reads the job log of the work, and prints the next move.")
final class FollowCommand extends ConsoleCommand {
    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(index = "1", paramLabel = "LOG", description = "A job log in JSON; - reads standard input.")
    private String log = "";

    @Option(names = "--json", description = "Print the next move as JSON and nothing else.")
    private boolean json;

    @Mixin
    private Reader reader = new Reader();

    @Override
    public Integer call() {
        JobFiles files = new JobFiles(console(), Advisor.standard());
        requireOneStandardInput(survey, log, "LOG", "the survey");
        Recommendation plan = files.plan(survey);
        JobLog read = files.log(log);
        if (JobFiles.cutsNothing(plan)) {
            return files.nothingToFollow(plan, json, reader.texts());
        }
        NextMove next = files.advisor().followUp(plan, read);
        console()
                .print(
                        json
                                ? Json.NEXT_MOVE.print(next)
                                : reader.texts()
                                        .page(new FollowText(files.advisor()
                                                        .rulebase()
                                                        .cards())
                                                .document(plan, read, next)));
        return ExitCode.DONE;
    }
}
