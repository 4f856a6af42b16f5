package stoneprocess.core.log;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.internal.input.Printable;

/**
 * What a crew noted while it worked on one floor, in the order of the pages. Nothing of it is dropped: an entry that
 * cannot be used is named in the answer.
 *
 * @param title name of the job, 1 to 200 characters
 * @param entries the notes
 * @param extras fields of the user's own that the library carries along and never looks at: by their path in the log's
 *     JSON form, such as {@code x-crew} or {@code entries[3].x-photo}, their value as JSON
 */
public record JobLog(String title, List<Entry> entries, Map<String, String> extras) {
    /** Version of the log's JSON form. */
    public static final String FORMAT = "job-log/1";

    /** Zone name of readings and looks on the test area. */
    public static final String TEST_AREA = "test area";

    static final int LONGEST_NAME = 60;
    private static final int LONGEST_TITLE = 200;

    public JobLog {
        Refuse.nulls(JobLog.class, title, entries, extras);
        Printable.require("title", title, LONGEST_TITLE, "a title");
        entries = List.copyOf(entries);
        extras = Collections.unmodifiableMap(new LinkedHashMap<>(extras));
    }

    /** A log without fields of the user's own. */
    public JobLog(String title, List<Entry> entries) {
        this(title, entries, Map.of());
    }
}
