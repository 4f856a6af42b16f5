package stoneprocess.rules.internal.classify;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Voltage;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.rules.feature.BuildUp;
import stoneprocess.rules.feature.Condition;
import stoneprocess.rules.feature.Decided;
import stoneprocess.rules.feature.Equipment;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.feature.Site;
import stoneprocess.rules.feature.Step;
import stoneprocess.rules.feature.StoneFacts;
import stoneprocess.rules.feature.StoneTraits;
import stoneprocess.rules.feature.Wishes;

/** What a field declares of its fact and its scale, against the records that rules read. */
class FieldFactsTest {
    private static final Parameters NUMBERS = Parameters.standard();

    private static final Map<String, Class<?>> RECORDS = Stream.of(
                    StoneFacts.class,
                    BuildUp.class,
                    Condition.class,
                    Site.class,
                    Equipment.class,
                    Wishes.class,
                    StoneTraits.class,
                    Decided.class,
                    OnSite.class)
            .flatMap(holder -> Stream.of(holder.getDeclaredClasses()))
            .collect(Collectors.toMap(Class::getSimpleName, type -> type));

    static List<SurveyField<?>> declared() {
        return SurveyField.all().stream()
                .filter(field -> field.fact().isPresent())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("declared")
    void a_declared_fact_has_a_record_over_the_classes_of_its_field(SurveyField<?> field) {
        Class<?> type = RECORDS.get(field.fact().orElseThrow());
        assertThat(type).as("record of %s", field).isNotNull();
        RecordComponent[] components = type.getRecordComponents();
        assertThat(components).hasSize(1);
        assertThat(components[0].getType()).isEqualTo(Set.class);
        ParameterizedType set = (ParameterizedType) components[0].getGenericType();
        Object classes = field.kind() instanceof FieldKind.Choice choice
                ? choice.type()
                : field.scale().orElseThrow().classes();
        assertThat(set.getActualTypeArguments()).containsExactly((java.lang.reflect.Type) classes);
        assertThat(Facts.fields(type)).containsExactly(field.name());
    }

    @Test
    void every_record_that_rules_may_read_is_a_line_of_the_table_and_every_line_a_record() {
        List<Class<?>> records = new ArrayList<>(RECORDS.values());
        records.add(Step.class);
        assertThat(Facts.types()).containsExactlyInAnyOrderElementsOf(records);
    }

    /** Written out, so that a field whose declaration is lost does not go unseen. */
    @Test
    void a_choice_is_read_as_it_stands_unless_another_answer_may_belie_it() {
        assertThat(SurveyField.all().stream()
                        .filter(field -> field.kind() instanceof FieldKind.Choice
                                && field.fact().isEmpty()))
                .containsExactlyInAnyOrder(
                        SurveyField.WATER_DROP,
                        SurveyField.CHIPS,
                        SurveyField.BACKING,
                        SurveyField.FACE,
                        SurveyField.SLOPE,
                        SurveyField.IDENTIFIED_BY,
                        SurveyField.HAZARDOUS_LAYER,
                        SurveyField.CEMENT_SURFACE,
                        SurveyField.HISTORIC,
                        SurveyField.EXTENT);
    }

    @Test
    void two_fields_never_declare_one_fact() {
        assertThat(declared().stream().map(SurveyField::fact).map(Optional::orElseThrow))
                .doesNotHaveDuplicates();
    }

    /** 230 V with the usual 80 %: 1.2, 1.5 and 4 kW are reached at 1200, 1500 and 4000 W / (230 V x 0.8). */
    @Test
    void the_limits_of_an_answer_behind_a_derived_figure_are_reckoned_back_from_the_figure() {
        FloorSurvey survey = FloorSurvey.builder("limits")
                .set(SurveyField.VOLTS, new Voltage(230))
                .set(SurveyField.DRY_REFERENCE, new Share(2))
                .set(SurveyField.MOISTURE, new Share(3))
                .set(SurveyField.THICKNESS, new Length(20))
                .build();
        assertThat(limits(SurveyField.AMPS, survey)).containsExactly(6.522, 8.152, 21.739);
        assertThat(limits(SurveyField.VOLTS, survey)).isEmpty();
        assertThat(limits(SurveyField.MOISTURE, survey)).containsExactly(2.5);
        assertThat(limits(SurveyField.DRY_REFERENCE, survey)).containsExactly(2.5);
        assertThat(limits(SurveyField.THICKNESS, survey)).containsExactly(4.8, 10.0, 2.4, 5.0);
        assertThat(limits(SurveyField.AREA, survey)).containsExactly(4.0, 10.0, 30.0);
        assertThat(limits(SurveyField.GOAL_GLOSS, survey)).containsExactly(15.0, 35.0, 60.0, 80.0);
        assertThat(limits(SurveyField.SETTING, survey)).isEmpty();
    }

    private static List<Double> limits(SurveyField<?> field, FloorSurvey survey) {
        return Facts.limits(field, survey, NUMBERS).stream()
                .map(limit -> Math.round(limit * 1000) / 1000.0)
                .toList();
    }
}
