package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.removal.Removal;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.Cut;

/** What a bond needs besides its name stands under its key. */
class EveryBondTest {
    private static final Parameters NUMBERS = Parameters.standard();

    @ParameterizedTest
    @EnumSource(Bond.class)
    void a_bond_has_its_kind_of_step_its_price_and_its_numbers(Bond bond) {
        assertThat(StepKind.of(bond).key()).isEqualTo(bond.key());
        assertThat(PriceItem.padSet(bond).key()).isEqualTo(bond.key() + "-set");
        assertThat(NUMBERS.range("estimate.walk." + bond.key(), Speed.class)
                        .low()
                        .kept())
                .isPositive();
        assertThat(NUMBERS.range("estimate.pads." + bond.key(), Area.class)
                        .low()
                        .kept())
                .isPositive();
    }

    @ParameterizedTest
    @EnumSource(Bond.class)
    void every_grade_of_a_bond_takes_off_stone_and_amounts_to_a_first_cut(Bond bond) {
        assertThat(GritSequence.standard().grades(bond)).isNotEmpty().allSatisfy(grade -> {
            assertThat(new Removal(CuttingClass.HARD, NUMBERS)
                            .takes(10, grade, MachineClass.SINGLE_DISC, new Mass(0))
                            .low()
                            .kept())
                    .isPositive();
            assertThat(Cut.of(grade)).isNotEqualTo(Cut.NONE);
        });
    }
}
