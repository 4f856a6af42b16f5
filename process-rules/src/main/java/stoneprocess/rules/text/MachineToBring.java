package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.Objects;
import java.util.Optional;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.site.MachineHours;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.rules.text.document.Wording;

/** Which machine to bring that a crew does not have, and the likely hours with it. */
public final class MachineToBring {
    private MachineToBring() {}

    /** The machine that would save hours; on a floor too large for a walk-behind, the one that it takes. */
    public static Optional<Wording> of(Recommendation recommendation, PlannedJob planned) {
        Objects.requireNonNull(recommendation, "recommendation");
        Objects.requireNonNull(planned, "planned");
        if (!MachineHours.isTooLarge(planned)) {
            return MachineHours.worthFetching(recommendation, planned)
                    .map(best -> phrase("totals.bring.machine")
                            .with("machine", best.machine())
                            .with("hours", Words.hours(best.likely())));
        }
        Parameters parameters = planned.parameters();
        return Optional.of(MachineHours.wide(recommendation, planned)
                .map(likely -> phrase("totals.bring.wide")
                        .with("path", parameters.get("machine.wide.path", Length.class))
                        .with("hours", Words.hours(likely)))
                .orElseGet(() -> phrase("totals.bring.ask"))
                .with("area", parameters.get("machine.wide.from", Area.class)));
    }
}
