package stoneprocess.examples.command;

import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Schemas;
import stoneprocess.core.term.Term;

/** Prints the JSON schemas. */
@Command(
        name = "schema",
        description = "Prints the JSON schema of a survey, a job log or an answer.",
        mixinStandardHelpOptions = true)
final class SchemaCommand implements Callable<Integer> {
    private enum Form {
        SURVEY(Schemas::survey),
        RECOMMENDATION(Schemas::recommendation),
        JOB_LOG(Schemas::jobLog),
        NEXT_MOVE(Schemas::nextMove),
        DIAGNOSIS(Schemas::diagnosis),
        WHY(Schemas::why),
        WHY_NOT(Schemas::whyNot),
        DIFFERENCE(Schemas::difference),
        HOW_TO(Schemas::howTo),
        WHAT_ELSE(Schemas::whatElse),
        COMPARISON(Schemas::comparison),
        AUDIT(Schemas::audit);

        private final Supplier<String> schema;

        Form(Supplier<String> schema) {
            this.schema = schema;
        }

        /** As the command line says it. */
        @Override
        public String toString() {
            return Term.keyOf(name());
        }
    }

    private final Console console;

    @Parameters(
            paramLabel = "FORM",
            arity = "0..1",
            defaultValue = "survey",
            description = "survey (default), recommendation, job-log, next-move, diagnosis, why, why-not, difference,"
                    + " how-to, what-else, comparison or audit.")
    private Form form = Form.SURVEY;

    SchemaCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.print(form.schema.get());
        return ExitCode.DONE;
    }
}
