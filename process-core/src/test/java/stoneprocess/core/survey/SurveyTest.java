package stoneprocess.core.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.gloss.Geometry;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;

class SurveyTest {
    private static final Share HALF = new Share(50);

    private static Zone zone(String name, double share) {
        return new Zone(name, ZoneKind.FIELD, new Share(share), Map.of());
    }

    @Test
    void a_field_that_was_never_set_is_unknown() {
        FloorSurvey survey = FloorSurvey.builder("t").build();
        for (SurveyField<?> field : SurveyField.all()) {
            assertThat(survey.answer(field).isKnown()).as(field.name()).isFalse();
        }
    }

    @Test
    void a_field_can_be_forgotten_again_and_the_original_stays_as_it_was() {
        FloorSurvey known =
                FloorSurvey.builder("t").set(SurveyField.AREA, new Area(5)).build();
        FloorSurvey forgotten = known.toBuilder().unknown(SurveyField.AREA).build();
        assertThat(known.answer(SurveyField.AREA).value()).contains(new Area(5));
        assertThat(forgotten).isEqualTo(FloorSurvey.builder("t").build()).isNotEqualTo(known);
    }

    @Test
    void the_order_in_which_answers_are_given_makes_no_difference() {
        FloorSurvey one = FloorSurvey.builder("t")
                .set(SurveyField.AREA, new Area(5))
                .set(SurveyField.COLOUR, StoneColour.PALE)
                .build();
        FloorSurvey other = FloorSurvey.builder("t")
                .set(SurveyField.COLOUR, StoneColour.PALE)
                .set(SurveyField.AREA, new Area(5))
                .build();
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other).hasToString(other.toString());
    }

    @Test
    void a_set_that_the_caller_changes_later_does_not_change_the_survey() {
        Set<MachineClass> machines = EnumSet.of(MachineClass.SINGLE_DISC);
        FloorSurvey survey =
                FloorSurvey.builder("t").set(SurveyField.MACHINES, machines).build();
        machines.add(MachineClass.PLANETARY);
        assertThat(survey.answer(SurveyField.MACHINES).value()).contains(Set.of(MachineClass.SINGLE_DISC));
    }

    @Test
    void values_outside_a_fields_limits_are_refused_by_name() {
        assertThatThrownBy(() -> FloorSurvey.builder("t").set(SurveyField.AREA, new Area(0)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("site.area: '0 m2'");
        assertThatThrownBy(() -> FloorSurvey.builder("t").put(SurveyField.AREA, new Length(3)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("a value from 0.1 to 1000000 m2");
        assertThatThrownBy(() -> FloorSurvey.builder("t").set(SurveyField.STONE_NAME, "moon rock"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("moon rock");
    }

    @Test
    void unknown_and_none_are_two_answers() {
        FloorSurvey unknown = FloorSurvey.builder("t").build();
        FloorSurvey none =
                FloorSurvey.builder("t").set(SurveyField.MACHINES, Set.of()).build();
        assertThat(unknown.answer(SurveyField.MACHINES)).isEqualTo(Answer.unknown());
        assertThat(none.answer(SurveyField.MACHINES)).isEqualTo(Answer.known(Set.of()));
        assertThat(none).isNotEqualTo(unknown);
    }

    @Test
    void an_answer_can_be_set_to_known_and_to_unknown() {
        FloorSurvey.Builder builder = FloorSurvey.builder("t").answer(SurveyField.AREA, Answer.known(new Area(5)));
        assertThat(builder.build()
                        .answer(SurveyField.AREA)
                        .map(Area::squareMetres)
                        .value())
                .contains(5.0);
        assertThat(builder.answer(SurveyField.AREA, Answer.unknown()).build())
                .isEqualTo(FloorSurvey.builder("t").build());
        assertThat(Answer.<Area>unknown().map(Area::squareMetres).isKnown()).isFalse();
    }

    @Test
    void a_survey_is_built_again_from_itself() {
        FloorSurvey survey = FloorSurvey.builder("t")
                .set(SurveyField.AREA, new Area(5))
                .zone(zone("a", 60))
                .zone(zone("b", 40))
                .reading(new GlossReading("b", Geometry.DEG_60, new Gloss(12), SurfaceState.CLEAN_DRY))
                .build();
        assertThat(survey.toBuilder().build()).isEqualTo(survey).hasSameHashCodeAs(survey);
        assertThat(survey.toBuilder().zones(List.of(zone("b", 10))).build().zones())
                .containsExactly(zone("b", 10));
        assertThat(survey.zones()).hasSize(2);
        assertThat(survey.title()).isEqualTo("t");
        assertThat(survey.readings()).hasSize(1);
    }

    @Test
    void surveys_that_differ_in_one_thing_are_not_equal() {
        FloorSurvey bare = FloorSurvey.builder("t").build();
        FloorSurvey zoned = FloorSurvey.builder("t").zone(zone("a", 60)).build();
        assertThat(bare)
                .isNotEqualTo(FloorSurvey.builder("u").build())
                .isNotEqualTo(zoned)
                .isNotEqualTo(FloorSurvey.builder("t")
                        .set(SurveyField.AREA, new Area(5))
                        .build());
        assertThat(zoned)
                .isNotEqualTo(zoned.toBuilder()
                        .reading(new GlossReading("a", Geometry.DEG_60, new Gloss(12), SurfaceState.CLEAN_DRY))
                        .build());
    }

    @Test
    void grades_are_kept_once_each_and_coarse_to_fine() {
        GritSequence sequence = GritSequence.standard();
        AbrasiveGrade metal = sequence.get("metal-100", "grade");
        AbrasiveGrade resin50 = sequence.get("resin-50", "grade");
        AbrasiveGrade resin800 = sequence.get("resin-800", "grade");
        FloorSurvey survey = FloorSurvey.builder("t")
                .set(SurveyField.GRADES, List.of(resin800, metal, resin50, metal))
                .build();
        assertThat(survey.answer(SurveyField.GRADES).value()).contains(List.of(metal, resin50, resin800));
    }

    @Test
    void values_of_a_wrong_type_are_refused_though_the_compiler_cannot_see_them() {
        FloorSurvey.Builder builder = FloorSurvey.builder("t");
        assertThatThrownBy(() -> builder.put(SurveyField.MACHINES, Set.of(Presence.NONE)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("equipment.machines: 'NONE'");
        assertThatThrownBy(() -> builder.put(SurveyField.GRADES, List.of("resin-800")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("equipment.grades: 'resin-800'");
        assertThatThrownBy(() -> builder.put(SurveyField.FACE, StoneColour.DARK))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("stone.face: 'DARK'");
        assertThat(builder.build()).isEqualTo(FloorSurvey.builder("t").build());
    }

    @Test
    void a_title_has_1_to_200_characters() {
        assertThat(FloorSurvey.builder("x".repeat(200)).build().title()).hasSize(200);
        for (String title : new String[] {"", " ", "x".repeat(201)}) {
            assertThatThrownBy(() -> FloorSurvey.builder(title))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("title: ");
        }
    }

    @Test
    void a_survey_takes_a_hundred_zones_and_no_more() {
        List<Zone> zones = IntStream.rangeClosed(1, 101)
                .mapToObj(i -> new Zone("zone " + i, ZoneKind.FIELD, new Share(0.9), Map.of()))
                .toList();
        assertThat(FloorSurvey.builder("floor")
                        .zones(zones.subList(0, 100))
                        .build()
                        .zones())
                .hasSize(FloorSurvey.MOST_ZONES);
        assertThatThrownBy(() -> FloorSurvey.builder("floor").zones(zones).build())
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        "zones: '101' is not accepted; accepted: at most 100 zones; survey a larger floor in parts");
    }

    @Test
    void shares_may_fill_the_floor_or_leave_some_of_it_unseen() {
        assertThat(FloorSurvey.builder("t")
                        .zone(zone("a", 60))
                        .zone(zone("b", 40))
                        .build()
                        .zones())
                .hasSize(2);
        assertThat(FloorSurvey.builder("t").zone(zone("a", 0.0001)).build().zones())
                .hasSize(1);
    }

    /** What is impossible together is possible without any one part of it. */
    @Test
    void each_part_of_an_impossible_set_of_facts_is_possible_without_the_others() {
        assertThat(FloorSurvey.builder("t")
                        .set(SurveyField.SETTING, Setting.INDOORS)
                        .set(SurveyField.ROOM_VOLUME, new Volume(90_000))
                        .build()
                        .answer(SurveyField.ROOM_VOLUME)
                        .isKnown())
                .isTrue();
        FloorSurvey glazedAndScribed = FloorSurvey.builder("t")
                .set(SurveyField.FACE, Face.GLAZED)
                .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                .build();
        assertThat(glazedAndScribed.toBuilder()
                        .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_POWDER)
                        .build()
                        .answer(SurveyField.FACE)
                        .value())
                .contains(Face.GLAZED);
        assertThat(glazedAndScribed.toBuilder()
                        .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                        .set(SurveyField.SCRIBER, ScriberTest.NOT_SCRATCHED)
                        .build()
                        .answer(SurveyField.FACE)
                        .value())
                .contains(Face.GLAZED);
        assertThat(glazedAndScribed.toBuilder()
                        .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                        .set(SurveyField.FACE, Face.FLAT)
                        .build()
                        .answer(SurveyField.FACE)
                        .value())
                .contains(Face.FLAT);
    }

    @Test
    void facts_that_cannot_hold_together_are_refused() {
        assertThatThrownBy(() -> FloorSurvey.builder("t")
                        .zone(zone("a", 60))
                        .zone(zone("b", 41))
                        .build())
                .hasMessage("zones.share: '101 %' is not accepted; accepted: shares that add up to 100 % at most");
        assertThatThrownBy(() -> FloorSurvey.builder("t")
                        .zone(zone("a", 20))
                        .zone(zone("a", 20))
                        .build())
                .hasMessageContaining("a name of its own");
        assertThatThrownBy(() -> FloorSurvey.builder("t")
                        .reading(new GlossReading("a", Geometry.DEG_60, new Gloss(1), SurfaceState.WET))
                        .build())
                .hasMessageContaining("readings.zone");
        assertThatThrownBy(() -> FloorSurvey.builder("t")
                        .set(SurveyField.SETTING, Setting.OUTDOORS)
                        .set(SurveyField.ROOM_VOLUME, new Volume(90_000))
                        .build())
                .hasMessageContaining("site.room-volume");
        assertThatThrownBy(() -> FloorSurvey.builder("t")
                        .set(SurveyField.FACE, Face.GLAZED)
                        .set(SurveyField.SCRIBER, ScriberTest.SCRATCHED)
                        .set(SurveyField.ACID_DROP, AcidDrop.FIZZ_ON_SOLID)
                        .build())
                .hasMessageContaining("stone.face");
    }

    @ParameterizedTest
    @CsvSource({
        "0, NONE",
        "0.0001, FELT_BY_NAIL",
        "0.0999, FELT_BY_NAIL",
        "0.1, FELT_BY_COIN",
        "0.2999, FELT_BY_COIN",
        "0.3, DEEP",
        "0.7999, DEEP",
        "0.8, GOUGED",
        "5, GOUGED"
    })
    void a_scratch_is_classed_by_its_depth(double millimetres, ScratchClass expected) {
        Damage damage = Damage.measured(DamageKind.SCRATCHES, new Length(millimetres), HALF);
        assertThat(damage.severity(Parameters.standard())).isEqualTo(expected.ordinal());
    }

    @ParameterizedTest
    @CsvSource({"0.79, NONE", "0.8, SLIGHT", "1.49, SLIGHT", "1.5, MODERATE", "2.99, MODERATE", "3, HIGH"})
    void a_lippage_is_classed_by_its_height(double millimetres, LippageClass expected) {
        Damage damage = Damage.measured(DamageKind.LIPPAGE, new Length(millimetres), HALF);
        assertThat(damage.severity(Parameters.standard())).isEqualTo(expected.ordinal());
    }

    @Test
    void where_look_and_depth_are_given_the_worse_counts() {
        Damage damage = new Damage(
                DamageKind.SCRATCHES,
                Optional.of(ScratchClass.FELT_BY_NAIL),
                Optional.of(new Length(0.4)),
                Optional.empty());
        assertThat(damage.severity(Parameters.standard())).isEqualTo(ScratchClass.DEEP.ordinal());
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void the_first_class_of_every_kind_means_none(DamageKind kind) {
        assertThat(Damage.none(kind).severity(Parameters.standard())).isZero();
    }

    @Test
    void names_of_fields_are_unique_and_in_kebab_case() {
        assertThat(SurveyField.all())
                .extracting(SurveyField::name)
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("[a-z]+(-[a-z]+)*\\.[a-z]+(-[a-z]+)*"));
        assertThat(SurveyField.named("site.area")).isSameAs(SurveyField.AREA);
        assertThatThrownBy(() -> SurveyField.named("site.aera")).isInstanceOf(InvalidInputException.class);
    }

    @Test
    void every_choice_can_be_written_as_keys() {
        for (SurveyField<?> field : SurveyField.all()) {
            if (field.kind() instanceof FieldKind.Choice choice) {
                assertThat(Arrays.asList(choice.type().getEnumConstants()))
                        .as(field.name())
                        .hasSizeGreaterThan(1);
                assertThat(choice.type()).as(field.name()).matches(Term.class::isAssignableFrom);
            }
        }
    }
}
