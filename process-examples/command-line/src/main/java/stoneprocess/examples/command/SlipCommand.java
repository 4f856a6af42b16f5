package stoneprocess.examples.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.sheet.SlipSheet;

/** Asks for the class of a measured slip value. */
@Command(
        name = "slip",
        description = "Class of a measured slip value, one of four kinds.",
        mixinStandardHelpOptions = true)
@SuppressWarnings("NullAway.Init")
final class SlipCommand implements Callable<Integer> {
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

    private final Console console;

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
    private ReaderUnits reader = new ReaderUnits();

    SlipCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (measured.friction.isPresent() != place.isPresent()) {
            throw new InvalidInputException(
                    "--place",
                    place.map(Term::key).orElse(""),
                    "with --dcof one of " + String.join(", ", Term.keys(List.of(SlipPlace.values())))
                            + "; without it nothing");
        }
        console.print(sheet(new SlipSheet(Texts.english().in(reader.units()))));
        return ExitCode.DONE;
    }

    private String sheet(SlipSheet slip) {
        if (measured.pendulum.isPresent()) {
            return slip.pendulum(measured.pendulum.get());
        }
        if (measured.roughness.isPresent()) {
            return slip.roughness(measured.roughness.get());
        }
        if (measured.friction.isPresent() && place.isPresent()) {
            return slip.friction(measured.friction.get(), place.get());
        }
        return slip.ramp(measured.ramp);
    }
}
