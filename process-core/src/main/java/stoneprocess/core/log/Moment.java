package stoneprocess.core.log;

import java.util.Comparator;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stoneprocess.core.problem.InvalidInputException;

/**
 * A moment of the job, told by the day of the job and the time of day. Printed as {@code day 2, 14:30}.
 *
 * @param day day of the job, 1 to 9999
 * @param minute minute of that day, 0 to 1439
 */
public record Moment(int day, int minute) implements Comparable<Moment> {
    private static final int LAST_DAY = 9999;
    private static final int MINUTES = 24 * 60;
    private static final Pattern FORM = Pattern.compile("day ([1-9]\\d{0,3}), ([01]\\d|2[0-3]):([0-5]\\d)");
    private static final Comparator<Moment> ORDER =
            Comparator.comparingInt(Moment::day).thenComparingInt(Moment::minute);

    public Moment {
        if (day < 1 || day > LAST_DAY) {
            throw new InvalidInputException("day", Integer.toString(day), "1 to " + LAST_DAY);
        }
        if (minute < 0 || minute >= MINUTES) {
            throw new InvalidInputException("minute", Integer.toString(minute), "0 to " + (MINUTES - 1));
        }
    }

    /**
     * The moment printed in a text.
     *
     * @param field the field to name when the text has another form
     */
    public static Moment parse(String text, String field) {
        Matcher matcher = FORM.matcher(Objects.requireNonNull(text, "text"));
        if (!matcher.matches()) {
            throw new InvalidInputException(field, text, "a day of the job and a time, such as day 2, 14:30");
        }
        int minute = 60 * Integer.parseInt(matcher.group(2)) + Integer.parseInt(matcher.group(3));
        return new Moment(Integer.parseInt(matcher.group(1)), minute);
    }

    /** The form that {@link #parse} reads. */
    public String print() {
        return "day " + day + ", " + timeOfDay();
    }

    /** The time of the day, from {@code 00:00} to {@code 23:59}. */
    public String timeOfDay() {
        return twoDigits(minute / 60) + ":" + twoDigits(minute % 60);
    }

    private static String twoDigits(int number) {
        return (number < 10 ? "0" : "") + number;
    }

    @Override
    public int compareTo(Moment other) {
        return ORDER.compare(this, other);
    }
}
