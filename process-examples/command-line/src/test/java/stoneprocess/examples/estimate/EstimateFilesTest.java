package stoneprocess.examples.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.estimate.CrewTiming;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.AreaRate;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.quantity.Speed;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;
import stoneprocess.core.tool.MachineClass;

/** The small files that an estimate reads. */
class EstimateFilesTest {
    @Test
    void a_price_list_holds_what_its_lines_say_and_nothing_else() {
        PriceList prices = PriceFile.read("""
                # ours
                currency = crowns
                labour-hour = 38.50
                machine-hour.planetary=16

                minimum-charge = 900
                night-factor = 150 %
                whole-sets = yes
                exclusions = stone; tests by a laboratory ;
                """);
        assertThat(prices)
                .isEqualTo(PriceList.empty("crowns")
                        .with(PriceItem.LABOUR_HOUR, "38.50")
                        .withMachineHour(MachineClass.PLANETARY, "16")
                        .withMinimumCharge("900")
                        .withNightFactor(new Share(150))
                        .withWholeSets()
                        .withExclusions(List.of("stone", "tests by a laboratory")));
        assertThat(prices.price(PriceItem.RESIN_SET)).isEmpty();
        assertThat(PriceFile.read("currency = c\nwhole-sets = no")).isEqualTo(PriceList.empty("c"));
    }

    @Test
    void the_shipped_price_list_can_be_read() throws IOException {
        PriceList prices = PriceFile.read(Files.readString(Path.of("prices", "harbour-crew.properties")));
        assertThat(prices.price(PriceItem.LABOUR_HOUR)).contains(Money.of("38", "crowns"));
        assertThat(prices.price(PriceItem.ENERGY_KILOWATT_HOUR)).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "labour-hour = 38                    | prices.currency: 'missing'",
                "currency = c;labour-hour = 38 c     | prices.labour-hour: '38 c'",
                "currency = c;labour-hour = -3       | prices.labour-hour: '-3'",
                "currency = c;labour-hour = 1e3      | prices.labour-hour: '1e3'",
                "currency = c;labor-hour = 38        | prices: 'labor-hour'",
                "currency = c;currency = d           | prices, line 2: 'currency'",
                "currency = c;labour-hour            | prices, line 2: 'labour-hour'",
                "currency = c;= 3                    | prices, line 2: '= 3'",
                "currency = c;labour-hour =          | prices, line 2: 'labour-hour ='",
                "currency = c;night-factor = 90 %    | prices.night-factor: '90 %'",
                "currency = c;night-factor = 3 h     | prices.night-factor: '3 h'",
                "currency = c;whole-sets = maybe     | prices.whole-sets: 'maybe'"
            })
    void a_price_list_that_is_not_accepted_is_refused_by_name(String lines, String message) {
        assertThatThrownBy(() -> PriceFile.read(lines.replace(";", "\n")))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void a_crews_times_are_read_by_step() {
        assertThat(TimingFile.read("resin-800.field = 5-7 m2/h\nresin-800.edges = 4 m/h\nresin-400.edges = 5 m/h"))
                .containsExactly(
                        new CrewTiming(
                                "resin-800",
                                Optional.of(Range.of(new AreaRate(5), new AreaRate(7))),
                                Optional.of(
                                        Range.of(Speed.of(4, Unit.METRE_PER_HOUR), Speed.of(4, Unit.METRE_PER_HOUR)))),
                        CrewTiming.edges(
                                "resin-400",
                                Range.of(Speed.of(5, Unit.METRE_PER_HOUR), Speed.of(5, Unit.METRE_PER_HOUR))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "resin-800 = 5 m2/h           | timing: 'resin-800'",
                "resin-800.field = 5 m        | timing.resin-800.field: '5 m'",
                "resin-800.field = 7-5 m2/h   | timing.resin-800.field: '7-5 m2/h'",
                "resin-800.field = 0 m2/h     | timing.resin-800.field: '0 m2/h'"
            })
    void times_that_are_not_accepted_are_refused_by_name(String lines, String message) {
        assertThatThrownBy(() -> TimingFile.read(lines))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void an_amount_is_one_argument_with_its_unit() {
        assertThat(Amounts.quantity("48 m", "--edges", Length.class, "48 m")).isEqualTo(new Length(48_000));
        assertThat(Amounts.range("3-5 h", "--work", TimeSpan.class, "3-5 h"))
                .isEqualTo(Range.of(TimeSpan.of(3, Unit.HOUR), TimeSpan.of(5, Unit.HOUR)));
        assertThatThrownBy(() -> Amounts.quantity("48", "--edges", Length.class, "48 m"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("--edges: '48'");
        assertThatThrownBy(() -> Amounts.quantity("48 m2", "--edges", Length.class, "48 m"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("--edges: '48 m2' is not accepted; accepted: a value such as 48 m");
        assertThatThrownBy(() -> Amounts.quantity("-48 m", "--edges", Length.class, "48 m"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("--edges");
    }
}
