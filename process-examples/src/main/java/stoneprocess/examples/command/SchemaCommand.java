package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Schemas;

/** Prints the JSON schemas. */
@Command(
        name = "schema",
        description = "Prints the JSON schema of a survey or of a recommendation.",
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    private enum Form {
        SURVEY,
        RECOMMENDATION
    }

    private final Console console;

    @Parameters(
            paramLabel = "FORM",
            arity = "0..1",
            defaultValue = "survey",
            description = "survey (default) or recommendation.")
    private Form form = Form.SURVEY;

    SchemaCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.print(form == Form.SURVEY ? Schemas.survey() : Schemas.recommendation());
        return ExitCode.DONE;
    }
}
