package stoneprocess.core.log;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;

/**
 * What a crew noted while it worked on one floor, in the order of the pages. Nothing of it is dropped: an entry that
 * cannot be used is named in the answer.
 *
 * @param title name of the job, 1 to 200 characters
 * @param entries the notes, at most {@link #MOST_ENTRIES}, and at most 1000 passes with one grit of one track
 * @param extras fields of the user's own that the library carries along and never looks at: by their path in the log's
 *     JSON form, such as {@code x-crew} or {@code entries[3].x-photo}, their value as JSON
 */
public record JobLog(String title, List<Entry> entries, Map<String, String> extras) {
    /** Version of the log's JSON form. */
    public static final String FORMAT = "job-log/1";

    /** Zone name of readings and looks on the test area. */
    public static final String TEST_AREA = "test area";

    /** Most notes in one log; a log of that length can be printed and read back. */
    public static final int MOST_ENTRIES = 20_000;

    static final int LONGEST_NAME = 60;
    private static final int MOST_PASSES = 1000;
    private static final int LONGEST_TITLE = 200;

    public JobLog {
        Refuse.nulls(JobLog.class, title, entries, extras);
        Printable.require("title", title, LONGEST_TITLE, "a title");
        entries = List.copyOf(entries);
        if (entries.size() > MOST_ENTRIES) {
            throw new InvalidInputException(
                    "entries", entries.size() + " entries", "at most " + MOST_ENTRIES + " entries");
        }
        requirePlausible(entries);
        extras = Collections.unmodifiableMap(new LinkedHashMap<>(extras));
    }

    private static void requirePlausible(List<Entry> entries) {
        Map<String, Integer> passes = new HashMap<>();
        for (Entry entry : entries) {
            if (entry instanceof Entry.Worked worked) {
                String step = worked.track().key() + "/" + worked.grade().key();
                int sum = passes.merge(step, worked.passes(), Integer::sum);
                if (sum > MOST_PASSES) {
                    throw new InvalidInputException(
                            "entries", sum + " passes at " + step, "at most " + MOST_PASSES + " passes at one grit");
                }
            }
        }
    }

    /** A log without fields of the user's own. */
    public JobLog(String title, List<Entry> entries) {
        this(title, entries, Map.of());
    }
}
