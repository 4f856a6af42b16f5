package stoneprocess.core.problem;

import java.util.Objects;

/**
 * Something given to the library cannot be accepted. The message is one line that names the field, the value and what
 * would be accepted, each cut to a length and without a character that could forge a line or move a cursor;
 * {@link #field()}, {@link #value()} and {@link #accepted()} are as they were given. Where a survey has several answers that
 * cannot be accepted, the first is thrown and {@linkplain #getSuppressed() carries} the others in the order of the form.
 */
public final class InvalidInputException extends StoneProcessException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_FIELD = 120;
    private static final int LONGEST_VALUE = 60;
    private static final int LONGEST_ACCEPTED = 1000;

    private final String field;
    private final String value;
    private final String accepted;
    private final String wrong;

    /**
     * @param field the path of the field, for example {@code site.area}
     * @param value the value as it was given
     * @param accepted what would be accepted, as the end of the phrase "accepted: ..."
     */
    public InvalidInputException(String field, String value, String accepted) {
        this(
                field,
                value,
                accepted,
                "'" + oneLine(Objects.requireNonNull(value, "value"), LONGEST_VALUE) + "' is not accepted");
    }

    private InvalidInputException(String field, String value, String accepted, String wrong) {
        super(oneLine(Objects.requireNonNull(field, "field"), LONGEST_FIELD) + ": " + wrong + "; accepted: "
                + oneLine(Objects.requireNonNull(accepted, "accepted"), LONGEST_ACCEPTED));
        this.field = field;
        this.value = value;
        this.accepted = accepted;
        this.wrong = wrong;
    }

    /** A problem whose message says what is wrong where there is no value to quote; the rest as in the constructor. */
    public static InvalidInputException saying(String field, String value, String accepted, String wrong) {
        return new InvalidInputException(
                field,
                Objects.requireNonNull(value, "value"),
                accepted,
                oneLine(Objects.requireNonNull(wrong, "wrong"), LONGEST_ACCEPTED));
    }

    public String field() {
        return field;
    }

    public String value() {
        return value;
    }

    public String accepted() {
        return accepted;
    }

    /** The same problem seen from further out: {@code prefix} is put before the field's path. */
    public InvalidInputException within(String prefix) {
        return new InvalidInputException(field.isEmpty() ? prefix : prefix + "." + field, value, accepted, wrong);
    }

    /** The same problem of a field that is called otherwise further out. */
    public InvalidInputException at(String path) {
        return new InvalidInputException(path, value, accepted, wrong);
    }

    /** One line of limited length, without a character that moves the cursor, turns the writing or hides. */
    private static String oneLine(String text, int longest) {
        String line = text.replaceAll("[\\s\\p{C}\\p{Z}]+", " ").strip();
        if (line.length() <= longest) {
            return line;
        }
        int end = Character.isHighSurrogate(line.charAt(longest - 1)) ? longest - 1 : longest;
        return line.substring(0, end) + "...";
    }
}
