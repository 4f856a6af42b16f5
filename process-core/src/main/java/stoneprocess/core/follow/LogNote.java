package stoneprocess.core.follow;

import stoneprocess.core.internal.check.Refuse;

/**
 * What is to be said about one entry of the log.
 *
 * @param entry position of the entry in the log, counted from 0
 * @param kind what is to be said
 * @param effect what becomes of the entry
 */
public record LogNote(int entry, NoteKind kind, Effect effect) {
    public LogNote {
        Refuse.nulls(LogNote.class, kind, effect);
    }
}
