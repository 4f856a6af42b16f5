package stoneprocess.rules.cases;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stoneprocess.core.decision.TrackKind;
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
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import tools.jackson.databind.JsonNode;

/** Reads the log of a case; the form is described beside the files. */
final class LogReader {
    private final JsonNode fields;

    private LogReader(JsonNode fields) {
        this.fields = fields;
    }

    static JobLog read(String title, JsonNode entries) {
        return new JobLog(title, entries.values().stream().map(LogReader::entry).toList());
    }

    private static Entry entry(JsonNode json) {
        Moment at = Moment.parse(json.get("at").asString(), "at");
        only(json, Set.of("at", "work", "look", "reading", "event", "test-area"));
        String kind = json.propertyNames().stream()
                .filter(name -> !name.equals("at"))
                .findFirst()
                .orElseThrow();
        LogReader reader = new LogReader(json.get(kind));
        return switch (kind) {
            case "work" -> reader.work(at);
            case "look" -> reader.look(at);
            case "reading" -> reader.reading(at);
            case "event" -> reader.event(at);
            default -> reader.tried(at);
        };
    }

    private Entry work(Moment at) {
        only(fields, Set.of("track", "grade", "passes", "machine", "added"));
        return new Entry.Worked(
                at,
                term("track", TrackKind.class),
                grade(),
                fields.get("passes").asInt(),
                known("machine", MachineClass.class),
                fields.has("added") ? Optional.of((Mass) quantity("added", Dimension.MASS)) : Optional.empty());
    }

    private Entry look(Moment at) {
        only(fields, Set.of("zone", "face", "scratches", "film", "pad", "edges", "signs"));
        return new Entry.Looked(
                at,
                text("zone"),
                term("face", FaceState.class),
                known("scratches", ScratchLook.class),
                known("film", Presence.class),
                known("pad", PadLook.class),
                known("edges", EdgeLook.class),
                fields.has("signs") ? Optional.of(signs(fields.get("signs"))) : Optional.empty());
    }

    private Entry reading(Moment at) {
        only(fields, Set.of("place", "zone", "direction", "geometry", "gloss", "state"));
        return new Entry.Read(
                at,
                new Reading(
                        text("place"),
                        text("zone"),
                        known("direction", Direction.class).orElse(Direction.NOT_NOTED),
                        term("geometry", Geometry.class),
                        (Gloss) quantity("gloss", Dimension.GLOSS),
                        term("state", FaceState.class)));
    }

    private Entry event(Moment at) {
        only(fields, Set.of("kind", "zone", "state"));
        return new Entry.Happened(at, term("kind", EventKind.class), text("zone"), term("state", EventState.class));
    }

    private Entry tried(Moment at) {
        only(fields, Set.of("grade", "result", "signed"));
        return new Entry.Tried(
                at,
                grade(),
                term("result", TrialResult.class),
                fields.get("signed").asBoolean());
    }

    static Set<Sign> signs(JsonNode list) {
        EnumSet<Sign> signs = EnumSet.noneOf(Sign.class);
        list.values().forEach(sign -> signs.add(Term.parse(Sign.class, sign.asString(), "signs")));
        return signs;
    }

    private AbrasiveGrade grade() {
        return GritSequence.standard().get(text("grade"), "grade");
    }

    private String text(String field) {
        return fields.get(field).asString();
    }

    private <E extends Enum<E> & Term> E term(String field, Class<E> type) {
        return Term.parse(type, text(field), field);
    }

    private <E extends Enum<E> & Term> Optional<E> known(String field, Class<E> type) {
        return fields.has(field) ? Optional.of(term(field, type)) : Optional.empty();
    }

    private Quantity quantity(String field, Dimension dimension) {
        JsonNode quantity = fields.get(field);
        return Quantity.of(
                quantity.get("value").decimalValue(),
                Unit.parse(dimension, quantity.get("unit").asString(), field));
    }

    private static void only(JsonNode node, Set<String> names) {
        List<String> other = node.propertyNames().stream()
                .filter(name -> !names.contains(name))
                .toList();
        if (!other.isEmpty()) {
            throw new IllegalArgumentException("The log has unknown fields " + other);
        }
    }
}
