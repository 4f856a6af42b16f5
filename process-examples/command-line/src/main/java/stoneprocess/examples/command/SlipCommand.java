package stoneprocess.examples.command;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.ExposureInput;
import stoneprocess.core.exposure.FrictionReading;
import stoneprocess.core.exposure.PendulumReading;
import stoneprocess.core.exposure.RampReading;
import stoneprocess.core.exposure.RoughnessReading;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.term.Term;

/** Asks for the class of a measured slip value. */
@Command(name = "slip", description = "Class of a measured slip value, one of four kinds.")
@SuppressWarnings("NullAway.Init")
final class SlipCommand extends ConsoleCommand {
    private static final class Measured {
        @Option(names = "--pendulum", paramLabel = "VALUE", description = "Pendulum, wet, as \"36 PTV\".")
        private Optional<PendulumValue> pendulum = Optional.empty();

        @Option(names = "--dcof", paramLabel = "VALUE", description = "Dynamic friction, as \"0.45 mu\".")
        private Optional<Friction> friction = Optional.empty();

        @Option(names = "--rz", paramLabel = "HEIGHT", description = "Roughness Rz, as \"15 um\".")
        private Optional<Length> roughness = Optional.empty();

        @Option(names = "--ramp", paramLabel = "ANGLE", description = "Shod ramp on oil, as \"12 deg\".")
        private Angle ramp;
    }

    @ArgGroup(multiplicity = "1")
    private Measured measured;

    @Option(
            names = "--place",
            paramLabel = "PLACE",
            description = {
                "With --dcof: interior-dry, interior-wet,",
                "interior-wet-plus, exterior-wet, oils-and-greases."
            })
    private Optional<SlipPlace> place = Optional.empty();

    @Mixin
    private ExposureAnswer answer = new ExposureAnswer();

    @Override
    public Integer call() {
        if (measured.friction.isPresent() != place.isPresent()) {
            throw new InvalidInputException(
                    "--place",
                    place.map(Term::key).orElse(""),
                    "with --dcof one of " + String.join(", ", Term.keys(List.of(SlipPlace.values())))
                            + "; without it nothing");
        }
        answer.print(console(), reading());
        return ExitCode.DONE;
    }

    private ExposureInput reading() {
        if (measured.pendulum.isPresent()) {
            return new PendulumReading(measured.pendulum.get());
        }
        if (measured.roughness.isPresent()) {
            return new RoughnessReading(measured.roughness.get());
        }
        if (measured.friction.isPresent() && place.isPresent()) {
            return new FrictionReading(measured.friction.get(), place.get());
        }
        return new RampReading(measured.ramp);
    }
}
