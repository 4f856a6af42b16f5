package stoneprocess.examples.command;

import picocli.CommandLine.IVersionProvider;
import stoneprocess.rules.Rulebase;

/** Version and hash of the rulebase, as they stand in every recommendation. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        Rulebase rulebase = Rulebase.standard();
        return new String[] {
            "stoneprocess " + rulebase.stamp().version(),
            "rulebase " + rulebase.stamp().hash()
        };
    }
}
