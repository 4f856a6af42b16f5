package stoneprocess.examples.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Where a coverage-guided fuzzer comes in, see {@code docs/reliability.md}. The property {@code fuzz.door} names one of
 * {@link HostileInput}; how often it was tried and how far it came is printed at the end.
 */
public final class Fuzz {
    private static final HostileInput DOOR =
            HostileInput.valueOf(System.getProperty("fuzz.door", "survey").toUpperCase(Locale.ROOT));
    private static long tried;
    private static long refused;
    private static long cameThrough;

    private Fuzz() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        tried++;
        try {
            if (DOOR.enter(bytes)) {
                cameThrough++;
            }
        } catch (InvalidInputException e) {
            refused++;
        }
    }

    public static void fuzzerTearDown() {
        System.out.println("fuzz " + DOOR + ": " + tried + " tried, " + refused + " refused, " + cameThrough
                + " came as far as the door leads");
    }

    /**
     * Fuzzes every door, one after another, each in a process of its own. What the fuzzer keeps is in the folder; an
     * input that broke a door lies there as {@code crash-}.
     *
     * @param arguments the folder, then the seconds for each door, then names of doors; all where none is named
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Path.of(arguments[0]).toAbsolutePath();
        Files.createDirectories(folder);
        Path words = Files.writeString(folder.resolve("words.txt"), HostileInput.words());
        List<String> named = List.of(arguments).subList(2, arguments.length);
        int broken = 0;
        for (HostileInput door : HostileInput.values()) {
            String name = door.name().toLowerCase(Locale.ROOT);
            if (named.isEmpty() || named.contains(name)) {
                Path inputs = folder.resolve(name);
                Files.createDirectories(inputs);
                for (byte[] seed : Seeds.of(door)) {
                    Files.write(inputs.resolve("seed-" + Integer.toHexString(Arrays.hashCode(seed))), seed);
                }
                broken += fuzz(name, inputs, words, arguments[1]) == 0 ? 0 : 1;
            }
        }
        if (broken > 0) {
            throw new IllegalStateException(broken + " doors broke; see " + folder);
        }
    }

    private static int fuzz(String door, Path inputs, Path words, String seconds)
            throws IOException, InterruptedException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-XX:+EnableDynamicAgentLoading",
                "-Dfuzz.door=" + door,
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + Fuzz.class.getName(),
                "--instrumentation_includes=stoneprocess.core.**:stoneprocess.rules.**:stoneprocess.examples.**",
                "--instrumentation_excludes=stoneprocess.rules.chapter.**",
                "--custom_hook_includes=stoneprocess.core.**",
                "--disabled_hooks=.*",
                "-max_total_time=" + seconds,
                "-max_len=400000",
                "-dict=" + words,
                "-artifact_prefix=" + inputs + "/",
                "-print_final_stats=1",
                inputs.toString());
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }
}
