package stoneprocess.core.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Dimension;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.stone.Family;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

class SurveyFieldTest {
    static List<SurveyField<?>> fields() {
        return SurveyField.all();
    }

    static Stream<SurveyField<?>> measures() {
        return SurveyField.all().stream().filter(field -> field.kind() instanceof FieldKind.Measure);
    }

    @Test
    void the_table_lists_every_field_that_is_declared_once_and_in_order() {
        List<Object> declared = Arrays.stream(SurveyField.class.getDeclaredFields())
                .filter(field -> Modifier.isPublic(field.getModifiers()))
                .map(SurveyFieldTest::read)
                .toList();
        assertThat((List<?>) SurveyField.all()).isEqualTo(declared);
    }

    private static Object read(Field field) {
        try {
            return field.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("fields")
    void a_name_is_a_section_and_a_short_name_in_kebab_case(SurveyField<?> field) {
        assertThat(field.section()).matches("[a-z]+(-[a-z]+)*");
        assertThat(field.shortName()).matches("[a-z]+(-[a-z]+)*");
        assertThat(field.name()).isEqualTo(field.section() + "." + field.shortName());
        assertThat(SurveyField.named(field.name())).isSameAs(field);
    }

    @Test
    void fields_of_one_section_stand_together() {
        List<String> runs = SurveyField.all().stream().map(SurveyField::section).toList();
        assertThat(runs.stream().distinct().mapToInt(runs::lastIndexOf)).isSorted();
    }

    @Test
    void every_class_of_a_choice_is_a_term_with_a_key_of_its_own() {
        for (SurveyField<?> field : SurveyField.all()) {
            Class<? extends Enum<?>> type;
            if (field.kind() instanceof FieldKind.Choice choice) {
                type = choice.type();
            } else if (field.kind() instanceof FieldKind.Choices choices) {
                type = choices.type();
            } else {
                continue;
            }
            assertThat(Term.class).as(field.name()).isAssignableFrom(type);
            assertThat(type.getEnumConstants())
                    .as(field.name())
                    .hasSizeGreaterThan(1)
                    .extracting(constant -> ((Term) constant).key())
                    .doesNotHaveDuplicates()
                    .doesNotContain("unknown");
        }
    }

    @ParameterizedTest
    @MethodSource("measures")
    void a_measure_accepts_both_of_its_limits_and_nothing_beyond(SurveyField<?> field) {
        FieldKind.Measure measure = (FieldKind.Measure) field.kind();
        double low = measure.limits().low();
        double high = measure.limits().high();
        BigDecimal step = BigDecimal.ONE.movePointLeft(measure.dimension().decimals());
        assertThat(low).isLessThan(high);
        assertThat(accepts(field, BigDecimal.valueOf(low))).isTrue();
        assertThat(accepts(field, BigDecimal.valueOf(high))).isTrue();
        assertThat(accepts(field, BigDecimal.valueOf(high).add(step))).isFalse();
        if (low > 0) {
            assertThat(accepts(field, BigDecimal.valueOf(low).subtract(step))).isFalse();
        }
    }

    private static boolean accepts(SurveyField<?> field, BigDecimal value) {
        Dimension dimension = ((FieldKind.Measure) field.kind()).dimension();
        Quantity quantity = Quantity.of(value, dimension.unit());
        try {
            assertThat(field.check(quantity)).isEqualTo((Object) quantity);
            return true;
        } catch (InvalidInputException e) {
            assertThat(e.field()).isEqualTo(field.name());
            assertThat(e.value()).isEqualTo(quantity.print());
            assertThat(e.accepted())
                    .startsWith("a value from ")
                    .endsWith(dimension.unit().symbol());
            return false;
        }
    }

    @ParameterizedTest
    @MethodSource("fields")
    void a_value_of_another_type_is_refused_by_name_with_what_would_be_accepted(SurveyField<?> field) {
        for (Object wrong :
                new Object[] {new Mass(3), 3.5, Family.GRANITE, List.of("resin-800"), Set.of(Family.GRANITE)}) {
            assertThatThrownBy(() -> field.check(wrong))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith(field.name() + ": '")
                    .hasMessageMatching(".*accepted: (one of|a set of|a list of|a value from|a name of) ?.+");
        }
    }

    @Test
    void messages_say_what_a_field_accepts() {
        assertThatThrownBy(() -> SurveyField.ACID_DROP.check("fizz"))
                .hasMessage("stone.acid-drop: 'fizz' is not accepted; accepted: one of no-reaction, fizz-on-powder,"
                        + " fizz-on-solid");
        assertThatThrownBy(() -> SurveyField.AREA.check(new Length(3)))
                .hasMessage("site.area: '3 mm' is not accepted; accepted: a value from 0.1 to 1000000 m2");
        assertThatThrownBy(() -> SurveyField.MACHINES.check(Set.of(Presence.NONE)))
                .hasMessage("equipment.machines: 'NONE' is not accepted; accepted: a set of edge-tool, single-disc,"
                        + " planetary, burnisher, propane-machine, scrubber");
        assertThatThrownBy(() -> SurveyField.GRADES.check(List.of("resin-800")))
                .hasMessage("equipment.grades: 'resin-800' is not accepted; accepted: a list of grades");
        assertThatThrownBy(() -> SurveyField.STONE_NAME.check("moon-rock"))
                .hasMessageStartingWith("stone.name: 'moon-rock' is not accepted; accepted: one of marble, ");
    }

    @Test
    void a_value_of_the_right_kind_is_given_back_typed() {
        Area area = SurveyField.AREA.check(new Area(5));
        assertThat(area).isEqualTo(new Area(5));
        assertThat(SurveyField.MACHINES.check(EnumSet.of(MachineClass.SCRUBBER)))
                .containsExactly(MachineClass.SCRUBBER);
        assertThat(SurveyField.GRADES.check(GritSequence.standard().grades()))
                .isEqualTo(GritSequence.standard().grades());
        assertThat(SurveyField.STONE_NAME.check("gneiss")).isEqualTo("gneiss");
    }

    @Test
    void an_unknown_name_is_refused_with_the_known_ones() {
        assertThatThrownBy(() -> SurveyField.named("site.aera"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("field: 'site.aera' is not accepted; accepted: one of stone.name, ");
    }

    @ParameterizedTest
    @MethodSource("fields")
    void equipment_is_counted_and_the_owner_is_asked(SurveyField<?> field) {
        if (field.section().equals("equipment")) {
            assertThat(field.howFound()).isEqualTo(HowFound.COUNT);
        }
        if (field.section().equals("owner")) {
            assertThat(field.howFound()).isEqualTo(HowFound.ASK);
        }
    }

    /** Common practice: nobody makes another stone, another thickness or another past of a floor. */
    @ParameterizedTest
    @MethodSource("fields")
    void what_a_floor_is_nobody_changes(SurveyField<?> field) {
        switch (field.section()) {
            case "equipment" -> assertThat(field.changedBy()).isEqualTo(ChangedBy.CREW);
            case "owner" -> assertThat(field.changedBy()).isEqualTo(ChangedBy.OWNER);
            case "history" -> assertThat(field.changedBy()).isEqualTo(ChangedBy.NOBODY);
            case "stone" -> assertThat(field.changedBy().byPeople()).isEqualTo(field == SurveyField.IDENTIFIED_BY);
            default -> assertThat(field.changedBy()).isNotNull();
        }
        assertThat(SurveyField.THICKNESS.changedBy()).isEqualTo(ChangedBy.NOBODY);
        assertThat(SurveyField.HAZARDOUS_LAYER.changedBy()).isEqualTo(ChangedBy.NOBODY);
        assertThat(SurveyField.COATING.changedBy()).isEqualTo(ChangedBy.CREW);
        assertThat(SurveyField.CONSENT.changedBy()).isEqualTo(ChangedBy.OTHERS);
    }
}
