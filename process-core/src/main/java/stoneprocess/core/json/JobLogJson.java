package stoneprocess.core.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.gloss.Direction;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.gloss.Reading;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.log.Moment;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.TrackKind;

/**
 * Job logs as JSON. An entry is a moment and exactly one of work, look, reading, event and test area. What is not known
 * is left out or written {@code "unknown"}; an empty list of signs means that somebody looked for them. Printing and
 * parsing give back an equal log.
 */
public final class JobLogJson {
    private static final String WHAT = "job log";
    private static final String UNKNOWN = "unknown";
    private static final List<String> NOTED = List.of("work", "look", "reading", "event", "test-area");

    private JobLogJson() {}

    /**
     * Reads a log whose grades are of the usual sequence.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static JobLog read(String json) {
        return read(json, GritSequence.standard());
    }

    /**
     * Reads a log whose grades are of the given sequence.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static JobLog read(String json, GritSequence sequence) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT)), sequence));
    }

    /**
     * Prints a log, its grades as keys of their sequence; what is not known is left out.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(JobLog log) {
        return Jackson.with(() -> Tree.print(new Fields()
                .put("format", JobLog.FORMAT)
                .put("title", log.title())
                .put("entries", Fields.list(log.entries(), JobLogJson::tree))
                .tree()));
    }

    private static JobLog read(Node root, GritSequence sequence) {
        root.form(WHAT, JobLog.FORMAT).only(List.of("format", "title", "entries"));
        String title = root.get("title").text();
        List<Entry> entries = root.get("entries").list(entry -> entry(entry, sequence));
        return root.checkedParts(() -> new JobLog(title, entries));
    }

    private static Entry entry(Node node, GritSequence sequence) {
        node.only(Stream.concat(Stream.of("at"), NOTED.stream()).toList());
        Node moment = node.get("at");
        Moment at = Moment.parse(moment.text(), moment.path());
        List<String> noted =
                NOTED.stream().filter(name -> node.optional(name).isPresent()).toList();
        if (noted.size() != 1) {
            throw new InvalidInputException(
                    node.path(),
                    noted.isEmpty() ? "nothing but a moment" : String.join(" and ", noted),
                    "exactly one of " + String.join(", ", NOTED));
        }
        Node what = node.get(noted.get(0));
        return switch (noted.get(0)) {
            case "work" -> worked(at, what, sequence);
            case "look" -> looked(at, what);
            case "reading" -> new Entry.Read(at, reading(what));
            case "event" -> happened(at, what);
            default -> tried(at, what, sequence);
        };
    }

    private static Entry worked(Moment at, Node node, GritSequence sequence) {
        node.only(List.of("track", "grade", "passes", "machine", "added"));
        TrackKind track = node.get("track").term(TrackKind.class);
        AbrasiveGrade grade = grade(node, sequence);
        int passes = node.get("passes").integer();
        Optional<MachineClass> machine = known(node, "machine").map(known -> known.term(MachineClass.class));
        Optional<Mass> added = known(node, "added").map(known -> (Mass) known.quantity(Dimension.MASS));
        return node.checkedParts(() -> new Entry.Worked(at, track, grade, passes, machine, added));
    }

    private static Entry looked(Moment at, Node node) {
        node.only(List.of("zone", "face", "scratches", "film", "pad", "edges", "signs"));
        String zone = node.get("zone").text();
        FaceState face = node.get("face").term(FaceState.class);
        Optional<ScratchLook> scratches = known(node, "scratches").map(known -> known.term(ScratchLook.class));
        Optional<Presence> film = known(node, "film").map(known -> known.term(Presence.class));
        Optional<PadLook> pad = known(node, "pad").map(known -> known.term(PadLook.class));
        Optional<EdgeLook> edges = known(node, "edges").map(known -> known.term(EdgeLook.class));
        Optional<Set<Sign>> signs = known(node, "signs").map(known -> known.terms(Sign.class));
        return node.checkedParts(() -> new Entry.Looked(at, zone, face, scratches, film, pad, edges, signs));
    }

    private static Reading reading(Node node) {
        node.only(List.of("place", "zone", "direction", "geometry", "gloss", "state"));
        String place = node.get("place").text();
        String zone = node.get("zone").text();
        Direction direction = known(node, "direction")
                .map(known -> known.term(Direction.class))
                .orElse(Direction.NOT_NOTED);
        Geometry geometry = node.get("geometry").term(Geometry.class);
        Gloss gloss = (Gloss) node.get("gloss").quantity(Dimension.GLOSS);
        FaceState state = node.get("state").term(FaceState.class);
        return node.checkedParts(() -> new Reading(place, zone, direction, geometry, gloss, state));
    }

    private static Entry happened(Moment at, Node node) {
        node.only(List.of("kind", "zone", "state"));
        EventKind kind = node.get("kind").term(EventKind.class);
        String zone = node.get("zone").text();
        EventState state = node.get("state").term(EventState.class);
        return node.checkedParts(() -> new Entry.Happened(at, kind, zone, state));
    }

    private static Entry tried(Moment at, Node node, GritSequence sequence) {
        node.only(List.of("grade", "result", "signed"));
        AbrasiveGrade grade = grade(node, sequence);
        TrialResult result = node.get("result").term(TrialResult.class);
        boolean signed = node.get("signed").flag();
        return node.checkedParts(() -> new Entry.Tried(at, grade, result, signed));
    }

    private static AbrasiveGrade grade(Node node, GritSequence sequence) {
        Node grade = node.get("grade");
        return sequence.get(grade.text(), grade.path());
    }

    private static Optional<Node> known(Node node, String name) {
        return node.optional(name).filter(answer -> !answer.isText(UNKNOWN));
    }

    private static Object tree(Entry entry) {
        Fields fields = new Fields().put("at", entry.at().print());
        if (entry instanceof Entry.Worked worked) {
            fields.put("work", tree(worked));
        } else if (entry instanceof Entry.Looked looked) {
            fields.put("look", tree(looked));
        } else if (entry instanceof Entry.Read read) {
            fields.put("reading", tree(read.reading()));
        } else if (entry instanceof Entry.Happened happened) {
            fields.put("event", tree(happened));
        } else {
            fields.put("test-area", tree((Entry.Tried) entry));
        }
        return fields.tree();
    }

    private static Map<String, Object> tree(Entry.Worked worked) {
        return new Fields()
                .put("track", worked.track().key())
                .put("grade", worked.grade().key())
                .put("passes", worked.passes())
                .putIf("machine", worked.machine().map(Term::key))
                .putIf("added", worked.added().map(Fields::quantity))
                .tree();
    }

    private static Map<String, Object> tree(Entry.Looked looked) {
        return new Fields()
                .put("zone", looked.zone())
                .put("face", looked.face().key())
                .putIf("scratches", looked.scratches().map(Term::key))
                .putIf("film", looked.film().map(Term::key))
                .putIf("pad", looked.pad().map(Term::key))
                .putIf("edges", looked.edges().map(Term::key))
                .putIf("signs", looked.signs().map(Term::keys))
                .tree();
    }

    private static Map<String, Object> tree(Reading reading) {
        return new Fields()
                .put("place", reading.place())
                .put("zone", reading.zone())
                .put("direction", reading.direction().key())
                .put("geometry", reading.geometry().key())
                .put("gloss", Fields.quantity(reading.gloss()))
                .put("state", reading.state().key())
                .tree();
    }

    private static Map<String, Object> tree(Entry.Happened happened) {
        return new Fields()
                .put("kind", happened.kind().key())
                .put("zone", happened.zone())
                .put("state", happened.state().key())
                .tree();
    }

    private static Map<String, Object> tree(Entry.Tried tried) {
        return new Fields()
                .put("grade", tried.grade().key())
                .put("result", tried.result().key())
                .put("signed", tried.signed())
                .tree();
    }
}
