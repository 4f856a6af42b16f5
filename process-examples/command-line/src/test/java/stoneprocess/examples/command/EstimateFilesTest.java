package stoneprocess.examples.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stoneprocess.core.estimate.CrewTimes;
import stoneprocess.core.estimate.CrewTiming;
import stoneprocess.core.estimate.Money;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.json.Form;
import stoneprocess.core.json.Json;
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
    private static final String PRICES = """
            {"format": "price-list/1", "x-note": "ours", "currency": "crowns",
             "prices": {"labour-hour": 38.50, "x-old": 30}, "machine-hours": {"planetary": 16},
             "minimum-charge": 900, "night-factor": {"value": 150, "unit": "%"}, "whole-sets": true,
             "exclusions": ["stone", "tests by a laboratory"]}
            """;
    private static final String TIMES = """
            {"format": "crew-times/1", "times": [
              {"step": "resin-800", "field": {"low": 5, "high": 7, "unit": "m2/h"},
               "edges": {"low": 4, "high": 4, "unit": "m/h"}},
              {"step": "resin-400", "edges": {"low": 5, "high": 5, "unit": "m/h"}}]}
            """;

    @Test
    void a_price_list_holds_what_its_file_says_and_nothing_else() {
        PriceList prices = Json.PRICE_LIST.read(PRICES);
        assertThat(prices)
                .isEqualTo(PriceList.empty("crowns")
                        .with(PriceItem.LABOUR_HOUR, "38.50")
                        .withMachineHour(MachineClass.PLANETARY, "16")
                        .withMinimumCharge("900")
                        .withNightFactor(new Share(150))
                        .withWholeSets()
                        .withExclusions(List.of("stone", "tests by a laboratory")));
        assertThat(prices.price(PriceItem.RESIN_SET)).isEmpty();
        assertThat(Json.PRICE_LIST.read("{\"format\": \"price-list/1\", \"currency\": \"c\"}"))
                .isEqualTo(PriceList.empty("c"));
    }

    @Test
    void the_shipped_files_of_the_crew_can_be_read_and_are_valid() throws IOException {
        PriceList prices = Json.PRICE_LIST.read(shipped("harbour-crew.json", Json.PRICE_LIST));
        assertThat(prices.price(PriceItem.LABOUR_HOUR)).contains(Money.of("38", "crowns"));
        assertThat(prices.price(PriceItem.ENERGY_KILOWATT_HOUR)).isEmpty();
        CrewTimes times = Json.CREW_TIMES.read(shipped("harbour-crew-times.json", Json.CREW_TIMES));
        assertThat(times.times()).extracting(CrewTiming::step).containsExactly("resin-200");
    }

    private static String shipped(String name, Form<?> form) throws IOException {
        String json = Files.readString(Path.of("prices", name));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(form.schema(), InputFormat.JSON)
                        .validate(json, InputFormat.JSON))
                .isEmpty();
        return json;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"currency\": \"crowns\",     | ''                    | currency: the field is missing",
                "\"currency\": \"crowns\"      | \"currency\": \" \" | currency: ''",
                "price-list/1                | price-list/2          | format: 'price-list/2' is not accepted; accepted: price-list/1",
                "38.50                       | \"38 c\"              | prices.labour-hour: '38 c' is not accepted; accepted: a number",
                "38.50                       | -3                    | prices.labour-hour: '-3' is not accepted; accepted: zero to",
                "16                          | -3                    | machine-hours.planetary: '-3'",
                "900                         | 1e13                  | minimum-charge: '1E+13'",
                "labour-hour                 | labor-hour            | prices.labor-hour: 'labor-hour' is not accepted; accepted: one of labour-hour",
                "\"whole-sets\"              | \"sets\"              | sets: there is no such field; accepted: format, currency",
                "150                         | 90                    | night-factor: '90 %'",
                "true                        | \"maybe\"             | whole-sets: 'maybe' is not accepted; accepted: true or false"
            })
    void a_price_list_that_is_not_accepted_is_refused_by_name(String right, String wrong, String message) {
        assertThat(PRICES).contains(right);
        assertThatThrownBy(() -> Json.PRICE_LIST.read(PRICES.replace(right, wrong)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void a_crews_times_are_read_by_step() {
        assertThat(Json.CREW_TIMES.read(TIMES).times())
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
                "\"field\"   | \"middle\" | times[0].middle: there is no such field under times[0]; accepted: step, field",
                "m2/h        | m          | times[0].field.unit: 'm'",
                "\"low\": 5, | \"low\": 8,| times[0].field: '8 m2/h to 7 m2/h'",
                "\"low\": 5, | \"low\": 0,| times[0].field: '0 m2/h'",
                "crew-times/1| times/1    | format: 'times/1' is not accepted; accepted: crew-times/1"
            })
    void times_that_are_not_accepted_are_refused_by_name(String right, String wrong, String message) {
        assertThat(TIMES).contains(right);
        assertThatThrownBy(() -> Json.CREW_TIMES.read(TIMES.replaceFirst(right, wrong)))
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
