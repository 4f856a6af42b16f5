package stoneprocess.examples.command;

import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.core.json.Form;
import stoneprocess.core.json.Json;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.rules.RulesJson;
import stoneprocess.rules.text.SurveyQuestions;

/** Prints the JSON schemas. */
@Command(name = "schema", description = "Prints the JSON schema of what goes in or comes out.")
final class SchemaCommand extends ConsoleCommand {
    /** For the help page. */
    static final class Names implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return names().iterator();
        }
    }

    @Parameters(
            paramLabel = "FORM",
            arity = "0..1",
            defaultValue = "survey",
            completionCandidates = Names.class,
            description = "survey (default), or one of ${COMPLETION-CANDIDATES}.")
    private String form = "survey";

    @Mixin
    private ReaderLanguage language = new ReaderLanguage();

    @Override
    public Integer call() {
        Form<?> named = named(form);
        console().print(named == Json.SURVEY ? new SurveyQuestions(language.texts()).schema() : named.schema());
        return ExitCode.DONE;
    }

    private static Stream<Form<?>> forms() {
        return Stream.concat(Json.all().stream(), RulesJson.all().stream());
    }

    private static List<String> names() {
        return forms().map(Form::name).toList();
    }

    private static Form<?> named(String name) {
        return forms().filter(form -> form.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException("FORM", name, "one of " + String.join(", ", names())));
    }
}
