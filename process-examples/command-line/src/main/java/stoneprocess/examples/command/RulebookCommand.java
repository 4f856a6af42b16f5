package stoneprocess.examples.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.rulebook.RulebookPage;

/** Prints the rulebook or a part of it. */
@Command(name = "rulebook", description = "Prints every rule in plain words, with its reason and source, as Markdown.")
final class RulebookCommand extends ConsoleCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "CHAPTER|RULE-ID",
            description =
                    "survey, go-no-go, first-cut, sequence, equipment, water-and-passes, finishing, safety, review,"
                            + " signs, next, numbers, or the id of a rule, for example CUT-003.")
    private Optional<String> part = Optional.empty();

    @Mixin
    private ReaderLanguage language = new ReaderLanguage();

    @Override
    public Integer call() {
        Rulebase rulebase = Rulebase.standard();
        console()
                .print(part.map(name -> RulebookPage.part(language.texts(), rulebase, name))
                        .orElseGet(() -> RulebookPage.markdown(language.texts(), rulebase)));
        return ExitCode.DONE;
    }
}
