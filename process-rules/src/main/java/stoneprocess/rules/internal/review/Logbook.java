package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.HoldPoint;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.topic.TrackKind;

/** The entries in the order of their moments, and the work by track. Entries of one moment have no order. */
final class Logbook {
    private final Recommendation plan;
    private final List<Noted<Entry>> entries;
    private final Map<TrackKind, TrackWork> work = new EnumMap<>(TrackKind.class);
    private final Notes notes;

    Logbook(Recommendation plan, JobLog log, Notes notes) {
        this.plan = plan;
        this.notes = notes;
        List<Noted<Entry>> noted = new ArrayList<>();
        Optional<Moment> latest = Optional.empty();
        for (int i = 0; i < log.entries().size(); i++) {
            Noted<Entry> entry = new Noted<>(i, log.entries().get(i));
            Moment at = entry.entry().at();
            if (latest.isPresent() && at.compareTo(latest.get()) < 0) {
                notes.add(entry, NoteKind.OUT_OF_ORDER, Effect.TAKEN_IN_ORDER);
            } else {
                latest = Optional.of(at);
            }
            noted.add(entry);
        }
        noted.sort(Comparator.comparing((Noted<Entry> entry) -> entry.entry().at())
                .thenComparing(entry -> entry.entry().toString()));
        this.entries = List.copyOf(noted);
        for (TrackKind track : TrackKind.values()) {
            work.put(
                    track,
                    TrackWork.of(entries(Entry.Worked.class).stream()
                            .map(Noted::entry)
                            .filter(entry -> entry.track() == track)
                            .sorted(Comparator.comparing(Entry.Worked::at)
                                    .thenComparing(Entry.Worked::grade, AbrasiveGrade.IN_ORDER))
                            .toList()));
        }
        noteWork();
    }

    /** The entries of a kind in the order of their moments. */
    <E extends Entry> List<Noted<E>> entries(Class<E> kind) {
        return entries.stream()
                .filter(noted -> kind.isInstance(noted.entry()))
                .map(noted -> new Noted<>(noted.position(), kind.cast(noted.entry())))
                .toList();
    }

    TrackWork work(TrackKind track) {
        return work.get(track);
    }

    /** The grit worked last on any track; of several at one moment the one of the first track. */
    Optional<HoldPoint> holdPoint() {
        return work.entrySet().stream()
                .filter(entry -> entry.getValue().latest().isPresent())
                .max(Comparator.<Map.Entry<TrackKind, TrackWork>, Moment>comparing(
                                entry -> entry.getValue().latest().orElseThrow().last())
                        .thenComparing(Map.Entry::getKey, Comparator.reverseOrder()))
                .map(entry -> {
                    TrackWork.Stage stage = entry.getValue().latest().orElseThrow();
                    return new HoldPoint(entry.getKey(), stage.grade(), stage.passes());
                });
    }

    /** True for an entry that is not earlier than the last work; the entry's position as in the log. */
    boolean sinceLastWork(int position) {
        Optional<Moment> last = entries(Entry.Worked.class).stream()
                .map(noted -> noted.entry().at())
                .max(Comparator.naturalOrder());
        return entries.stream()
                .filter(noted -> noted.position() == position)
                .anyMatch(noted -> last.isEmpty() || noted.entry().at().compareTo(last.get()) >= 0);
    }

    /** The planned grits of a track, in order. */
    List<AbrasiveGrade> planned(TrackKind track) {
        return steps(track).stream().map(PlannedStep::grade).toList();
    }

    List<PlannedStep> steps(TrackKind track) {
        return plan.steps(track);
    }

    /** The track whose work a zone shows: its edges where they are worked apart, else the open field. */
    TrackKind trackOf(String zone) {
        boolean apart = !steps(TrackKind.EDGE).isEmpty()
                || work.get(TrackKind.EDGE).latest().isPresent();
        return apart && isEdge(zone) ? TrackKind.EDGE : TrackKind.OPEN_FIELD;
    }

    /** True for a zone of edges or stairs. */
    boolean isEdge(String zone) {
        return plan.survey().zones().stream()
                .filter(surveyed -> surveyed.name().equals(zone))
                .map(Zone::kind)
                .anyMatch(kind -> kind == ZoneKind.EDGE || kind == ZoneKind.STAIR);
    }

    /** True when the survey tells zones and this is none of them. */
    boolean notSurveyed(String zone) {
        List<Zone> zones = plan.survey().zones();
        return !zones.isEmpty()
                && !zone.equals(JobLog.TEST_AREA)
                && zones.stream().noneMatch(surveyed -> surveyed.name().equals(zone));
    }

    private void noteWork() {
        Map<TrackKind, AbrasiveGrade> before = new EnumMap<>(TrackKind.class);
        for (Noted<Entry.Worked> noted : entries(Entry.Worked.class)) {
            TrackKind track = noted.entry().track();
            AbrasiveGrade grade = noted.entry().grade();
            List<AbrasiveGrade> planned = planned(track);
            if (planned.isEmpty()) {
                notes.add(noted, NoteKind.TRACK_NOT_PLANNED, Effect.COUNTS_WITH_CARE);
            } else if (!planned.contains(grade) && !recut(planned.get(0), before.containsKey(track), grade)) {
                notes.add(noted, NoteKind.GRADE_NOT_IN_PLAN, Effect.COUNTS_WITH_CARE);
            }
            if (skipped(planned, Optional.ofNullable(before.get(track)), grade)) {
                notes.add(noted, NoteKind.GRADE_SKIPPED, Effect.COUNTS_WITH_CARE);
            }
            before.put(track, grade);
        }
    }

    /** A floor that was begun may be taken up again coarser than planned. */
    private static boolean recut(AbrasiveGrade start, boolean begun, AbrasiveGrade grade) {
        return begun && AbrasiveGrade.IN_ORDER.compare(grade, start) < 0;
    }

    private static boolean skipped(List<AbrasiveGrade> planned, Optional<AbrasiveGrade> before, AbrasiveGrade now) {
        return planned.stream()
                .filter(grade -> AbrasiveGrade.IN_ORDER.compare(grade, now) < 0)
                .anyMatch(grade -> before.map(last -> AbrasiveGrade.IN_ORDER.compare(grade, last) > 0)
                        .orElse(true));
    }
}
