package stoneprocess.rules.text;

import stoneprocess.core.plan.Step;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.WaterLevel;

/** Words for the parts of a step. */
final class StepWords {
    private final UnitSystem units;
    private final Phrases phrases;

    StepWords(UnitSystem units, Phrases phrases) {
        this.units = units;
        this.phrases = phrases;
    }

    String grade(AbrasiveGrade grade) {
        return phrases.of(grade.bond()) + " " + grade.number();
    }

    String weight(Step step) {
        return step.weight() == AddedWeight.NONE
                ? phrases.of(step.weight())
                : String.format(phrases.of(step.weight()), units.print(step.addedMass()));
    }

    String water(TrackKind track, Step step) {
        String level = phrases.of(step.water());
        if (step.litresPerPass().isPresent()) {
            return level
                    + String.format(
                            phrases.get("step.litres"),
                            units.print(step.litresPerPass().get()));
        }
        return track == TrackKind.OPEN_FIELD && step.water() != WaterLevel.NONE
                ? level + phrases.get("step.no-area")
                : level;
    }

    String passes(Step step) {
        return String.format(
                phrases.get("step.passes-text"),
                step.passes().low(),
                step.passes().high());
    }
}
