package stoneprocess.examples.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import stoneprocess.core.problem.InvalidInputException;

/** The command line as a whole: its commands, its errors and its exit codes. */
@Command(
        name = "stoneprocess",
        description = "Plans the restoration of worn floors of natural stone, terrazzo and concrete.",
        footer = {
            "",
            "Exit codes: 0 planned (it may be provisional or cut nothing) or answered,",
            "3 refused, impasse, undecided, nothing to estimate or to follow or no way found,",
            "2 input not accepted, 1 an audit left something open or the output could not be written."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            PlanCommand.class,
            FollowCommand.class,
            DiagnoseCommand.class,
            EstimateCommand.class,
            QuoteCommand.class,
            ExposureCommand.class,
            GlossCommand.class,
            WhyCommand.class,
            WhyNotCommand.class,
            WhatIfCommand.class,
            HowToCommand.class,
            WhatElseCommand.class,
            CompareCommand.class,
            AuditCommand.class,
            RulebookCommand.class,
            FormCommand.class,
            SchemaCommand.class
        })
public final class FloorCommand implements Runnable {
    private static final int MOST_AT_ONCE = 4;

    private final Console console;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private FloorCommand(Console console) {
        this.console = console;
    }

    /**
     * Runs the command line.
     *
     * @return the exit code
     */
    public static int run(String[] arguments, InputStream in, PrintStream out, PrintStream err) {
        Console console = new Console(in, out, err);
        CommandLine line = new CommandLine(new FloorCommand(console));
        Conversions.register(line);
        line.setOut(new PrintWriter(out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(err, true, StandardCharsets.UTF_8));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setExpandAtFiles(false);
        line.setParameterExceptionHandler(FloorCommand::badCommandLine);
        line.setExecutionExceptionHandler((problem, command, parsed) -> {
            if (problem instanceof InvalidInputException) {
                return refused(command, problem);
            }
            throw problem;
        });
        int exit = line.execute(arguments);
        line.getOut().flush();
        if (console.isOutputLost()) {
            line.getErr()
                    .println(
                            "output: could not be written to its end; accepted: a file, disk or pipe that takes it all");
            return ExitCode.NOT_WRITTEN;
        }
        return exit;
    }

    Console console() {
        return console;
    }

    private static int badCommandLine(ParameterException problem, String[] arguments) {
        return oneLine(problem.getCommandLine(), problem.getMessage() + "; see --help");
    }

    /** One line for each of the first problems, then how many more there are. */
    private static int refused(CommandLine command, Exception problem) {
        int exit = oneLine(command, problem.getMessage());
        Throwable[] others = problem.getSuppressed();
        Stream.of(others).limit(MOST_AT_ONCE - 1).forEach(other -> oneLine(command, other.getMessage()));
        if (others.length >= MOST_AT_ONCE) {
            oneLine(command, "and " + (others.length - MOST_AT_ONCE + 1) + " more");
        }
        return exit;
    }

    private static int oneLine(CommandLine command, String message) {
        command.getErr().println(message.replaceAll("[\\s\\p{C}\\p{Z}]+", " "));
        return ExitCode.BAD_INPUT;
    }

    @Override
    public void run() {
        throw new ParameterException(
                Objects.requireNonNull(spec).commandLine(),
                "A command is missing: one of "
                        + String.join(", ", spec.subcommands().keySet()));
    }
}
