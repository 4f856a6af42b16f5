package stoneprocess.core.tool;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Rotation;

class MachineTest {
    @ParameterizedTest
    @EnumSource(MachineClass.class)
    void every_class_of_machine_has_a_speed_and_a_mass(MachineClass machine) {
        Machine found = Machine.of(machine);
        assertThat(found.machine()).isEqualTo(machine);
        assertThat(found.speed().high()).isGreaterThan(new Rotation(0));
        assertThat(found.mass().high()).isGreaterThan(new Mass(0));
    }

    /** Concrete Construction magazine and common practice: slow single discs turn at 150 to 175 rpm. */
    @Test
    void a_single_disc_is_slower_than_what_burnishes_and_lighter_than_what_flattens() {
        assertThat(Machine.of(MachineClass.SINGLE_DISC).speed().high())
                .isLessThan(Machine.of(MachineClass.BURNISHER).speed().low());
        assertThat(Machine.of(MachineClass.SINGLE_DISC).mass().high())
                .isLessThan(Machine.of(MachineClass.PLANETARY).mass().low());
        assertThat(Machine.of(MachineClass.EDGE_TOOL).mass().high())
                .isLessThan(Machine.of(MachineClass.SINGLE_DISC).mass().low());
    }
}
