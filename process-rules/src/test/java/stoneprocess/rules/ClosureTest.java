package stoneprocess.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The jars that a user of the library runs are those listed with licence and hash in {@code docs/reliability.md}. */
class ClosureTest {
    private static final Pattern ROW =
            Pattern.compile("\\| `[^:`]+:([^:`]+):([^:`]+)` \\| (?:Apache-2\\.0|MIT) \\| `([0-9a-f]{64})` \\|");

    @Test
    void what_a_user_runs_is_listed_with_licence_and_hash() throws Exception {
        Map<String, String> listed = new TreeMap<>();
        Matcher row = ROW.matcher(Files.readString(Path.of("..", "docs", "reliability.md")));
        while (row.find()) {
            listed.put(row.group(1) + "-" + row.group(2) + ".jar", row.group(3));
        }
        Map<String, String> resolved = new TreeMap<>();
        for (Path jar : jars()) {
            resolved.put(jar.getFileName().toString(), sha256(jar));
        }
        assertThat(resolved).isNotEmpty().isEqualTo(listed);
    }

    private static List<Path> jars() throws IOException {
        String path =
                Files.readString(Path.of("target", "run-time-closure.txt")).strip();
        return List.of(path.split(File.pathSeparator)).stream()
                .map(Path::of)
                .filter(Files::isRegularFile)
                .filter(jar -> !jar.getFileName().toString().startsWith("process-"))
                .toList();
    }

    private static String sha256(Path jar) throws IOException, NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(jar)));
    }
}
