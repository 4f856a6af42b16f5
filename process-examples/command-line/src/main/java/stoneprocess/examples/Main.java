package stoneprocess.examples;

import stoneprocess.examples.command.FloorCommand;

/** Entry point of the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.exit(FloorCommand.run(arguments, System.in, System.out, System.err));
    }
}
