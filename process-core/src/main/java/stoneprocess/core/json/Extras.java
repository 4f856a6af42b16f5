package stoneprocess.core.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.problem.InvalidInputException;

/**
 * Fields of the user's own, whose names start with {@code x-}. A survey and a job log keep them as JSON text by their
 * path; all other forms read over them.
 */
final class Extras {
    static final String PREFIX = "x-";
    private static final Pattern NAME = Pattern.compile("x-[A-Za-z0-9_.-]{1,58}");
    private static final Pattern STEP = Pattern.compile("([^.\\[]+)|\\[(\\d+)]");

    private final String root;
    private final Map<String, String> kept = new LinkedHashMap<>();

    /** @param root path of the survey or log */
    Extras(String root) {
        this.root = root;
    }

    void keep(String objectPath, String name, Object value) {
        String path = Node.pathOf(objectPath, name);
        requireName(path, name);
        kept.put(root.isEmpty() ? path : path.substring(root.length() + 1), Tree.print(value, false));
    }

    private static void requireName(String path, String name) {
        if (!NAME.matcher(name).matches()) {
            throw new InvalidInputException(
                    path, "the field", "x- and 1 to 58 letters of a to z, digits, dots, hyphens or underscores");
        }
    }

    Map<String, String> kept() {
        return kept;
    }

    /** Puts them into a tree at their paths; what belonged to a part that is no longer there is left out. */
    static Map<String, Object> insert(@Nullable Object extras, Map<String, Object> tree) {
        Map<?, ?> byPath = extras instanceof Map<?, ?> kept ? kept : Map.of();
        byPath.forEach((kept, json) -> {
            String path = (String) kept;
            int at = path.startsWith(PREFIX) ? 0 : path.indexOf("." + PREFIX) + 1;
            requireName(path, path.substring(at));
            Map<String, Object> object = object(tree, path.substring(0, at));
            if (object != null) {
                object.put(path.substring(at), Tree.parse((String) json, path));
            }
        });
        return tree;
    }

    /** The object at a path; a section that was left out because it was empty is made. */
    @SuppressWarnings("unchecked")
    private static @Nullable Map<String, Object> object(Map<String, Object> tree, String path) {
        Object found = tree;
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            if (step.group(1) != null && found instanceof Map<?, ?>) {
                found = ((Map<String, Object>) found).computeIfAbsent(step.group(1), name -> new LinkedHashMap<>());
            } else if (step.group(2) != null && found instanceof List<?> members) {
                int index = Integer.parseInt(step.group(2));
                found = index < members.size() ? members.get(index) : null;
            } else {
                return null;
            }
        }
        return found instanceof Map<?, ?> ? (Map<String, Object>) found : null;
    }
}
