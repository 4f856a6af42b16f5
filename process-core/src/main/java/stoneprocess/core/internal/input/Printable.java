package stoneprocess.core.internal.input;

import stoneprocess.core.problem.InvalidInputException;

/**
 * Names and short texts of a user's own, which a page, a terminal or a log prints as they are. A printable text has
 * something to see in it, stands on one line, and holds no character that moves the cursor, turns the direction of
 * writing or hides: no control, format, line-separating, unassigned or private character and no half of a surrogate
 * pair. The joiners that scripts such as Persian need within a word are accepted.
 */
public final class Printable {
    private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
    private static final int ZERO_WIDTH_JOINER = 0x200D;

    /** Letters and symbols by their category, of which nothing is seen: the Hangul fillers and the empty Braille cell. */
    private static final String UNSEEN = "\u115F\u1160\u2800\u3164\uFFA0";

    private Printable() {}

    /**
     * Refuses a text that is not printable, or too long.
     *
     * @param field the path of the field
     * @param text the text
     * @param longest the most UTF-16 units that are accepted
     * @param what what the text is, with its article: "a title"
     * @throws InvalidInputException naming the field and what would be accepted
     */
    public static void require(String field, String text, int longest, String what) {
        if (text.length() > longest || !isPrintable(text)) {
            throw new InvalidInputException(
                    field,
                    text,
                    what + " of 1 to " + longest + " characters on one line, without control or invisible characters");
        }
    }

    private static boolean isPrintable(String text) {
        return text.codePoints().allMatch(Printable::isHarmless)
                && text.codePoints().anyMatch(Printable::isSeen);
    }

    private static boolean isHarmless(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            case Character.FORMAT -> isJoiner(character);
            default -> true;
        };
    }

    private static boolean isSeen(int character) {
        return !Character.isSpaceChar(character) && !isJoiner(character) && UNSEEN.indexOf(character) < 0;
    }

    private static boolean isJoiner(int character) {
        return character == ZERO_WIDTH_NON_JOINER || character == ZERO_WIDTH_JOINER;
    }
}
