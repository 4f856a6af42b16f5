package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;
import static stoneprocess.rules.text.document.Wording.sentences;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.follow.LogNote;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.term.Term;
import stoneprocess.rules.text.document.Draft;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/** Words for the entries of a job log and for notes on them. */
final class LogWords {
    private LogWords() {}

    /** What is so of any sound log: a baseline, earlier grits, an earlier look. */
    private static final Set<NoteKind> OF_COURSE =
            EnumSet.of(NoteKind.BEFORE_WORK, NoteKind.EARLIER_GRADE, NoteKind.LOOKED_AGAIN);

    /** The zones of the floor that a log looks at or reads. */
    static Set<String> zonesJudged(JobLog log) {
        Set<String> zones = new LinkedHashSet<>();
        for (Entry entry : log.entries()) {
            if (entry instanceof Entry.Looked looked) {
                zones.add(looked.zone());
            } else if (entry instanceof Entry.Read read
                    && !read.reading().zone().equals(JobLog.TEST_AREA)) {
                zones.add(read.reading().zone());
            }
        }
        return zones;
    }

    /** Notes on entries that need a word; notes that say the same stand together. */
    static void notes(Draft draft, JobLog log, List<LogNote> all) {
        List<LogNote> notes =
                all.stream().filter(note -> !OF_COURSE.contains(note.kind())).toList();
        if (notes.isEmpty()) {
            return;
        }
        draft.section("follow.notes");
        Map<Wording, List<LogNote>> byWords = new LinkedHashMap<>();
        notes.forEach(note -> byWords.computeIfAbsent(
                        sentences(Wording.of(note.kind()), Wording.of(note.effect())), words -> new ArrayList<>())
                .add(note));
        byWords.forEach((words, same) -> draft.bullet(sentences(entries(log, same), words)));
    }

    /** People count entries from 1. */
    private static Wording entries(JobLog log, List<LogNote> notes) {
        if (notes.size() == 1) {
            Entry entry = entry(log, notes.get(0));
            return phrase("follow.entry")
                    .with("number", notes.get(0).entry() + 1)
                    .with("at", moment(entry.at()))
                    .with("entry", entry(entry));
        }
        List<Wording> entries = notes.stream()
                .<Wording>map(note -> phrase("follow.entry-of-several")
                        .with("number", note.entry() + 1)
                        .with("at", moment(entry(log, note).at())))
                .toList();
        return phrase("follow.entries").with("entries", Wording.list(Joint.COMMA, entries));
    }

    private static Wording moment(Moment at) {
        return phrase("follow.moment").with("day", at.day()).with("time", at.timeOfDay());
    }

    private static Entry entry(JobLog log, LogNote note) {
        if (note.entry() >= log.entries().size()) {
            throw new InvalidInputException(
                    "notes.entry",
                    Integer.toString(note.entry()),
                    "the position of an entry of this log, which has "
                            + log.entries().size());
        }
        return log.entries().get(note.entry());
    }

    private static Wording entry(Entry entry) {
        if (entry instanceof Entry.Worked worked) {
            return phrase("follow.entry-work")
                    .with("grade", ValueWords.grade(worked.grade()))
                    .with("track", ValueWords.track(worked.track()))
                    .with("passes", worked.passes());
        }
        if (entry instanceof Entry.Looked looked) {
            return look(looked);
        }
        if (entry instanceof Entry.Read read) {
            return phrase("follow.entry-reading")
                    .with("place", read.reading().place())
                    .with("zone", read.reading().zone())
                    .with("gloss", read.reading().gloss())
                    .with("angle", read.reading().geometry().degrees());
        }
        if (entry instanceof Entry.Happened happened) {
            return phrase("follow.entry-event")
                    .with("zone", happened.zone())
                    .with("event", happened.kind())
                    .with("state", happened.state());
        }
        Entry.Tried tried = (Entry.Tried) entry;
        return phrase(tried.signed() ? "follow.entry-trial-signed" : "follow.entry-trial")
                .with("grade", ValueWords.grade(tried.grade()))
                .with("result", tried.result());
    }

    private static Wording look(Entry.Looked looked) {
        List<Wording> seen = new ArrayList<>();
        seen.add(phrase("follow.entry-look").with("zone", looked.zone()));
        seen.add(Wording.of(looked.face()));
        Stream.of(looked.scratches(), looked.pad(), looked.edges())
                .flatMap(Optional::stream)
                .map(Term.class::cast)
                .forEach(look -> seen.add(Wording.of(look)));
        return Wording.list(Joint.COMMA, seen);
    }
}
