package stoneprocess.rules.text.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import stoneprocess.core.exposure.CircuitUse;
import stoneprocess.core.exposure.ExposureInput;
import stoneprocess.core.exposure.ExposureInputs;
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
import stoneprocess.rules.text.document.Section;

/** The sheet about anything that is held against its limit. */
public final class ExposureSheet {
    private ExposureSheet() {}

    /** The sheets of several questions, of which the last tells what holds for all. */
    public static List<Document> of(ExposureInputs inputs) {
        List<Document> sheets = new ArrayList<>();
        for (ExposureInput input : inputs.inputs()) {
            Document sheet = of(input);
            List<Section> sections = sheet.sections();
            boolean last = sheets.size() == inputs.inputs().size() - 1;
            sheets.add(
                    last
                            ? sheet
                            : new Document(
                                    sheet.title(),
                                    sheet.line(),
                                    sections.subList(0, sections.size() - 1),
                                    sheet.parameters()));
        }
        return sheets;
    }

    /** The sheet as a document, to be rendered by any page. */
    public static Document of(ExposureInput input) {
        if (input instanceof NoiseDay day) {
            return NoiseSheet.of(day.periods());
        }
        if (input instanceof RunningEngine engine) {
            return engine.petrolEngine()
                    .map(power -> CarbonMonoxideSheet.ofEngine(engine.room(), power, engine.running()))
                    .orElseGet(() -> CarbonMonoxideSheet.ofSource(
                            engine.room(), engine.source().orElseThrow(), engine.running()));
        }
        if (input instanceof SilicaTask task) {
            return SilicaSheet.of(task);
        }
        if (input instanceof PendulumReading test) {
            return SlipSheet.ofPendulum(test.pendulum());
        }
        if (input instanceof FrictionReading test) {
            return SlipSheet.ofFriction(test.friction(), test.place());
        }
        if (input instanceof RoughnessReading test) {
            return SlipSheet.ofRoughness(test.rz());
        }
        if (input instanceof RampReading test) {
            return SlipSheet.ofRamp(test.angle());
        }
        if (input instanceof SlurrySample sample) {
            return SlurrySheet.of(sample.ph());
        }
        if (input instanceof Lift lift) {
            return LiftingSheet.of(lift);
        }
        CircuitUse use = (CircuitUse) Objects.requireNonNull(input, "input");
        return CircuitSheet.of(use.volts(), use.breaker(), use.loads());
    }
}
