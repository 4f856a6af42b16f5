package stoneprocess.core.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.Unit;

/** The head of an absorption tube against RILEM test II.4. */
class WindDrivenRainValidationTest {
    /** RILEM II.4: a tube filled to 98 mm stands for rain driven by a wind of about 144 km/h. */
    @Test
    void a_head_of_98_millimetres_is_rain_in_a_wind_of_about_144_kilometres_an_hour() {
        TubeHead tube = WindDrivenRain.ofHead(new Length(98));
        double wind = tube.wind().in(Unit.KILOMETRE_PER_HOUR).doubleValue();
        System.out.printf("98 mm of water: %.1f km/h%n", wind);
        assertThat(wind).isCloseTo(144, Offset.offset(1.0));
        assertThat(tube.source().id()).isEqualTo("RILEM-II.4");
        assertThat(tube.decides()).isEqualTo(Role.LABORATORY);
    }

    @Property(seed = "1955")
    void wind_and_back_is_the_head(@ForAll @DoubleRange(min = 1, max = 600) double millimetres) {
        Length head = new Length(millimetres);
        assertThat(WindDrivenRain.ofWind(WindDrivenRain.ofHead(head).wind())
                        .head()
                        .millimetres())
                .isCloseTo(head.millimetres(), Offset.offset(2e-3));
    }

    @Property(seed = "1955")
    void units_do_not_matter(@ForAll @DoubleRange(max = 150) double milesPerHour) {
        assertThat(WindDrivenRain.ofWind(Speed.of(milesPerHour, Unit.MILE_PER_HOUR))
                        .head()
                        .millimetres())
                .isCloseTo(
                        WindDrivenRain.ofWind(Speed.of(milesPerHour * 1.609344, Unit.KILOMETRE_PER_HOUR))
                                .head()
                                .millimetres(),
                        Offset.offset(2e-3));
    }

    @Test
    void four_times_the_head_is_twice_the_wind() {
        double once = WindDrivenRain.ofHead(new Length(50)).wind().metresPerMinute();
        assertThat(WindDrivenRain.ofHead(new Length(200)).wind().metresPerMinute())
                .isCloseTo(2 * once, Offset.offset(2e-4));
        assertThat(WindDrivenRain.ofHead(new Length(0)).wind()).isEqualTo(new Speed(0));
    }

    @Test
    void what_no_tube_holds_is_refused() {
        assertThatThrownBy(() -> WindDrivenRain.ofHead(new Length(1000.1)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("tube.head: ");
        assertThatThrownBy(() -> WindDrivenRain.ofWind(Speed.of(100.1, Unit.METRE_PER_SECOND)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("tube.wind: '6006 m/min' is not accepted; accepted: 0 to 6000 m/min, which is 100 m/s");
    }
}
