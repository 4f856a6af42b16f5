package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.List;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Hazard;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for warnings, and what every page ends with. */
final class WarningWords {
    private WarningWords() {}

    static void warnings(Draft draft, List<SafetyWarning> warnings, Detail detail) {
        if (warnings.isEmpty()) {
            return;
        }
        draft.section("warnings.heading");
        for (SafetyWarning warning : warnings) {
            Hazard hazard = warning.hazard();
            if (detail == Detail.BRIEF) {
                draft.bullet(inOneGo(warning));
                continue;
            }
            draft.bullet(
                    hazard(warning),
                    label("warnings.exposed", Wording.of(hazard, "exposed")),
                    label("warnings.controls", sentences(warning.precautions())),
                    label("warnings.limit", Wording.of(hazard, "limit")),
                    label("warnings.decides", decides(warning)),
                    label("warnings.source", sources(warning)));
        }
    }

    /** A warning as one paragraph: what it is, what to do, the limit and who decides. */
    static Wording inOneGo(SafetyWarning warning) {
        return phrase("warnings.brief")
                .with("hazard", hazard(warning))
                .with("controls", sentences(warning.precautions()))
                .with("limit", Wording.of(warning.hazard(), "limit"))
                .with("decides", decides(warning));
    }

    private static Wording hazard(SafetyWarning warning) {
        Wording hazard = Wording.of(warning.hazard());
        return warning.certain() ? hazard : sentences(hazard, phrase("warnings.uncertain"));
    }

    /** Who decides about a hazard, as a sentence. */
    static Wording decides(SafetyWarning warning) {
        return phrase("warnings.decider")
                .with(
                        "roles",
                        Wording.list(
                                Joint.AND,
                                warning.decides().stream().map(Wording::of).toList()));
    }

    private static Wording sources(SafetyWarning warning) {
        return Wording.list(
                Joint.SEMICOLON,
                warning.sources().stream()
                        .map(id -> Wording.source(Sources.standard().get(id)))
                        .toList());
    }

    /** That this advises and others decide, and which rulebase made it. */
    static void close(Draft draft, RulebaseStamp rulebase) {
        draft.section("closing.heading").paragraph("closing.deference").paragraph(rulebase(rulebase));
    }

    static Wording rulebase(RulebaseStamp rulebase) {
        return phrase("closing.rulebase")
                .with("version", rulebase.version())
                .with("hash", rulebase.hash().substring(0, 12));
    }
}
