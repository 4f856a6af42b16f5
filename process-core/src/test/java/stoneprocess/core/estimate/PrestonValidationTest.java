package stoneprocess.core.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Area;
import stoneprocess.core.quantity.AreaLoad;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Rotation;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.source.Sources;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.tool.MachineClass;

/** Removal against Preston's law and the abrasion scale of the ASTM stone standards. */
class PrestonValidationTest {
    private static final AbrasionResistance MARBLE = FloorStone.marble().resistance();

    private static Contact contact(double kilopascal, double metresPerSecond) {
        return new Contact(new AreaLoad(kilopascal), Speed.of(metresPerSecond, Unit.METRE_PER_SECOND));
    }

    /** Preston (1927): the relation is linear in pressure and in speed, and their product alone counts. */
    @ParameterizedTest
    @CsvSource({"20, 1, 200", "10, 2, 200", "5, 2, 100", "30, 0.5, 150", "10, 0.25, 25"})
    void removal_follows_the_product_of_pressure_and_speed(double pressure, double speed, double percent) {
        RelativeRemoval removal = new RelativeRemoval(contact(pressure, speed), MARBLE, contact(10, 1), MARBLE);
        assertThat(removal.share().percent()).isCloseTo(percent, within(1e-9));
    }

    /**
     * Attaway, "Preston Equation": under one force a face of half the width is cut four times faster, since the
     * pressure is four times as high.
     */
    @Test
    void under_one_load_pads_of_half_the_width_cut_four_times_faster() {
        Contact wide = machine(0.04).contact();
        Contact narrow = machine(0.01).contact();
        assertThat(new RelativeRemoval(narrow, MARBLE, wide, MARBLE).share().percent())
                .isCloseTo(400, within(1e-3));
    }

    private static FloorMachine machine(double padArea) {
        return new FloorMachine(
                MachineClass.SINGLE_DISC,
                new Length(430),
                new Mass(50),
                new Mass(0),
                new Area(padArea),
                new Motion.Disc(new Rotation(160), new Length(0), new Length(400)),
                new Power(1.5));
    }

    /** Standard gravity 9.80665 m/s2 (3rd CGPM, 1901): 60 kg and 40 kg on 0.05 m2 press with 19.6133 kPa. */
    @Test
    void contact_pressure_is_the_weight_with_added_weight_over_the_pads() {
        FloorMachine machine = new FloorMachine(
                MachineClass.SINGLE_DISC,
                new Length(430),
                new Mass(60),
                new Mass(40),
                new Area(0.05),
                new Motion.Disc(new Rotation(160), new Length(0), new Length(400)),
                new Power(1.5));
        assertThat(machine.contact().pressure()).isEqualTo(new AreaLoad(19.6133));
    }

    /** Adv. Mater. Sci. Eng. 2018, 6514785: a limestone line presses with 1.0 to 1.25 bar, 100 to 125 kPa. */
    @Test
    void usual_floor_machines_press_less_than_a_factory_line_but_in_its_order() {
        double single = Jobs.SINGLE_DISC.contact().pressure().kept();
        double planetary = Jobs.PLANETARY.contact().pressure().kept();
        System.out.printf(
                "Contact: single disc %.1f kPa at %.2f m/s, planetary %.1f kPa at %.2f m/s%n",
                single,
                Jobs.SINGLE_DISC.contact().sliding().in(Unit.METRE_PER_SECOND).doubleValue(),
                planetary,
                Jobs.PLANETARY.contact().sliding().in(Unit.METRE_PER_SECOND).doubleValue());
        assertThat(single).isBetween(10.0, 100.0);
        assertThat(planetary).isBetween(single, 125.0);
    }

    /** ASTM C503 marble 10, C568 limestone 10, C615 granite 25, C616 sandstone 2, quartzite 8, C629 slate 8, at least. */
    @ParameterizedTest
    @CsvSource({
        "marble, standard, 10, 100",
        "limestone, medium-density, 10, 100",
        "granite, standard, 25, 40",
        "sandstone, sandstone, 2, 500",
        "quartzite, standard, 8, 125",
        "slate, interior, 8, 125",
    })
    void removal_is_the_inverse_of_the_abrasion_resistance(String stone, String kind, double ha, double percent) {
        AbrasionResistance resistance = AbrasionResistance.purchaseMinimum(stone, kind);
        assertThat(resistance.ha()).isEqualTo(ha);
        assertThat(resistance.purchaseMinimum()).isTrue();
        Contact same = contact(10, 1);
        assertThat(new RelativeRemoval(same, resistance, same, MARBLE).share().percent())
                .isCloseTo(percent, within(1e-9));
    }

    /**
     * Common practice, no source: metal does 1.5-4 m2/h on marble and 0.5-1.5 on granite, resin 8-15 and 4-8. The ratio
     * of the ASTM minima, 40 %, lies between what these two bands tell.
     */
    @Test
    void the_abrasion_scale_orders_marble_and_granite_as_crews_do() {
        Productivity productivity = new Productivity(Jobs.STANDARD);
        double metal = middle(
                        productivity.practice(StepKind.METAL, Hardness.HARD).orElseThrow())
                / middle(productivity.practice(StepKind.METAL, Hardness.MEDIUM).orElseThrow());
        double resin = middle(
                        productivity.practice(StepKind.RESIN, Hardness.HARD).orElseThrow())
                / middle(productivity.practice(StepKind.RESIN, Hardness.MEDIUM).orElseThrow());
        double scale = MARBLE.ha() / FloorStone.granite().resistance().ha();
        System.out.printf("Granite over marble: metal %.2f, resin %.2f, ASTM minima %.2f%n", metal, resin, scale);
        assertThat(scale).isBetween(metal, resin);
    }

    private static double middle(Range<AreaRate> range) {
        return (range.low().kept() + range.high().kept()) / 2;
    }

    @Test
    void what_cannot_be_is_refused_by_name() {
        assertThatThrownBy(
                        () -> AbrasionResistance.measured(0, Sources.standard().get("house")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("stone.ha: '0.0' is not accepted");
        assertThatThrownBy(() -> AbrasionResistance.purchaseMinimum("cheese", "standard"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("stone: 'cheese, standard'");
        assertThatThrownBy(() -> contact(0, 1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("contact.pressure: '0 kN/m2'");
        assertThatThrownBy(() -> FloorMachine.usual(MachineClass.BURNISHER, Jobs.STANDARD))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("machine.kind: 'burnisher'");
    }
}
