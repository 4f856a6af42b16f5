package stoneprocess.core.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.stone.Family;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.ScriberTest;

class KnownStoneTest {
    private static KnownStone stone(ScriberTest scriber, Family... families) {
        return new KnownStone(Set.of(families), Optional.of(scriber));
    }

    /** The scriber breaks grains out or rides over them; common practice, no source. */
    @ParameterizedTest
    @EnumSource(ScriberTest.class)
    void the_scriber_tells_nothing_of_sandstone(ScriberTest scriber) {
        KnownStone sandstone = stone(scriber, Family.SANDSTONE);
        assertThat(sandstone.hardness()).containsExactly(Hardness.MEDIUM, Hardness.HARD);
        assertThat(sandstone.cutting()).isEqualTo(CuttingClass.WEAK_BINDER);
        assertThat(sandstone.reckonedHardInDoubt()).isFalse();
        assertThat(stone(scriber, Family.SANDSTONE, Family.CONCRETE).hardness())
                .containsExactly(Hardness.MEDIUM, Hardness.HARD);
    }

    @Test
    void the_scriber_tells_of_other_stone_that_may_be_hard_or_not() {
        KnownStone scratched = stone(ScriberTest.SCRATCHED, Family.BRECCIA, Family.CONCRETE);
        KnownStone unmarked = stone(ScriberTest.NOT_SCRATCHED, Family.BRECCIA, Family.SLATE);
        assertThat(scratched.hardness()).containsExactly(Hardness.MEDIUM);
        assertThat(scratched.cutting()).isEqualTo(CuttingClass.MEDIUM);
        assertThat(unmarked.hardness()).containsExactly(Hardness.HARD);
        assertThat(unmarked.cutting()).isEqualTo(CuttingClass.HARD);
        assertThat(unmarked.reckonedHardInDoubt()).isFalse();
    }

    @Test
    void a_mark_that_no_family_can_have_tells_nothing() {
        assertThat(stone(ScriberTest.SCRATCHED, Family.GRANITE).hardness()).containsExactly(Hardness.HARD);
        assertThat(stone(ScriberTest.NOT_SCRATCHED, Family.GYPSUM, Family.ONYX).hardness())
                .containsExactly(Hardness.SOFT, Hardness.MEDIUM);
    }

    @Test
    void what_nobody_knows_is_reckoned_as_the_slowest_that_it_may_be() {
        KnownStone unknown = new KnownStone(Set.of(Family.values()), Optional.empty());
        assertThat(unknown.hardness()).containsExactly(Hardness.values());
        assertThat(unknown.cutting()).isEqualTo(CuttingClass.HARD);
        assertThat(unknown.reckonedHardInDoubt()).isTrue();
        assertThat(unknown.weakBinder()).isFalse();
        KnownStone soft = new KnownStone(Set.of(Family.GYPSUM), Optional.empty());
        assertThat(soft.cutting()).isEqualTo(CuttingClass.SOFT);
    }

    @Test
    void a_forecast_counts_on_the_lowest_ceiling_and_readings_are_held_to_the_highest() {
        KnownStone marble = new KnownStone(Set.of(Family.DOLOMITE_MARBLE, Family.CALCITE_MARBLE), Optional.empty());
        assertThat(marble.withoutCeiling()).isEmpty();
        assertThat(marble.lowestCeiling().at60())
                .isLessThan(marble.highestCeiling().at60());
        KnownStone listedNowhere = new KnownStone(Set.of(Family.CALCITE_MARBLE, Family.CONCRETE), Optional.empty());
        assertThat(listedNowhere.withoutCeiling()).containsExactly(Family.CONCRETE);
        assertThat(listedNowhere.lowestCeiling()).isEqualTo(marble.ceilings().get(Family.CALCITE_MARBLE));
    }

    @Test
    void a_stone_is_one_family_at_least() {
        assertThatThrownBy(() -> new KnownStone(Set.of(), Optional.empty()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("families");
    }
}
