package stoneprocess.rules.text;

import java.util.List;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Hazard;

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
                page.item(phrases.of(hazard) + doubt + " " + phrases.sentence(warning.precautions()) + " "
                        + phrases.get("warnings.limit-is") + " " + phrases.of(hazard, "limit") + " "
                        + phrases.get("warnings.decider-is") + " " + phrases.decides(warning));
                continue;
            }
            page.item(phrases.of(hazard) + doubt);
            page.labelled("      ", phrases.get("warnings.exposed"), phrases.of(hazard, "exposed"));
            page.labelled("      ", phrases.get("warnings.controls"), phrases.sentence(warning.precautions()));
            page.labelled("      ", phrases.get("warnings.limit"), phrases.of(hazard, "limit"));
            page.labelled("      ", phrases.get("warnings.decides"), phrases.decides(warning));
            page.labelled("      ", phrases.get("warnings.source"), sources(warning));
        }
    }

    private static String sources(SafetyWarning warning) {
        return String.join(
                "; ",
                warning.sources().stream()
                        .map(id -> Sources.standard().get(id).print())
                        .toList());
    }

    void close(RulebaseStamp rulebase) {
        page.heading(phrases.get("closing.heading"));
        page.line(phrases.get("closing.deference"));
        page.line(phrases.get("closing.rulebase") + " " + rulebase.version() + ", "
                + rulebase.hash().substring(0, 12) + ".");
    }
}
