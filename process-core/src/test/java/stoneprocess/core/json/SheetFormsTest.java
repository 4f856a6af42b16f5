package stoneprocess.core.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stoneprocess.core.estimate.Cost;
import stoneprocess.core.estimate.CrewTimes;
import stoneprocess.core.estimate.Estimate;
import stoneprocess.core.estimate.EstimateComparison;
import stoneprocess.core.estimate.PriceList;
import stoneprocess.core.estimate.Schedule;
import stoneprocess.core.exposure.CarbonMonoxideBuildUp;
import stoneprocess.core.exposure.CircuitLoad;
import stoneprocess.core.exposure.ExposureInputs;
import stoneprocess.core.exposure.FrictionCheck;
import stoneprocess.core.exposure.LiftingLimit;
import stoneprocess.core.exposure.NeededAir;
import stoneprocess.core.exposure.NoiseExposure;
import stoneprocess.core.exposure.Purge;
import stoneprocess.core.exposure.RampResult;
import stoneprocess.core.exposure.SilicaControl;
import stoneprocess.core.exposure.SlipClass;
import stoneprocess.core.exposure.SlurryWater;
import stoneprocess.core.gloss.AcceptanceCheck;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.site.Quotation;

/** Forms of estimates, exposure and gloss: any value survives printing and reading, and its schema accepts it. */
class SheetFormsTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final int VALUES = 50;

    static Stream<Arguments> forms() {
        return Stream.of(
                Arguments.of(Json.ESTIMATE, Estimate.class),
                Arguments.of(Json.COST, Cost.class),
                Arguments.of(Json.ESTIMATES, EstimateComparison.class),
                Arguments.of(Json.SCHEDULE, Schedule.class),
                Arguments.of(Json.PLANNED_JOB, PlannedJob.class),
                Arguments.of(Json.CREW_TIMES, CrewTimes.class),
                Arguments.of(Json.PRICE_LIST, PriceList.class),
                Arguments.of(Json.QUOTATION, Quotation.class),
                Arguments.of(Json.EXPOSURE, ExposureInputs.class),
                Arguments.of(Json.GLOSS, FloorGloss.class),
                Arguments.of(Json.GLOSS_ACCEPTANCE, AcceptanceCheck.class),
                Arguments.of(Json.NOISE, NoiseExposure.class),
                Arguments.of(Json.CARBON_MONOXIDE, CarbonMonoxideBuildUp.class),
                Arguments.of(Json.NEEDED_AIR, NeededAir.class),
                Arguments.of(Json.PURGE, Purge.class),
                Arguments.of(Json.SILICA, SilicaControl.class),
                Arguments.of(Json.CIRCUIT, CircuitLoad.class),
                Arguments.of(Json.LIFTING, LiftingLimit.class),
                Arguments.of(Json.SLURRY, SlurryWater.class),
                Arguments.of(Json.SLIP_CLASS, SlipClass.class),
                Arguments.of(Json.SLIP_RAMP, RampResult.class),
                Arguments.of(Json.FRICTION, FrictionCheck.class));
    }

    @ParameterizedTest
    @MethodSource("forms")
    <T> void any_value_survives_printing_and_reading(Form<T> form, Class<T> type) throws ReflectiveOperationException {
        Schema schema = REGISTRY.getSchema(form.schema(), InputFormat.JSON);
        int seen = 0;
        for (long seed = 1955; seen < VALUES; seed++) {
            Optional<T> value = value(type, seed);
            if (value.isPresent()) {
                String json = form.print(value.get());
                assertThat(form.read(json)).isEqualTo(value.get());
                assertThat(form.print(form.read(json))).isEqualTo(json);
                assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
                seen++;
            }
            assertThat(seed).as("too few values of %s are possible", type).isLessThan(100_000);
        }
    }

    /** A value; empty where the parts that were invented do not fit together. */
    private static <T> Optional<T> value(Class<T> type, long seed) throws ReflectiveOperationException {
        try {
            return Optional.of(type.cast(new Invented(seed).of(Typed.of(type))));
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof InvalidInputException) {
                return Optional.empty();
            }
            throw e;
        }
    }
}
