package stoneprocess.rules.space;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.Damage;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.Face;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.ScriberTest;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.Zone;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.testkit.FieldClasses;

/**
 * Surveys in which any three answers appear together in every combination of their classes, unknown included. A column
 * is a field of the survey whose classes the rules can tell apart, a kind of damage, or how damage is spread over the
 * floor. Immutable and safe to share between threads.
 *
 * <p>A glazed face that a scriber scratches and acid attacks cannot be, nor a room outdoors; a row that has such answers is
 * several surveys, each without one of them, so that nothing else of the row is lost.
 */
public final class CoveringSurveys {
    /** Name of the column that says how damage is spread. */
    public static final String SPREAD = "zones";

    /** How damage is spread. */
    public enum Spread implements Term {
        /** Over most of one field. */
        MANY,

        /** A few places in one field. */
        FEW,

        /** Along the edges of a sound field. */
        EDGES,

        /** Over a stair. */
        STAIR
    }

    /**
     * One column.
     *
     * @param name the answer, as questions name it
     * @param values the answers, one in each class; empty is unknown
     */
    public record Column(String name, List<Optional<Object>> values) {
        public Column {
            values = List.copyOf(values);
        }
    }

    private final List<Column> columns;
    private final List<int[]> rows;

    private CoveringSurveys(List<Column> columns) {
        this.columns = List.copyOf(columns);
        this.rows = CoveringArray.ofThree(
                columns.stream().mapToInt(column -> column.values().size()).toArray());
    }

    /** The surveys for the classes that the parameters make, with grades of the sequence. Takes some seconds. */
    public static CoveringSurveys of(Parameters parameters, GritSequence sequence) {
        return of(parameters, sequence, Forgetting.names());
    }

    /** The same over some of the answers only; the others are those of an unremarkable floor. */
    public static CoveringSurveys of(Parameters parameters, GritSequence sequence, List<String> names) {
        FieldClasses classes = new FieldClasses(parameters, sequence);
        FloorSurvey base = Unremarkable.floor().build();
        List<Column> columns = new ArrayList<>();
        for (SurveyField<?> field : SurveyField.all()) {
            List<Object> values = classes.of(field, base);
            if (!values.isEmpty() && names.contains(field.name())) {
                columns.add(column(field.name(), values));
            }
        }
        for (DamageKind kind : DamageKind.values()) {
            if (names.contains(Facts.damage(kind))) {
                columns.add(column(Facts.damage(kind), List.copyOf(kind.terms())));
            }
        }
        columns.add(new Column(
                SPREAD, Stream.of(Spread.values()).map(Optional::<Object>of).toList()));
        return new CoveringSurveys(columns);
    }

    private static Column column(String name, List<?> values) {
        List<Optional<Object>> all = new ArrayList<>();
        values.forEach(value -> all.add(Optional.of(value)));
        all.add(Optional.empty());
        return new Column(name, all);
    }

    public List<Column> columns() {
        return columns;
    }

    /** How many rows there are; a row is one survey, seldom several. */
    public int size() {
        return rows.size();
    }

    /** The surveys of a row, counted from zero. */
    public List<FloorSurvey> surveys(int row) {
        Map<String, Optional<Object>> answers = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            answers.put(column.name(), column.values().get(rows.get(row)[i]));
        }
        return surveys(answers);
    }

    private static List<FloorSurvey> surveys(Map<String, Optional<Object>> answers) {
        List<SurveyField<?>> clash = clash(answers);
        if (clash.isEmpty()) {
            return List.of(survey(answers));
        }
        List<FloorSurvey> surveys = new ArrayList<>();
        for (SurveyField<?> field : clash) {
            Map<String, Optional<Object>> less = new LinkedHashMap<>(answers);
            less.put(field.name(), Optional.empty());
            surveys.addAll(surveys(less));
        }
        return surveys;
    }

    /** Fields whose answers cannot all be; none when all of them can. */
    private static List<SurveyField<?>> clash(Map<String, Optional<Object>> answers) {
        if (is(answers, SurveyField.FACE, Face.GLAZED)
                && is(answers, SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                && is(answers, SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)) {
            return List.of(SurveyField.FACE, SurveyField.SCRIBER, SurveyField.ACID_DROP);
        }
        boolean room = answers.getOrDefault(SurveyField.ROOM_VOLUME.name(), Optional.empty())
                .isPresent();
        return room && is(answers, SurveyField.SETTING, Setting.OUTDOORS)
                ? List.of(SurveyField.SETTING, SurveyField.ROOM_VOLUME)
                : List.of();
    }

    private static boolean is(Map<String, Optional<Object>> answers, SurveyField<?> field, Object value) {
        return Optional.of(Optional.of(value)).equals(Optional.ofNullable(answers.get(field.name())));
    }

    private static FloorSurvey survey(Map<String, Optional<Object>> answers) {
        FloorSurvey.Builder builder = Unremarkable.floor();
        for (SurveyField<?> field : SurveyField.all()) {
            Optional<Object> answer = answers.get(field.name());
            if (answer != null) {
                builder.unknown(field);
                answer.ifPresent(value -> builder.put(field, value));
            }
        }
        Spread spread = (Spread) answers.get(SPREAD).orElseThrow();
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        Map<DamageKind, Damage> sound = new EnumMap<>(DamageKind.class);
        for (DamageKind kind : DamageKind.values()) {
            sound.put(kind, Damage.none(kind));
            Optional<Object> look = answers.getOrDefault(Facts.damage(kind), Optional.of(kind.none()));
            look.map(term -> (Term) term).ifPresent(term -> damages.put(kind, damage(kind, term, spread)));
        }
        return builder.zones(zones(spread, damages, sound)).build();
    }

    private static List<Zone> zones(Spread spread, Map<DamageKind, Damage> damages, Map<DamageKind, Damage> sound) {
        return switch (spread) {
            case MANY, FEW -> List.of(new Zone(spread.key(), ZoneKind.FIELD, new Share(100), damages));
            case STAIR -> List.of(new Zone(spread.key(), ZoneKind.STAIR, new Share(100), damages));
            case EDGES ->
                List.of(
                        new Zone(spread.key(), ZoneKind.EDGE, new Share(20), damages),
                        new Zone("field", ZoneKind.FIELD, new Share(80), sound));
        };
    }

    private static Damage damage(DamageKind kind, Term look, Spread spread) {
        return look.equals(kind.none())
                ? Damage.none(kind)
                : Damage.seen(kind, look, new Share(spread == Spread.FEW ? 2 : 60));
    }
}
