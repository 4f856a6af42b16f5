package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import stoneprocess.examples.command.FloorCommand;

/** Commands and their output as a page of Markdown shows them. */
final class ShownCommands {
    private static final String JAR = "stoneprocess.jar ";

    private ShownCommands() {}

    /** What is between the fences of a language, without the fences. */
    static List<String> blocks(String page, String language) {
        List<String> blocks = new ArrayList<>();
        String[] parts = page.split("```", -1);
        for (int i = 1; i < parts.length; i += 2) {
            int end = parts[i].indexOf('\n');
            if (parts[i].substring(0, end).equals(language)) {
                blocks.add(parts[i].substring(end + 1));
            }
        }
        return blocks;
    }

    /**
     * Runs every command of a part of a page and compares what it prints with the block below it. With
     * {@code -Dsamples.write} the page shows the output anew.
     *
     * @param from where the part begins
     * @param to what follows the part; the rest of the page when it has none
     * @return the commands
     */
    static List<String> requireShown(Path page, String from, String to) throws IOException {
        String part = part(Files.readString(page), from, to);
        List<String> commands = blocks(part, "sh");
        assertThat(blocks(part, "")).hasSameSizeAs(commands);
        for (int i = 0; i < commands.size(); i++) {
            String printed = run(commands.get(i), 0, 3);
            if (System.getProperty("samples.write") != null) {
                String frame = commands.get(i) + "```\n\n```\n";
                String all = Files.readString(page);
                String shown = blocks(part(all, from, to), "").get(i);
                Files.writeString(page, all.replace(frame + shown + "```", frame + printed + "```"));
            }
            String shown = blocks(part(Files.readString(page), from, to), "").get(i);
            assertThat(shown).as(commands.get(i)).isEqualTo(printed);
        }
        return commands;
    }

    private static String part(String page, String from, String to) {
        int start = page.indexOf(from);
        assertThat(start).as(from).isNotNegative();
        int end = page.indexOf(to, start + from.length());
        return page.substring(start, end < 0 ? page.length() : end);
    }

    /** What the command of a block prints; it must write no error and exit with one of the codes. */
    static String run(String block, Integer... exits) {
        String arguments = block.substring(block.indexOf(JAR) + JAR.length())
                .replace("\\\n", "")
                .replace("process-examples/", "")
                .strip();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = FloorCommand.run(
                words(arguments),
                InputStream.nullInputStream(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(err.toString(StandardCharsets.UTF_8)).as(block).isEmpty();
        assertThat(exit).as(block).isIn((Object[]) exits);
        return out.toString(StandardCharsets.UTF_8);
    }

    /** Words apart by spaces; what stands in quotes belongs to one word. */
    private static String[] words(String line) {
        return Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+")
                .matcher(line)
                .results()
                .map(found -> found.group().replace("\"", ""))
                .toArray(String[]::new);
    }
}
