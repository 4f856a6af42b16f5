package stoneprocess.examples.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A file of lines such as {@code name = value}. Empty lines and lines that begin with {@code #} are left out. Each name
 * stands once, and every name has to be asked for.
 */
final class Settings {
    private final String file;
    private final Map<String, String> values = new LinkedHashMap<>();
    private final List<String> asked = new ArrayList<>();

    private Settings(String file) {
        this.file = file;
    }

    /**
     * Reads a file's text.
     *
     * @param file what the file is called in messages
     */
    static Settings read(String file, String text) {
        Settings settings = new Settings(file);
        List<String> lines = text.lines().map(String::strip).toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            int equals = line.indexOf('=');
            String name = equals < 1 ? "" : line.substring(0, equals).strip();
            String value = line.substring(equals + 1).strip();
            if (name.isEmpty() || value.isEmpty()) {
                throw new InvalidInputException(file + ", line " + (i + 1), line, "name = value");
            }
            if (settings.values.put(name, value) != null) {
                throw new InvalidInputException(file + ", line " + (i + 1), name, "each name once");
            }
        }
        return settings;
    }

    Optional<String> get(String name) {
        asked.add(name);
        return Optional.ofNullable(values.get(name));
    }

    List<String> names() {
        return List.copyOf(values.keySet());
    }

    /** The path of a name in messages. */
    String path(String name) {
        return file + "." + name;
    }

    /** Refuses a file with names that nobody asked for. */
    void requireNoOthers() {
        for (String name : values.keySet()) {
            if (!asked.contains(name)) {
                throw new InvalidInputException(file, name, "one of " + String.join(", ", asked));
            }
        }
    }
}
