package stoneprocess.rules.text;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stoneprocess.core.plan.Hazard;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.source.Sources;

/** The safety part and the close that every text about work on a floor carries. */
final class Cautions {
    private final Phrases phrases;
    private final Page page;

    Cautions(Phrases phrases, Page page) {
        this.phrases = phrases;
        this.page = page;
    }

    void warnings(List<SafetyWarning> warnings, Detail detail) {
        if (warnings.isEmpty()) {
            return;
        }
        page.heading(phrases.get("warnings.heading"));
        for (SafetyWarning warning : warnings) {
            Hazard hazard = warning.hazard();
            String doubt = warning.certain() ? "" : " " + phrases.get("warnings.uncertain");
            if (detail == Detail.BRIEF) {
                page.item(phrases.of(hazard) + doubt + " " + phrases.of(hazard, "controls") + " "
                        + phrases.get("warnings.limit-is") + " " + phrases.of(hazard, "limit") + " "
                        + phrases.get("warnings.decider-is") + " " + phrases.of(hazard, "decides"));
                continue;
            }
            page.item(phrases.of(hazard) + doubt);
            for (String part : List.of("exposed", "controls", "limit", "decides")) {
                page.labelled("      ", phrases.get("warnings." + part), phrases.of(hazard, part));
            }
            page.labelled("      ", phrases.get("warnings.source"), sources(warning));
        }
    }

    private String sources(SafetyWarning warning) {
        Set<String> ids = new TreeSet<>(warning.sources());
        ids.addAll(List.of(phrases.of(warning.hazard(), "limit-sources").split(" ")));
        List<String> sources =
                ids.stream().map(id -> Sources.standard().get(id).print()).toList();
        return String.join("; ", sources);
    }

    void close(RulebaseStamp rulebase) {
        page.heading(phrases.get("closing.heading"));
        page.line(phrases.get("closing.deference"));
        page.line(phrases.get("closing.rulebase") + " " + rulebase.version() + ", "
                + rulebase.hash().substring(0, 12) + ".");
    }
}
