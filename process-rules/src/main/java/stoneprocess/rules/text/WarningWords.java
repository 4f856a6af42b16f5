package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Draft.label;
import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.List;
import java.util.stream.Stream;
import stoneprocess.core.plan.Question;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.plan.SafetyWarning;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for warnings, and what every page ends with. */
final class WarningWords {
    private WarningWords() {}

    /**
     * The safety of a plan by rank. In brief: what stops the work at length, then a line for what this floor adds and for
     * what every wet job has, then the questions behind what is only not yet checked. In full: every sheet.
     */
    static void warnings(Draft draft, Recommendation recommendation, Detail detail) {
        List<SafetyWarning> warnings = recommendation.warnings();
        if (warnings.isEmpty()) {
            return;
        }
        draft.section("warnings.heading");
        if (detail == Detail.FULL) {
            Stream.of(HazardRank.values())
                    .flatMap(rank -> rank.of(warnings).stream())
                    .forEach(warning -> sheet(draft, warning));
            return;
        }
        draft.bullets(HazardRank.STOPS_THE_WORK.of(warnings), warning -> stating(warning, inOneGo(warning)));
        List<SafetyWarning> open = HazardRank.SETTLE_FIRST.of(warnings);
        if (!open.isEmpty()) {
            draft.bullet(phrase("warnings.settle-first").with("questions", questions(recommendation, open)));
            draft.bullets(
                    open,
                    warning -> phrase("warnings.settle")
                            .with("hazard", name(warning))
                            .with("how", Wording.of(warning.hazard(), "brief")));
        }
        rows(draft, HazardRank.ADDED_HERE.of(warnings));
        rows(draft, HazardRank.STANDING.of(warnings));
        List<SafetyWarning> unchecked = HazardRank.NOT_CHECKED.of(warnings);
        if (!unchecked.isEmpty()) {
            draft.bullet(phrase("warnings.not-checked").with("questions", questions(recommendation, unchecked)));
            rows(draft, unchecked);
        }
    }

    private static void rows(Draft draft, List<SafetyWarning> warnings) {
        warnings.forEach(warning -> draft.row(name(warning), Wording.of(warning.hazard(), "brief")));
    }

    private static void sheet(Draft draft, SafetyWarning warning) {
        Hazard hazard = warning.hazard();
        draft.bullet(
                stating(warning, hazard(warning)),
                label("warnings.exposed", Wording.of(hazard, "exposed")),
                label("warnings.controls", sentences(warning.precautions())),
                label("warnings.limit", Wording.of(hazard, "limit")),
                label("warnings.decides", decides(warning)),
                label("warnings.source", Wording.list(Joint.COMMA, warning.sources(), Wording::name)));
    }

    /** The sources that the sheets name by their ids, each once. */
    static void sources(Draft draft, List<SafetyWarning> warnings) {
        draft.list(
                "warnings.sources",
                warnings.stream()
                        .flatMap(warning -> warning.sources().stream())
                        .distinct()
                        .toList(),
                id -> phrase("warnings.source-of-id")
                        .with("id", id)
                        .with("source", Wording.source(Sources.standard().get(id))));
    }

    /** For each of the warnings the weightiest question that can settle it. */
    private static Wording questions(Recommendation recommendation, List<SafetyWarning> warnings) {
        List<Question> asked = warnings.stream()
                .flatMap(warning -> recommendation.questions().stream()
                        .filter(question -> question.rules().stream().anyMatch(warning.rules()::contains))
                        .limit(1))
                .distinct()
                .toList();
        return Wording.list(
                Joint.SENTENCES, asked, question -> FieldWords.question(recommendation.survey(), question.field()));
    }

    /** The hazards by name, with those marked that are only not yet checked. */
    static Wording names(List<SafetyWarning> warnings) {
        return Wording.list(Joint.COMMA, warnings, WarningWords::name);
    }

    private static Wording name(SafetyWarning warning) {
        return stating(warning, PlanWords.shortly(warning.hazard()));
    }

    private static Wording stating(SafetyWarning warning, Wording words) {
        return PlanWords.stating(
                StatedValue.ofFloor(Topics.WARNINGS, warning.hazard().key()), words);
    }

    /** What the hazards ahead add to those of a plan: new ones, and ones that are certain by now. */
    static void added(Draft draft, Recommendation plan, Recommendation ahead) {
        List<SafetyWarning> added = ahead.warnings().stream()
                .filter(warning -> plan.warnings().stream()
                        .noneMatch(planned ->
                                planned.hazard() == warning.hazard() && (planned.certain() || !warning.certain())))
                .toList();
        draft.list("warnings.added", added, warning -> stating(warning, inOneGo(warning)));
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
        return phrase("warnings.decider").with("roles", Wording.list(Joint.AND, warning.decides(), Wording::of));
    }

    /** That this advises and others decide, and which rulebase made it. */
    static void close(Draft draft, RulebaseStamp rulebase, Detail detail) {
        close(draft, detail == Detail.FULL ? "closing.deference" : "closing.brief", rulebase);
    }

    /** The same beside a plan, whose safety holds on. */
    static void closeBesidePlan(Draft draft, RulebaseStamp rulebase) {
        close(draft, "closing.beside-plan", rulebase);
    }

    private static void close(Draft draft, String deference, RulebaseStamp rulebase) {
        draft.section("closing.heading").paragraph(deference).paragraph(rulebase(rulebase));
    }

    static Wording rulebase(RulebaseStamp rulebase) {
        return phrase("closing.rulebase")
                .with("version", rulebase.version())
                .with("hash", rulebase.hash().substring(0, 12));
    }
}
