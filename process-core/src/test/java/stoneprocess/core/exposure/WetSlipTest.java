package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Friction;
import stoneprocess.core.quantity.Gloss;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.PendulumValue;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Unit;

@AnalyzeClasses(packages = "stoneprocess.core.exposure", importOptions = ImportOption.DoNotIncludeTests.class)
class WetSlipTest {
    private final WetSlip slip = WetSlip.of(Parameters.standard());

    /** Slip is measured, never inferred from a polish: this room cannot even name gloss. */
    @ArchTest
    static final ArchRule slip_is_never_inferred_from_gloss = ArchRuleDefinition.noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAPackage("stoneprocess.core.gloss")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(Gloss.class);

    @Property(seed = "1955")
    void friction_and_back_is_the_pendulum_value(@ForAll @DoubleRange(max = 150) double value) {
        PendulumValue there = new PendulumValue(value);
        assertThat(WetSlip.pendulumValue(WetSlip.friction(there)).pendulumValue())
                .isCloseTo(there.pendulumValue(), Offset.offset(2e-4));
    }

    @Property(seed = "1955")
    void the_pendulum_value_and_back_is_the_friction(@ForAll @DoubleRange(max = 2.5) double value) {
        Friction there = new Friction(value);
        assertThat(WetSlip.friction(WetSlip.pendulumValue(there)).friction())
                .isCloseTo(there.friction(), Offset.offset(5e-6));
    }

    @Property(seed = "1955")
    void more_grip_never_has_a_worse_class(
            @ForAll @DoubleRange(max = 1) double one, @ForAll @DoubleRange(max = 1) double other) {
        double less = Math.min(one, other);
        double more = Math.max(one, other);
        assertThat(slip.byPendulum(new PendulumValue(100 * more)).potential())
                .isGreaterThanOrEqualTo(
                        slip.byPendulum(new PendulumValue(100 * less)).potential());
        assertThat(slip.byRoughness(Length.of(50 * more, Unit.MICROMETRE)).potential())
                .isGreaterThanOrEqualTo(
                        slip.byRoughness(Length.of(50 * less, Unit.MICROMETRE)).potential());
        assertThat(slip.byRamp(new Angle(45 * more)).ramp())
                .isGreaterThanOrEqualTo(slip.byRamp(new Angle(45 * less)).ramp());
        for (SlipPlace place : SlipPlace.values()) {
            boolean weak = slip.byFriction(new Friction(less), place).meetsLimit();
            assertThat(slip.byFriction(new Friction(more), place).meetsLimit() || !weak)
                    .isTrue();
        }
    }

    @Property(seed = "1955")
    void the_unit_of_roughness_does_not_matter(@ForAll @IntRange(max = 1000) int tenths) {
        BigDecimal micrometres = BigDecimal.valueOf(tenths, 1);
        BigDecimal millimetres = micrometres.movePointLeft(3);
        assertThat(slip.byRoughness((Length) Quantity.of(micrometres, Unit.MICROMETRE)))
                .isEqualTo(slip.byRoughness((Length) Quantity.of(millimetres, Unit.MILLIMETRE)));
    }

    @Test
    void between_the_printed_classes_the_worse_one_counts() {
        assertThat(slip.byPendulum(new PendulumValue(24.9)).potential()).isEqualTo(SlipPotential.HIGH);
        assertThat(slip.byPendulum(new PendulumValue(35.9)).potential()).isEqualTo(SlipPotential.MODERATE);
    }

    @Test
    void every_answer_names_limit_source_cautions_and_the_slip_tester() {
        SlipClass<PendulumValue> pendulum = slip.byPendulum(new PendulumValue(40));
        assertThat(pendulum.limit().sourceId()).isEqualTo("HSE-SLIPS");
        assertThat(pendulum.limit().decides()).isEqualTo(Role.SLIP_TESTER);
        assertThat(pendulum.cautions()).containsExactly(SlipCaution.LEVEL_AND_STRAIGHT_WALKING_ONLY);
        SlipClass<Length> roughness = slip.byRoughness(new Length(0.03));
        assertThat(roughness.limit().value()).isEqualTo(new Length(0.02));
        assertThat(roughness.cautions()).contains(SlipCaution.CLEAN_WATER_ONLY);
        assertThat(slip.byFriction(new Friction(0.9), SlipPlace.INTERIOR_WET).cautions())
                .contains(SlipCaution.MEETING_IT_IS_NO_PROMISE);
        RampResult ramp = slip.byRamp(new Angle(20));
        assertThat(ramp.limit().sourceId()).isEqualTo("EN-16165");
        assertThat(ramp.cautions()).containsExactly(SlipCaution.SPECIMEN_AS_NEW);
    }

    @Test
    void a_stricter_house_limit_is_obeyed() {
        Parameters strict = Parameters.standard().with("slip-pendulum.low", new PendulumValue(45));
        assertThat(WetSlip.of(strict).byPendulum(new PendulumValue(40)).potential())
                .isEqualTo(SlipPotential.MODERATE);
    }

    @Test
    void what_no_instrument_reads_is_refused() {
        assertThatThrownBy(() -> slip.byPendulum(new PendulumValue(150.1)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("slip.pendulum: '150.1 PTV' is not accepted; accepted: 0 to 150 PTV");
        assertThatThrownBy(() -> WetSlip.friction(new PendulumValue(331))).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> WetSlip.pendulumValue(new Friction(2.51)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("slip.friction: ");
        assertThatThrownBy(() -> slip.byFriction(new Friction(3), SlipPlace.EXTERIOR_WET))
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> slip.byRoughness(new Length(1.0001)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("slip.rz: ");
        assertThatThrownBy(() -> slip.byRamp(new Angle(45.1)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("slip.ramp: ");
    }
}
