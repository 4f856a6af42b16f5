package stoneprocess.examples.command;

import picocli.CommandLine.Option;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Texts;

/** The option for the language of a text. */
class ReaderLanguage {
    @Option(
            names = "--language",
            paramLabel = "TAG",
            description = "Language of the text: en (default), or another whose phrases are on the class path.",
            defaultValue = "en")
    private String tag = "en";

    Texts texts() {
        return Texts.in(Language.parse(tag, "--language"));
    }
}
