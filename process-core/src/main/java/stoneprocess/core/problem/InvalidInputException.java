package stoneprocess.core.problem;

import java.util.Objects;

/**
 * Something given to the library cannot be accepted. The message is one line that names the field, the value and what
 * would be accepted.
 */
public final class InvalidInputException extends StoneProcessException {
    private static final long serialVersionUID = 1L;
    private static final int LONGEST_VALUE = 60;

    private final String field;
    private final String value;
    private final String accepted;

    /**
     * @param field the path of the field, for example {@code site.area}
     * @param value the value as it was given
     * @param accepted what would be accepted, as the end of the phrase "accepted: ..."
     */
    public InvalidInputException(String field, String value, String accepted) {
        super(field + ": " + shorten(value) + " is not accepted; accepted: " + accepted);
        this.field = Objects.requireNonNull(field, "field");
        this.value = value;
        this.accepted = Objects.requireNonNull(accepted, "accepted");
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
        return new InvalidInputException(field.isEmpty() ? prefix : prefix + "." + field, value, accepted);
    }

    private static String shorten(String value) {
        String line = Objects.requireNonNull(value, "value")
                .replaceAll("[\\s\\p{C}\\p{Z}]+", " ")
                .strip();
        String cut = line.length() <= LONGEST_VALUE ? line : line.substring(0, LONGEST_VALUE) + "...";
        return "'" + cut + "'";
    }
}
