package stoneprocess.rules.internal.engine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.problem.RulebaseException;

/**
 * Conditions and consequences of the rules of chapters, as rows of words and signs: the same for every layout, remark and
 * import. What the engine runs is compiled code, in which they can no longer be read. Scanned by hand, because every
 * start of the library does it.
 */
public final class WrittenRules {
    private static final String ID = "@ id ( \"";

    private final Map<String, String> bodies = new HashMap<>();

    private WrittenRules() {}

    /** The rules of the given chapters' texts. */
    public static WrittenRules of(List<String> chapters) {
        WrittenRules rules = new WrittenRules();
        chapters.forEach(rules::read);
        return rules;
    }

    /**
     * Conditions and consequence of a rule.
     *
     * @throws RulebaseException when no chapter has a rule of that id
     */
    public String body(String id) {
        String body = bodies.get(id);
        if (body == null) {
            throw new RulebaseException("Rule " + id + " stands in no chapter");
        }
        return body;
    }

    private void read(String chapter) {
        StringBuilder words = new StringBuilder();
        String id = "";
        int end;
        for (int start = 0; start < chapter.length(); start = end) {
            end = end(chapter, start);
            if (isBlank(chapter, start)) {
                continue;
            }
            if (isWord(chapter, start, end, "rule")) {
                words.setLength(0);
            } else if (isWord(chapter, start, end, "when")) {
                id = id(words.toString());
                words.setLength(0);
            } else if (isWord(chapter, start, end, "end")) {
                bodies.put(id, words.toString());
            } else {
                words.append(chapter, start, end).append(' ');
            }
        }
    }

    private static String id(String head) {
        int start = head.indexOf(ID);
        if (start < 0) {
            throw new RulebaseException("The rule " + head + "has no @id");
        }
        return head.substring(start + ID.length(), head.indexOf('"', start + ID.length()));
    }

    private static boolean isWord(String text, int start, int end, String word) {
        return end - start == word.length() && text.startsWith(word, start);
    }

    /** True for white space and for a remark. */
    private static boolean isBlank(String text, int start) {
        return Character.isWhitespace(text.charAt(start))
                || text.startsWith("//", start)
                || text.startsWith("/*", start);
    }

    /** Where the word, sign, text or remark ends that starts at a place. */
    private static int end(String text, int start) {
        char first = text.charAt(start);
        if (first == '"' || first == '\'') {
            return endOfText(text, start, first);
        }
        if (first == '/' && isBlank(text, start)) {
            boolean toLineEnd = text.charAt(start + 1) == '/';
            int close = text.indexOf(toLineEnd ? "\n" : "*/", start + 2);
            return close < 0 ? text.length() : close + (toLineEnd ? 1 : 2);
        }
        int end = start + 1;
        if (Character.isJavaIdentifierPart(first)) {
            while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
                end++;
            }
        }
        return end;
    }

    private static int endOfText(String text, int start, char quote) {
        for (int at = start + 1; at < text.length(); at++) {
            if (text.charAt(at) == '\\') {
                at++;
            } else if (text.charAt(at) == quote) {
                return at + 1;
            }
        }
        return text.length();
    }
}
