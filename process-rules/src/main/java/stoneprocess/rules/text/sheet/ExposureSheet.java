package stoneprocess.rules.text.sheet;

import stoneprocess.core.exposure.CircuitUse;
import stoneprocess.core.exposure.ExposureInput;
import stoneprocess.core.exposure.FrictionReading;
import stoneprocess.core.exposure.Lift;
import stoneprocess.core.exposure.NoiseDay;
import stoneprocess.core.exposure.PendulumReading;
import stoneprocess.core.exposure.RampReading;
import stoneprocess.core.exposure.RoughnessReading;
import stoneprocess.core.exposure.RunningEngine;
import stoneprocess.core.exposure.SilicaTask;
import stoneprocess.core.exposure.SlurrySample;
import stoneprocess.rules.text.document.Document;
import stoneprocess.rules.text.document.Texts;

/** The sheet about anything that is held against its limit. */
public final class ExposureSheet {
    private final Texts texts;

    /** The sheet in the reader's language and units. */
    public ExposureSheet(Texts texts) {
        this.texts = texts;
    }

    /** The text. */
    public String render(ExposureInput input) {
        return texts.page(document(input));
    }

    /** The same as a document, to be rendered by any page. */
    public Document document(ExposureInput input) {
        if (input instanceof NoiseDay day) {
            return new NoiseSheet(texts).document(day.periods());
        }
        if (input instanceof RunningEngine engine) {
            CarbonMonoxideSheet sheet = new CarbonMonoxideSheet(texts);
            return engine.petrolEngine()
                    .map(power -> sheet.documentOfEngine(engine.room(), power, engine.running()))
                    .orElseGet(() -> sheet.documentOfSource(
                            engine.room(), engine.source().orElseThrow(), engine.running()));
        }
        if (input instanceof SilicaTask task) {
            return new SilicaSheet(texts).document(task);
        }
        if (input instanceof PendulumReading test) {
            return new SlipSheet(texts).documentOfPendulum(test.pendulum());
        }
        if (input instanceof FrictionReading test) {
            return new SlipSheet(texts).documentOfFriction(test.friction(), test.place());
        }
        if (input instanceof RoughnessReading test) {
            return new SlipSheet(texts).documentOfRoughness(test.rz());
        }
        if (input instanceof RampReading test) {
            return new SlipSheet(texts).documentOfRamp(test.angle());
        }
        if (input instanceof SlurrySample sample) {
            return new SlurrySheet(texts).document(sample.ph());
        }
        if (input instanceof Lift lift) {
            return new LiftingSheet(texts).document(lift);
        }
        CircuitUse use = (CircuitUse) input;
        return new CircuitSheet(texts).document(use.volts(), use.breaker(), use.loads());
    }
}
