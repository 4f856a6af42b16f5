package stoneprocess.examples.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stoneprocess.rules.text.SurveyQuestions;

/** Prints the survey form. */
@Command(
        name = "form",
        description = "Prints the survey form: every field, its question, how to find out, and what it takes.")
final class FormCommand extends ConsoleCommand {
    @Mixin
    private ReaderLanguage language = new ReaderLanguage();

    @Override
    public Integer call() {
        console().print(language.texts().page(new SurveyQuestions(language.texts()).form()));
        return ExitCode.DONE;
    }
}
