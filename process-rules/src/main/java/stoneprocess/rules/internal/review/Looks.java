package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.feature.ZoneCoverage;

/**
 * The looks that count at the hold point: for each zone the latest since its track was worked last. Of several the worst
 * counts; what a counted look leaves open, or a worked track that nobody looked at, may be as bad or worse.
 */
final class Looks {
    private final FloorSurvey survey;
    private final Logbook book;
    private final boolean finished;
    private final Map<String, List<Noted<Entry.Looked>>> byZone = new LinkedHashMap<>();

    /**
     * @param finished true when the looks are at a finished floor of which no work is noted
     */
    Looks(FloorSurvey survey, Logbook book, Notes notes, boolean finished) {
        this.survey = survey;
        this.book = book;
        this.finished = finished;
        for (Noted<Entry.Looked> look : book.entries(Entry.Looked.class)) {
            sort(look, notes);
        }
        byZone.values().forEach(looks -> keepLatest(looks, notes));
        counted().stream()
                .filter(look -> look.entry().face() != FaceState.CLEAN_DRY)
                .forEach(look -> notes.add(look, NoteKind.JUDGED_WET, Effect.COUNTS_WITH_CARE));
    }

    private void sort(Noted<Entry.Looked> look, Notes notes) {
        String zone = look.entry().zone();
        if (book.notSurveyed(zone)) {
            notes.add(look, NoteKind.ZONE_NOT_SURVEYED, Effect.SET_ASIDE);
            return;
        }
        if (zone.equals(JobLog.TEST_AREA)) {
            return;
        }
        TrackWork work = book.work(book.trackOf(zone));
        Optional<Moment> worked = work.latest().map(TrackWork.Stage::last);
        Moment at = look.entry().at();
        if (work.stageAt(at) < 0 && !finished) {
            notes.add(look, NoteKind.BEFORE_WORK, Effect.SET_ASIDE);
        } else if (worked.isPresent() && at.compareTo(worked.get()) < 0) {
            notes.add(look, NoteKind.EARLIER_GRADE, Effect.SET_ASIDE);
        } else {
            byZone.computeIfAbsent(zone, name -> new ArrayList<>()).add(look);
        }
    }

    private static void keepLatest(List<Noted<Entry.Looked>> looks, Notes notes) {
        Moment latest = looks.stream()
                .map(look -> look.entry().at())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        looks.removeIf(look -> {
            boolean earlier = look.entry().at().compareTo(latest) < 0;
            if (earlier) {
                notes.add(look, NoteKind.LOOKED_AGAIN, Effect.SET_ASIDE);
            }
            return earlier;
        });
    }

    private List<Noted<Entry.Looked>> counted() {
        return byZone.values().stream().flatMap(List::stream).toList();
    }

    /** Lines are judged on a clean, dry surface only. */
    Set<ScratchLook> lines() {
        return worst(ScratchLook.class, Looks::linesOf);
    }

    private static Optional<ScratchLook> linesOf(Entry.Looked look) {
        return look.face() == FaceState.CLEAN_DRY ? look.scratches() : Optional.empty();
    }

    /** The worst lines in the latest looks at the grit before the one in work; unknown when no look tells. */
    Set<ScratchLook> linesBefore(TrackKind track) {
        int before = book.work(track).stages().size() - 2;
        Map<String, ScratchLook> latest = new LinkedHashMap<>();
        book.entries(Entry.Looked.class).stream()
                .map(Noted::entry)
                .filter(look -> before >= 0 && book.trackOf(look.zone()) == track)
                .filter(look -> book.work(track).stageAt(look.at()) == before)
                .forEach(look -> linesOf(look).ifPresent(lines -> latest.put(look.zone(), lines)));
        return latest.values().stream()
                .max(Comparator.naturalOrder())
                .<Set<ScratchLook>>map(EnumSet::of)
                .orElseGet(() -> EnumSet.allOf(ScratchLook.class));
    }

    Set<Presence> film() {
        return worst(Presence.class, Entry.Looked::film);
    }

    Set<PadLook> pad() {
        return told(PadLook.class, Entry.Looked::pad);
    }

    /** Taken from the looks that mention edges; a look at an edge that does not found it like the field. */
    Set<EdgeLook> edges() {
        Set<EdgeLook> told = told(EdgeLook.class, Entry.Looked::edges);
        boolean seen = told.size() == 1 || byZone.keySet().stream().noneMatch(book::isEdge);
        return seen ? told : EnumSet.of(EdgeLook.AS_FIELD);
    }

    Set<FaceState> face() {
        return worst(FaceState.class, look -> Optional.of(look.face()));
    }

    /** Whether a sign was seen: seen by any look, or looked for by all and not seen. */
    Set<Presence> sign(Sign sign) {
        return worst(
                Presence.class,
                look -> look.signs().map(signs -> signs.contains(sign) ? Presence.PRESENT : Presence.NONE));
    }

    /** All signs seen. */
    Set<Sign> signs() {
        EnumSet<Sign> seen = EnumSet.noneOf(Sign.class);
        counted().forEach(look -> look.entry().signs().ifPresent(seen::addAll));
        return seen;
    }

    ZoneCoverage coverage() {
        if (byZone.isEmpty()) {
            return ZoneCoverage.NONE;
        }
        boolean edgesTold = told(EdgeLook.class, Entry.Looked::edges).size() == 1;
        boolean all = survey.zones().stream()
                .map(Zone::name)
                .allMatch(zone -> byZone.containsKey(zone) || edgesTold && book.isEdge(zone));
        return all ? ZoneCoverage.ALL : ZoneCoverage.SOME;
    }

    /** The worst that was seen; where a part was not looked at or left open, that or worse. */
    private <E extends Enum<E>> Set<E> worst(Class<E> classes, Function<Entry.Looked, Optional<E>> answer) {
        List<Optional<E>> answers = answers(answer);
        List<E> seen = answers.stream().flatMap(Optional::stream).toList();
        boolean open = answers.isEmpty() || seen.size() < answers.size() || !everyTrackSeen();
        E[] all = classes.getEnumConstants();
        int from = seen.stream().mapToInt(Enum::ordinal).max().orElse(0);
        int to = open ? all.length - 1 : from;
        return EnumSet.copyOf(Arrays.asList(all).subList(from, to + 1));
    }

    /** The worst that was told by any look; unknown when none tells. */
    private <E extends Enum<E>> Set<E> told(Class<E> classes, Function<Entry.Looked, Optional<E>> answer) {
        return answers(answer).stream()
                .flatMap(Optional::stream)
                .max(Comparator.naturalOrder())
                .<Set<E>>map(EnumSet::of)
                .orElseGet(() -> EnumSet.allOf(classes));
    }

    private <E> List<Optional<E>> answers(Function<Entry.Looked, Optional<E>> answer) {
        return counted().stream().map(look -> answer.apply(look.entry())).toList();
    }

    /** The edges are looked at where the survey tells zones of them. */
    private boolean everyTrackSeen() {
        Set<TrackKind> due = EnumSet.noneOf(TrackKind.class);
        if (book.work(TrackKind.OPEN_FIELD).latest().isPresent()) {
            due.add(TrackKind.OPEN_FIELD);
        }
        boolean edgeZones =
                survey.zones().stream().map(Zone::name).anyMatch(zone -> book.trackOf(zone) == TrackKind.EDGE);
        if (edgeZones && book.work(TrackKind.EDGE).latest().isPresent()) {
            due.add(TrackKind.EDGE);
        }
        Set<TrackKind> seen = EnumSet.noneOf(TrackKind.class);
        byZone.keySet().forEach(zone -> seen.add(book.trackOf(zone)));
        return seen.containsAll(due);
    }
}
