package stoneprocess.examples.command;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.json.Json;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Sign;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.text.FollowText;

/** Traces signs of a fault to causes. */
@Command(
        name = "diagnose",
        description = "Plans the floor of a survey and traces signs of a fault to their causes.",
        footer = {
            "",
            "A SIGN is one of stray-scratches, swirls, stripes, orange-peel, pits, resin-smears, dull-lanes,"
                    + " dull-edges, frames, haze, halo-at-joints, dull-after-sealing, dull-after-cleaning,"
                    + " dull-matrix, flakes, stalled-gloss, low-without-lines, squeal, paste, coloured-streaks."
        })
final class DiagnoseCommand extends ConsoleCommand {
    @Parameters(index = "0", paramLabel = "SURVEY", description = "A survey in JSON; - reads standard input.")
    private String survey = "";

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "LOG",
            description = "A job log in JSON; - reads standard input. Without it the floor is taken as finished.")
    private Optional<String> log = Optional.empty();

    @Option(
            names = "--sign",
            paramLabel = "SIGN",
            description = "What was seen, heard or felt; may be repeated. Signs of the log's latest looks are added.")
    private List<Sign> signs = new ArrayList<>();

    @Option(names = "--json", description = "Print the diagnosis as JSON and nothing else.")
    private boolean json;

    @Mixin
    private Reader reader = new Reader();

    @Override
    public Integer call() {
        JobFiles files = new JobFiles(console(), Advisor.standard());
        log.ifPresent(name -> requireOneStandardInput(survey, name, "LOG", "the survey"));
        Recommendation plan = files.plan(survey);
        JobLog read =
                log.map(files::log).orElseGet(() -> new JobLog(plan.survey().title(), List.of()));
        if (JobFiles.cutsNothing(plan)) {
            return files.nothingToFollow(plan, json, reader.texts());
        }
        Set<Sign> asked = EnumSet.noneOf(Sign.class);
        asked.addAll(signs);
        Diagnosis diagnosis = files.advisor().diagnose(plan, asked, read);
        console()
                .print(
                        json
                                ? Json.DIAGNOSIS.print(diagnosis)
                                : reader.texts()
                                        .page(new FollowText(files.advisor()
                                                        .rulebase()
                                                        .cards())
                                                .document(plan, read, diagnosis)));
        return ExitCode.DONE;
    }
}
