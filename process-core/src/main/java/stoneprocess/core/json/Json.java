package stoneprocess.core.json;

import java.util.ArrayList;
import java.util.List;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.audit.AuditReport;
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
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.gloss.AcceptanceCheck;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.site.FloorGloss;
import stoneprocess.core.site.PlannedJob;
import stoneprocess.core.site.Quotation;
import stoneprocess.core.survey.FloorSurvey;

/** What goes into the library and what comes out of it, as JSON: {@code Json.SURVEY.read(text)}. */
public final class Json {
    private static final List<Form<?>> ALL = new ArrayList<>();

    /**
     * A survey. What is not known is left out or written {@code "unknown"}; an empty list and {@code "none"} mean that
     * somebody looked.
     */
    public static final Form<FloorSurvey> SURVEY = form(
            "survey",
            FloorSurvey.class,
            "What is known about one homogeneous area of floor with its zones. Everything but format and title may be"
                    + " left out; left out and \"unknown\" mean the same. \"none\" and an empty list mean that somebody"
                    + " looked.");

    /** A recommendation. Every parameter has to stand in it: a missing one is not taken from the shipped set. */
    public static final Form<Recommendation> RECOMMENDATION = form(
            "recommendation",
            Recommendation.class,
            "The answer to a floor survey: keys and arguments, no sentences. Quantities are in the unit that they name.");

    /**
     * A job log. What is not known is left out or written {@code "unknown"}; an empty list of signs means that somebody
     * looked for them.
     */
    public static final Form<JobLog> JOB_LOG = form(
            "job-log",
            JobLog.class,
            "What a crew noted while it worked on one floor, in the order of the pages. Left out and \"unknown\" mean"
                    + " the same. An empty list of signs means that somebody looked.");

    /** The answer to a job log. */
    public static final Form<NextMove> NEXT_MOVE =
            form("next-move", NextMove.class, "The answer to a job log: keys and arguments, no sentences.");

    /** Signs traced to their causes. */
    public static final Form<Diagnosis> DIAGNOSIS = form("diagnosis", Diagnosis.class, "Signs traced to their causes.");

    /** Why a topic was decided as it was. */
    public static final Form<Why> WHY = form("why", Why.class, "Why a topic was decided as it was.");

    /** Why a value was not chosen. */
    public static final Form<WhyNot> WHY_NOT =
            form("why-not", WhyNot.class, "Why a value is not the outcome of a topic.");

    /** What differs between two recommendations. */
    public static final Form<Difference> DIFFERENCE =
            form("difference", Difference.class, "What differs between two recommendations.");

    /** The smallest changes that give a value. */
    public static final Form<HowTo> HOW_TO = form(
            "how-to",
            HowTo.class,
            "The smallest changes of a survey that give a value: keys and arguments, no sentences.");

    /** What is worth finding out. */
    public static final Form<WhatElse> WHAT_ELSE =
            form("what-else", WhatElse.class, "What is worth finding out: open facts, the weightiest first.");

    /** Two rulebases side by side. */
    public static final Form<Comparison> COMPARISON =
            form("comparison", Comparison.class, "Floors that two rulebases advise differently.");

    /** What an audit found. */
    public static final Form<AuditReport> AUDIT =
            form("audit", AuditReport.class, "What an audit of a rulebase looked at and found.");

    /** Hours, calendar and consumables of a planned job. */
    public static final Form<Estimate> ESTIMATE =
            form("estimate", Estimate.class, "Hours, calendar and consumables of a job, each as low, likely and high.");

    /** What a job costs by a price list. */
    public static final Form<Cost> COST = form("cost", Cost.class, "What a job costs by a price list.");

    /** A job on the days of a calendar, as bars of a chart. */
    public static final Form<Schedule> SCHEDULE = form(
            "schedule",
            Schedule.class,
            "A job on the days of a calendar: bars of task, bay and crew, with start and end in shift hours.");

    /** A plan as a job that can be estimated. */
    public static final Form<PlannedJob> PLANNED_JOB = form(
            "planned-job",
            PlannedJob.class,
            "A plan as a job that can be estimated: steps with machine, passes and water, other work, stone and site.");

    /** The times of a crew, in place of the defaults. */
    public static final Form<CrewTimes> CREW_TIMES = form(
            "crew-times",
            CrewTimes.class,
            "What a crew timed on its own floors: area an hour in the open field, running length an hour along edges.");

    /** The prices of a house. Everything but format and currency may be left out. */
    public static final Form<PriceList> PRICE_LIST = form(
            "price-list",
            PriceList.class,
            "Prices of a house, all in one currency. Everything but format and currency may be left out; what has no"
                    + " price is never taken as free.");

    /** Prices that a house can send. */
    public static final Form<Quotation> QUOTATION = form(
            "quotation",
            Quotation.class,
            "Prices of a floor that a house can send: variants side by side, what changes them, what they do not cover.");

    /** Two estimates side by side. */
    public static final Form<EstimateComparison> ESTIMATES =
            form("estimates", EstimateComparison.class, "Two estimates side by side, line by line.");

    /** What a floor reads, could read and will read. */
    public static final Form<FloorGloss> GLOSS = form(
            "gloss",
            FloorGloss.class,
            "What a floor reads, what its stone could read and what its plan would bring in the open field.");

    /** Readings against the agreed gloss. */
    public static final Form<AcceptanceCheck> GLOSS_ACCEPTANCE =
            form("gloss-acceptance", AcceptanceCheck.class, "Readings of the finished floor against the agreed gloss.");

    /** What is to be held against its limits. */
    public static final Form<ExposureInputs> EXPOSURE = form(
            "exposure",
            ExposureInputs.class,
            "Noise, gas, dust, slip, slurry, lifts and circuits that are to be held against their limits. Local codes and"
                    + " the named role decide.");

    /** Noise of a working day. */
    public static final Form<NoiseExposure> NOISE =
            form("noise", NoiseExposure.class, "Noise dose of a working day. Local codes and the named role decide.");

    /** Carbon monoxide in a room in which an engine runs. */
    public static final Form<CarbonMonoxideBuildUp> CARBON_MONOXIDE = form(
            "carbon-monoxide",
            CarbonMonoxideBuildUp.class,
            "Carbon monoxide in a room in which an engine runs. Local codes and the named role decide.");

    /** The outdoor air that an engine needs. */
    public static final Form<NeededAir> NEEDED_AIR = form(
            "needed-air",
            NeededAir.class,
            "Outdoor air that keeps carbon monoxide under its limit. Local codes decide.");

    /** How long a room is aired before people come back. */
    public static final Form<Purge> PURGE =
            form("purge", Purge.class, "How long a room is aired before people come back. Local codes decide.");

    /** What silica control a task needs. */
    public static final Form<SilicaControl> SILICA = form(
            "silica", SilicaControl.class, "Whether dust control suffices. Local codes and the named role decide.");

    /** Load of an electric circuit. */
    public static final Form<CircuitLoad> CIRCUIT =
            form("circuit", CircuitLoad.class, "Continuous load of a circuit. Local codes and the named role decide.");

    /** How much may be lifted. */
    public static final Form<LiftingLimit> LIFTING =
            form("lifting", LiftingLimit.class, "The load that may be lifted by hand. The named role decides.");

    /** How a slurry is classed by its acidity. */
    public static final Form<SlurryWater> SLURRY =
            form("slurry", SlurryWater.class, "Acidity of slurry water against its limit. Local codes decide.");

    /** A pendulum or roughness value against its limit. */
    public static final Form<SlipClass<?>> SLIP_CLASS =
            form("slip-class", slipClass(), "A measured slip value in its class. The named role decides.");

    /** A ramp test against its limit. */
    public static final Form<RampResult> SLIP_RAMP =
            form("slip-ramp", RampResult.class, "A ramp test in its class. The named role decides.");

    /** A coefficient of friction against its limit. */
    public static final Form<FrictionCheck> FRICTION = form(
            "friction",
            FrictionCheck.class,
            "A wet coefficient of friction against its limit. The named role decides.");

    private Json() {}

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Class<SlipClass<?>> slipClass() {
        return (Class) SlipClass.class;
    }

    /** All forms, in the order of this list. */
    public static List<Form<?>> all() {
        return List.copyOf(ALL);
    }

    private static <T> Form<T> form(String name, Class<T> type, String description) {
        Form<T> form = Form.of(name, type, description);
        ALL.add(form);
        return form;
    }
}
