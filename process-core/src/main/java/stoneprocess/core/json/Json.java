package stoneprocess.core.json;

import java.util.List;
import stoneprocess.core.answer.Comparison;
import stoneprocess.core.answer.Difference;
import stoneprocess.core.answer.HowTo;
import stoneprocess.core.answer.WhatElse;
import stoneprocess.core.answer.Why;
import stoneprocess.core.answer.WhyNot;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.follow.NextMove;
import stoneprocess.core.log.JobLog;
import stoneprocess.core.plan.Recommendation;
import stoneprocess.core.survey.FloorSurvey;

/** What goes into the library and what comes out of it, as JSON: {@code Json.SURVEY.read(text)}. */
public final class Json {
    /**
     * A survey. What is not known is left out or written {@code "unknown"}; an empty list and {@code "none"} mean that
     * somebody looked.
     */
    public static final Form<FloorSurvey> SURVEY = Form.of(
            "survey",
            FloorSurvey.class,
            "What is known about one homogeneous area of floor with its zones. Everything but format and title may be"
                    + " left out; left out and \"unknown\" mean the same. \"none\" and an empty list mean that somebody"
                    + " looked.");

    /** A recommendation. Every parameter has to stand in it: a missing one is not taken from the shipped set. */
    public static final Form<Recommendation> RECOMMENDATION = Form.of(
            "recommendation",
            Recommendation.class,
            "The answer to a floor survey: keys and arguments, no sentences. Quantities are in the unit that they name.");

    /**
     * A job log. What is not known is left out or written {@code "unknown"}; an empty list of signs means that somebody
     * looked for them.
     */
    public static final Form<JobLog> JOB_LOG = Form.of(
            "job-log",
            JobLog.class,
            "What a crew noted while it worked on one floor, in the order of the pages. Left out and \"unknown\" mean"
                    + " the same. An empty list of signs means that somebody looked.");

    /** The answer to a job log. */
    public static final Form<NextMove> NEXT_MOVE =
            Form.of("next-move", NextMove.class, "The answer to a job log: keys and arguments, no sentences.");

    /** Signs traced to their causes. */
    public static final Form<Diagnosis> DIAGNOSIS =
            Form.of("diagnosis", Diagnosis.class, "Signs traced to their causes.");

    /** Why a topic was decided as it was. */
    public static final Form<Why> WHY = Form.of("why", Why.class, "Why a topic was decided as it was.");

    /** Why a value was not chosen. */
    public static final Form<WhyNot> WHY_NOT =
            Form.of("why-not", WhyNot.class, "Why a value is not the outcome of a topic.");

    /** What differs between two recommendations. */
    public static final Form<Difference> DIFFERENCE =
            Form.of("difference", Difference.class, "What differs between two recommendations.");

    /** The smallest changes that give a value. */
    public static final Form<HowTo> HOW_TO = Form.of(
            "how-to",
            HowTo.class,
            "The smallest changes of a survey that give a value: keys and arguments, no sentences.");

    /** What is worth finding out. */
    public static final Form<WhatElse> WHAT_ELSE =
            Form.of("what-else", WhatElse.class, "What is worth finding out: open facts, the weightiest first.");

    /** Two rulebases side by side. */
    public static final Form<Comparison> COMPARISON =
            Form.of("comparison", Comparison.class, "Floors that two rulebases advise differently.");

    /** What an audit found. */
    public static final Form<AuditReport> AUDIT =
            Form.of("audit", AuditReport.class, "What an audit of a rulebase looked at and found.");

    private Json() {}

    /** All forms. */
    public static List<Form<?>> all() {
        return List.of(
                SURVEY,
                RECOMMENDATION,
                JOB_LOG,
                NEXT_MOVE,
                DIAGNOSIS,
                WHY,
                WHY_NOT,
                DIFFERENCE,
                HOW_TO,
                WHAT_ELSE,
                COMPARISON,
                AUDIT);
    }
}
