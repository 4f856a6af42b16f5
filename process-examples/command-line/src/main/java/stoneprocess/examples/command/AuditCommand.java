package stoneprocess.examples.command;

import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.json.Json;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.audit.Audit;
import stoneprocess.rules.audit.AuditDepth;
import stoneprocess.rules.audit.AuditProgress;
import stoneprocess.rules.text.AuditText;

/** Looks for rules that disagree, repeat or never matter. */
@Command(
        name = "audit",
        description =
                "Looks through the rulebase for rules that disagree, repeat or never matter, topics that cannot be"
                        + " closed, and cards and numbers that nothing bears out. Ends with 1 when something is open.")
final class AuditCommand extends ConsoleCommand {
    @Option(names = "--json", description = "Prints JSON, with a survey that shows a finding where there is one.")
    private boolean json;

    @Option(names = "--quick", description = "Looks at the topics of a plan alone, not at those of the job log.")
    private boolean quick;

    @Mixin
    private ReaderLanguage language = new ReaderLanguage();

    @Override
    public Integer call() {
        Advisor advisor = Advisor.standard();
        AuditDepth depth = quick ? AuditDepth.RECOMMENDATION : AuditDepth.WHOLE;
        AuditReport report = Audit.of(advisor).run(depth, quick ? AuditProgress.silent() : progress());
        console()
                .print(
                        json
                                ? Json.AUDIT.print(report)
                                : language.texts()
                                        .unwrapped(
                                                new AuditText(advisor.rulebase().cards()).document(report)));
        return exitCode(report);
    }

    /** What a build is told. */
    static int exitCode(AuditReport report) {
        return report.open().isEmpty() ? ExitCode.DONE : ExitCode.FINDINGS;
    }

    private AuditProgress progress() {
        return (topic, done, of, combinations) ->
                console().err().printf(Locale.ROOT, "%d of %d: %s, %,d combinations%n", done, of, topic, combinations);
    }
}
