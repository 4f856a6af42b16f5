package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WaterLevel;
import stoneprocess.rules.text.document.Wording;

/** Words for the parts of a step. */
final class StepWords {
    private StepWords() {}

    static Wording weight(PlannedStep step) {
        Wording.Phrase weight = Wording.of(step.weight());
        return step.weight() == AddedWeight.NONE ? weight : weight.with("mass", step.addedMass());
    }

    static Wording water(TrackKind track, PlannedStep step) {
        Wording level = Wording.of(step.water());
        if (step.litresPerPass().isPresent()) {
            return phrase("step.litres")
                    .with("level", level)
                    .with("litres", step.litresPerPass().get());
        }
        return track == TrackKind.OPEN_FIELD && step.water() != WaterLevel.NONE
                ? phrase("step.no-area").with("level", level)
                : level;
    }

    /** Grade, machine, weight, water and passes. */
    static Wording inOneGo(TrackKind track, PlannedStep step) {
        return inOneGo(track, step, passes(step));
    }

    static Wording inOneGo(TrackKind track, PlannedStep step, Wording passes) {
        return phrase("follow.step")
                .with("grade", ValueWords.grade(step.grade()))
                .with("machine", step.machine())
                .with("weight", weight(step))
                .with("water", water(track, step))
                .with("passes", passes);
    }

    static Wording passes(PlannedStep step) {
        return phrase("step.passes-text")
                .with("low", step.passes().low())
                .with("high", step.passes().high());
    }
}
