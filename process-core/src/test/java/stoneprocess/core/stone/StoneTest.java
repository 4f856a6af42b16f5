package stoneprocess.core.stone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Citation;
import stoneprocess.core.source.Sources;

class StoneTest {
    private static final Citation PRACTICE = Sources.standard().get("practice");

    @ParameterizedTest
    @EnumSource(Family.class)
    void every_family_has_each_trait(Family family) {
        Traits traits = Traits.of(family);
        assertThat(traits.family()).isEqualTo(family);
        assertThat(List.of(
                        traits.hardness(),
                        traits.acid(),
                        traits.finish(),
                        traits.water(),
                        traits.fibres(),
                        traits.silica(),
                        traits.body(),
                        traits.metal()))
                .allSatisfy(classes -> assertThat(classes).isNotEmpty());
    }

    @Test
    void a_trait_across_families_is_every_class_that_occurs_in_one_of_them() {
        Set<Family> families = EnumSet.of(Family.CALCITE_MARBLE, Family.DOLOMITE_MARBLE, Family.GRANITE);
        assertThat(Traits.across(families, AcidReaction.class, Traits::acid))
                .containsExactly(AcidReaction.NONE, AcidReaction.SLOW, AcidReaction.STRONG);
        assertThat(Traits.across(families, SilicaContent.class, Traits::silica))
                .containsExactly(SilicaContent.LOW, SilicaContent.MEDIUM);
        assertThat(Traits.across(Set.of(), SilicaContent.class, Traits::silica)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(AcidReaction.class)
    void the_families_with_a_class_are_those_whose_trait_lists_it(AcidReaction reaction) {
        assertThat(Traits.familiesWith(reaction, Traits::acid))
                .isNotEmpty()
                .isEqualTo(EnumSet.allOf(Family.class).stream()
                        .filter(family -> Traits.of(family).acid().contains(reaction))
                        .collect(Collectors.toSet()));
    }

    @Test
    void traits_are_copied_and_cannot_be_changed() {
        EnumSet<Hardness> hardness = EnumSet.of(Hardness.SOFT);
        Traits traits = traits(1, 2, hardness);
        hardness.add(Hardness.HARD);
        assertThat(traits.hardness()).containsExactly(Hardness.SOFT);
        assertThatThrownBy(() -> Traits.of(Family.GRANITE).acid().clear())
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @ParameterizedTest
    @CsvSource({"0.9, 2", "2, 1", "3, 10.1", "NaN, 2"})
    void a_hardness_outside_the_mohs_scale_is_refused(double low, double high) {
        assertThatThrownBy(() -> traits(low, high, EnumSet.of(Hardness.SOFT)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("tuff.mohs: '" + low + " to " + high + "' is not accepted");
    }

    @Test
    void a_trait_without_a_class_is_refused() {
        assertThatThrownBy(() -> traits(1, 2, Set.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("tuff.hardness: 'none'");
    }

    private static Traits traits(double low, double high, Set<Hardness> hardness) {
        return new Traits(
                Family.TUFF,
                low,
                high,
                hardness,
                EnumSet.of(AcidReaction.NONE),
                EnumSet.of(FinishReach.HONE),
                EnumSet.of(WaterTolerance.LITTLE),
                EnumSet.of(FibreRisk.NONE),
                EnumSet.of(SilicaContent.LOW),
                EnumSet.of(Body.STONE),
                EnumSet.of(MetalBondUse.EXCLUDED),
                PRACTICE);
    }

    @Test
    void names_are_keys() {
        assertThat(StoneCatalogue.standard().all())
                .extracting(Stone::name)
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("[a-z]+(-[a-z]+)*"));
    }

    @Test
    void a_stone_is_found_by_its_name_and_an_unknown_name_is_refused_with_the_known_ones() {
        assertThat(StoneCatalogue.standard().get("gneiss", "stone.name").families())
                .containsExactly(Family.GRANITE);
        assertThatThrownBy(() -> StoneCatalogue.standard().get("moon-rock", "stone.name"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("stone.name: 'moon-rock' is not accepted; accepted: one of marble, ")
                .hasMessageEndingWith("quarry-tile");
    }

    /** Names of the trade that cover more than they say; common practice and trade newspaper articles. */
    @ParameterizedTest
    @CsvSource({
        "marble, LIMESTONE",
        "green-marble, SERPENTINE",
        "black-granite, BASALT_GABBRO",
        "quartzite, CALCITE_MARBLE",
        "alabaster, ONYX",
        "terrazzo, RESIN_TERRAZZO",
    })
    void a_name_covers_what_is_sold_under_it(String name, Family family) {
        assertThat(StoneCatalogue.standard().get(name, "stone.name").families()).contains(family);
    }

    @Test
    void the_families_of_a_name_are_listed_in_one_order_and_never_empty() {
        assertThat(new Stone("mix", Set.of(Family.BRICK, Family.ONYX, Family.TUFF, Family.GRANITE), PRACTICE)
                        .families())
                .containsExactly(Family.ONYX, Family.GRANITE, Family.TUFF, Family.BRICK);
        assertThatThrownBy(() -> new Stone("nothing", Set.of(), PRACTICE))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("nothing.families: 'none'");
    }

    @Test
    void purchase_limits_speak_of_stones_that_have_a_name_and_are_above_zero() {
        assertThat(StoneCatalogue.standard().purchaseLimits()).allSatisfy(limit -> {
            assertThat(StoneCatalogue.standard().get(limit.stone(), "stone").families())
                    .isNotEmpty();
            assertThat(limit.absorptionMaxPercent().orElseThrow()).isPositive();
            assertThat(limit.abrasionMinHa().orElseThrow()).isPositive();
        });
    }
}
