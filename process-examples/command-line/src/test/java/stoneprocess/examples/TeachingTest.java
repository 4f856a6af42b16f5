package stoneprocess.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a trainer is shown is what is printed. */
class TeachingTest {
    private static final Path PAGE = Path.of("..", "docs", "teaching.md");

    @Test
    void every_command_of_the_page_prints_what_the_page_shows_below_it() throws IOException {
        List<String> commands = ShownCommands.requireShown(PAGE, "# Teaching", "end of the page");
        assertThat(commands).hasSizeGreaterThan(6);
        assertThat(commands.stream()
                        .filter(command -> command.contains("surveys/"))
                        .map(command -> command.replaceAll("(?s).*surveys/([a-z-]+)\\.json.*", "$1"))
                        .distinct())
                .as("floors")
                .hasSize(3);
    }
}
