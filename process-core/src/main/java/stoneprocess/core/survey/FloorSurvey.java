package stoneprocess.core.survey;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.internal.input.Printable;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * What is known about one homogeneous area with its zones. Every field has an answer, unknown included; a building is a
 * list of surveys. Immutable and safe to share between threads.
 */
public final class FloorSurvey {
    /** Version of the survey's JSON form that is printed. */
    public static final String FORMAT = "floor-survey/2";

    /** Versions of the survey's JSON form that are read. A later one adds fields and words; it takes none away. */
    public static final List<String> READ_FORMATS = List.of(FORMAT, "floor-survey/1");

    /** The most zones of one survey. A floor of more is several floors, each with a survey of its own. */
    public static final int MOST_ZONES = 100;

    /** Most gloss readings in one survey. */
    public static final int MOST_READINGS = 10_000;

    private final String title;
    private final Map<SurveyField<?>, Object> known;
    private final List<Zone> zones;
    private final List<GlossReading> readings;
    private final Map<String, String> extras;

    private FloorSurvey(
            String title,
            Map<SurveyField<?>, Object> known,
            List<Zone> zones,
            List<GlossReading> readings,
            Map<String, String> extras) {
        this.title = title;
        this.known = known;
        this.zones = zones;
        this.readings = readings;
        this.extras = extras;
        requirePossible();
    }

    /**
     * A builder of a survey in which nothing is known yet.
     *
     * @param title a name for the floor, 1 to 200 characters
     * @throws InvalidInputException when the title is blank or too long
     */
    public static Builder builder(String title) {
        return new Builder(title);
    }

    /** A builder that starts from this survey. */
    public Builder toBuilder() {
        Builder builder = new Builder(title);
        builder.known.putAll(known);
        builder.zones.addAll(zones);
        builder.readings.addAll(readings);
        builder.extras.putAll(extras);
        return builder;
    }

    public String title() {
        return title;
    }

    /** False for a question that the place of this floor rules out: there is no room outdoors. */
    public boolean mayAnswer(SurveyField<?> field) {
        return field != SurveyField.ROOM_VOLUME
                || !answer(SurveyField.SETTING).value().equals(Optional.of(Setting.OUTDOORS));
    }

    /** The answer to a field; a field that was never set is unknown. */
    @SuppressWarnings("unchecked")
    public <T> Answer<T> answer(SurveyField<T> field) {
        Object value = known.get(field);
        return value == null ? Answer.unknown() : Answer.known((T) value);
    }

    public List<Zone> zones() {
        return zones;
    }

    /** True where the owner wants lanes and entrances worked alone, and some were surveyed. */
    public boolean isLanesAlone() {
        return answer(SurveyField.EXTENT).value().equals(Optional.of(Extent.LANES_ALONE))
                && zones.stream().anyMatch(zone -> zone.kind().isTrodden());
    }

    /** The area that is worked: the floor's, or that of its lanes and entrances; empty when the floor's is not known. */
    public Optional<Area> workedArea() {
        double share = isLanesAlone()
                ? zones.stream()
                                .filter(zone -> zone.kind().isTrodden())
                                .mapToDouble(zone -> zone.share().percent())
                                .sum()
                        / 100
                : 1;
        return answer(SurveyField.AREA).value().map(area -> new Area(share * area.squareMetres()));
    }

    public List<GlossReading> readings() {
        return readings;
    }

    /**
     * Fields of the user's own that the library carries along and never looks at: by their path in the survey's JSON form,
     * such as {@code x-job} or {@code zones[0].x-photo}, their value as JSON.
     */
    public Map<String, String> extras() {
        return extras;
    }

    /** Facts that cannot hold at one spot are refused, each with the field that would have to change. */
    private void requirePossible() {
        if (zones.size() > MOST_ZONES) {
            throw new InvalidInputException(
                    "zones",
                    Integer.toString(zones.size()),
                    "at most " + MOST_ZONES + " zones; survey a larger floor in parts");
        }
        if (readings.size() > MOST_READINGS) {
            throw new InvalidInputException(
                    "readings", Integer.toString(readings.size()), "at most " + MOST_READINGS + " readings");
        }
        double shares =
                zones.stream().mapToDouble(zone -> zone.share().percent()).sum();
        if (shares > 100.0001) {
            throw new InvalidInputException(
                    "zones.share", new Share(shares).print(), "shares that add up to 100 % at most");
        }
        Set<String> names = new HashSet<>();
        for (Zone zone : zones) {
            if (!names.add(zone.name())) {
                throw new InvalidInputException("zones.name", zone.name(), "a name of its own for each zone");
            }
        }
        for (GlossReading reading : readings) {
            if (!names.contains(reading.zone())) {
                throw new InvalidInputException(
                        "readings.zone",
                        reading.zone(),
                        names.isEmpty()
                                ? "a survey that has zones"
                                : "the name of a zone of this survey: " + String.join(", ", names));
            }
        }
        if (!mayAnswer(SurveyField.ROOM_VOLUME)
                && answer(SurveyField.ROOM_VOLUME).isKnown()) {
            throw new InvalidInputException(
                    SurveyField.ROOM_VOLUME.name(),
                    answer(SurveyField.ROOM_VOLUME).value().orElseThrow().print(),
                    "no room volume for a floor outdoors");
        }
        boolean glazed = answer(SurveyField.FACE).value().equals(Optional.of(Face.GLAZED));
        boolean scribed = answer(SurveyField.SCRIBER).value().equals(Optional.of(ScriberTest.SCRATCHED));
        boolean fizzing = answer(SurveyField.ACID_DROP).value().equals(Optional.of(AcidDrop.FIZZ_ON_SOLID));
        if (glazed && scribed && fizzing) {
            throw new InvalidInputException(
                    SurveyField.FACE.name(),
                    Face.GLAZED.key(),
                    "another face where a scriber scratches it and acid fizzes on the solid");
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FloorSurvey that
                && title.equals(that.title)
                && known.equals(that.known)
                && zones.equals(that.zones)
                && readings.equals(that.readings)
                && extras.equals(that.extras);
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, known, zones, readings, extras);
    }

    @Override
    public String toString() {
        return "FloorSurvey[" + title + ", " + known + ", " + zones + ", " + readings + "]";
    }

    /** Collects answers; {@link #build} checks them together. Not safe to share between threads. */
    public static final class Builder {
        private final String title;
        private final Map<SurveyField<?>, Object> known = new LinkedHashMap<>();
        private final List<Zone> zones = new ArrayList<>();
        private final List<GlossReading> readings = new ArrayList<>();
        private final Map<String, String> extras = new LinkedHashMap<>();

        private Builder(String title) {
            Printable.require("title", title, 200, "a title");
            this.title = title;
        }

        /**
         * Sets a field to a known answer.
         *
         * @throws InvalidInputException when the value lies outside what the field accepts
         */
        public <T> Builder set(SurveyField<T> field, T value) {
            put(field, value);
            return this;
        }

        /** Sets a field to an answer, which may be unknown. */
        public <T> Builder answer(SurveyField<T> field, Answer<T> answer) {
            answer.value().ifPresentOrElse(value -> put(field, value), () -> known.remove(field));
            return this;
        }

        /** Sets a field whose type is only known at run time; the value is checked all the same. */
        public Builder put(SurveyField<?> field, Object value) {
            Object checked = field.check(value);
            known.put(field, frozen(field, checked));
            return this;
        }

        public Builder unknown(SurveyField<?> field) {
            known.remove(field);
            return this;
        }

        public Builder zone(Zone zone) {
            zones.add(zone);
            return this;
        }

        /** Replaces all zones. */
        public Builder zones(Collection<Zone> replacement) {
            zones.clear();
            zones.addAll(replacement);
            return this;
        }

        /** Puts a zone where another stands; where that does not stand, nothing changes. */
        public Builder replace(Zone before, Zone after) {
            zones.replaceAll(zone -> zone.equals(before) ? after : zone);
            return this;
        }

        public Builder readings(List<GlossReading> replacements) {
            readings.clear();
            readings.addAll(replacements);
            return this;
        }

        /** Adds fields of the user's own, see {@link FloorSurvey#extras}. */
        public Builder extras(Map<String, String> added) {
            extras.putAll(added);
            return this;
        }

        /** Adds a reading. */
        public Builder reading(GlossReading reading) {
            readings.add(reading);
            return this;
        }

        /**
         * The survey.
         *
         * @throws InvalidInputException when facts cannot hold together
         */
        public FloorSurvey build() {
            Map<SurveyField<?>, Object> ordered = new LinkedHashMap<>();
            for (SurveyField<?> field : SurveyField.all()) {
                Object value = known.get(field);
                if (value != null) {
                    ordered.put(field, value);
                }
            }
            return new FloorSurvey(
                    title,
                    Collections.unmodifiableMap(ordered),
                    List.copyOf(zones),
                    List.copyOf(readings),
                    Collections.unmodifiableMap(new LinkedHashMap<>(extras)));
        }

        private static Object frozen(SurveyField<?> field, Object value) {
            if (field.kind() instanceof FieldKind.Choices choices) {
                return frozenSet(choices.type(), (Set<?>) value);
            }
            if (field.kind() instanceof FieldKind.Grades) {
                return ((List<?>) value)
                        .stream()
                                .map(AbrasiveGrade.class::cast)
                                .distinct()
                                .sorted(Comparator.comparing(AbrasiveGrade::bond)
                                        .thenComparingInt(AbrasiveGrade::number))
                                .toList();
            }
            return value;
        }

        @SuppressWarnings({"unchecked", "rawtypes"})
        private static Set<?> frozenSet(Class<? extends Enum<?>> type, Set<?> values) {
            EnumSet copy = EnumSet.noneOf((Class) type);
            values.forEach(value -> copy.add(((Class<? extends Enum>) type).cast(value)));
            return Collections.unmodifiableSet(copy);
        }
    }
}
