package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NoteKind;

/** Collects what is to be said about entries. */
final class Notes {
    private static final Comparator<LogNote> ORDER =
            Comparator.comparingInt(LogNote::entry).thenComparing(LogNote::kind);

    private final List<LogNote> notes = new ArrayList<>();

    void add(Noted<?> entry, NoteKind kind, Effect effect) {
        notes.add(new LogNote(entry.position(), kind, effect));
    }

    List<LogNote> inOrder() {
        return notes.stream().distinct().sorted(ORDER).toList();
    }
}
