package stoneprocess.examples.exposure;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.exposure.CarbonMonoxide;
import stoneprocess.core.exposure.CarbonMonoxideBuildUp;
import stoneprocess.core.exposure.CarbonMonoxideLimit;
import stoneprocess.core.exposure.EngineCaution;
import stoneprocess.core.exposure.EngineVerdict;
import stoneprocess.core.exposure.NeededAir;
import stoneprocess.core.exposure.Purge;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.exposure.RoomAir;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Power;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.source.Sources;

/** What an engine does to the air of a room. Every sheet says that it is not cleared. */
public final class CarbonMonoxideSheet {
    private final CarbonMonoxide carbonMonoxide = CarbonMonoxide.of(Parameters.standard());
    private final Figures figures;

    /** The sheet in the reader's units. */
    public CarbonMonoxideSheet(UnitSystem units) {
        this.figures = new Figures(units);
    }

    /**
     * The text for a small petrol engine by its power.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for a power or time that the computation does not take
     */
    public String ofEngine(RoomAir room, Power power, TimeSpan running) {
        Parameter emission = Parameters.standard().parameter("carbon-monoxide.petrol-per-kilowatt-hour");
        return render(
                room,
                List.of("engine", figures.engine(power) + " of a small four-stroke petrol engine"),
                carbonMonoxide.petrolEngine(power),
                running,
                "Gas of the engine: " + emission.value().print() + " for each kilowatt-hour, an emission standard ("
                        + Sheet.source(emission.source())
                        + "). Worn or choked engines give off more; a measured figure goes before this one.");
    }

    /**
     * The text for a source that is known.
     *
     * @throws stoneprocess.core.problem.InvalidInputException for no source or a time that the computation does not take
     */
    public String ofSource(RoomAir room, Airflow source, TimeSpan running) {
        return render(
                room,
                List.of("source", figures.given(source) + " of carbon monoxide"),
                source,
                running,
                "Gas of the engine: as given.");
    }

    private String render(
            RoomAir room, List<String> given, Airflow source, TimeSpan running, String whereTheGasIsFrom) {
        CarbonMonoxideBuildUp buildUp = carbonMonoxide.buildUp(room, source, running);
        Sheet sheet = new Sheet("Carbon monoxide of an engine in a room");
        sheet.answer("NOT CLEARED: no calculation clears an engine indoors. Take an electric machine.");
        sheet.answer(sentence(buildUp.verdict()));
        boolean airKnown = room.outdoorAir().cubicMetresPerHour() > 0;
        sheet.rows(
                "Given",
                List.of(
                        List.of("room", figures.given(room.volume())),
                        List.of("fresh air", airKnown ? figures.given(room.outdoorAir()) : "none that is known"),
                        List.of("gas in that air", figures.given(room.background())),
                        given,
                        List.of("running time", figures.given(running))));
        String ceiling = figures.given(
                carbonMonoxide.limit(CarbonMonoxideLimit.NIOSH_CEILING).value());
        sheet.rows(
                "Result, were the room fully mixed",
                List.of(
                        List.of("engine gives off", figures.atLeast(source) + " of carbon monoxide"),
                        List.of("air when it stops", figures.atLeast(buildUp.atEnd())),
                        List.of("mean over 8 h", figures.atLeast(buildUp.shiftMean())),
                        List.of(
                                "time to " + ceiling,
                                buildUp.timeToCeiling()
                                        .map(figures::atMost)
                                        .orElse(
                                                "not reached in mixed air, which says nothing of the machine's place"))));
        List<List<String>> holding = new ArrayList<>();
        List<String> sources = new ArrayList<>();
        holding.add(List.of("", "air to hold it", "one change in", "airing after"));
        for (CarbonMonoxideLimit aim : CarbonMonoxideLimit.values()) {
            NeededAir needed = carbonMonoxide.neededAir(room, source, aim);
            Purge purge = carbonMonoxide.purge(room, buildUp.atEnd(), aim);
            String limit = name(aim) + " " + figures.given(purge.limit().value());
            holding.add(List.of(
                    limit,
                    needed.air().map(figures::atLeast).orElse("no air does"),
                    needed.oneChange().map(figures::atMost).orElse("-"),
                    airing(purge)));
            sources.add(limit + ": " + Sheet.source(purge.limit()) + ".");
        }
        sheet.rows("Fresh air with the engine running; airing with the engine off and everybody out", holding);
        sheet.items("Limits", sources);
        return sheet.close(
                List.of(
                        "Room, air and time as given: nothing was measured here.",
                        whereTheGasIsFrom,
                        "A balance of gas and air in a fully mixed room ("
                                + Sheet.source(Sources.standard().get("NIOSH-96-118")) + "). " + Figures.ROUNDING),
                buildUp.cautions().stream().map(CarbonMonoxideSheet::caution).toList(),
                Role.HYGIENIST);
    }

    private String airing(Purge purge) {
        return purge.time()
                .map(time -> time.minutes() > 0 ? figures.atLeast(time) : "not over it")
                .orElse("never with this air");
    }

    private static String name(CarbonMonoxideLimit limit) {
        return switch (limit) {
            case NIOSH_CEILING -> "NIOSH, never over";
            case NIOSH_MEAN -> "NIOSH, mean over 8 h";
            case OSHA_MEAN -> "OSHA, mean over 8 h";
        };
    }

    private static String sentence(EngineVerdict verdict) {
        return switch (verdict) {
            case NOT_CLEARED -> "The limits are not reached in mixed air, which clears nothing.";
            case OVER_MEAN -> "OVER THE MEAN of a day, even fully mixed: nobody works in this air.";
            case OVER_CEILING -> "OVER THE CEILING, even fully mixed: nobody stays in this air.";
        };
    }

    private static String caution(EngineCaution caution) {
        return switch (caution) {
            case NEVER_CLEARED_BY_CALCULATION ->
                "No figure on this sheet allows an engine or a generator indoors or at" + " a door.";
            case OPEN_DOORS_AND_FANS_ARE_NO_GUARANTEE -> "Open doors and fans do not guarantee safety.";
            case WORSE_AT_THE_MACHINE ->
                "Air is never fully mixed: it is worse at the machine and in dead corners, and"
                        + " more air and time are needed than stand here.";
            case MEASURE_AND_WEAR_AN_ALARM -> "Measure before anyone goes in, and wear an alarm all the time.";
        };
    }
}
