/**
 * A planned floor: the one stone that rules, forecasts and estimates take it for, the figures of its steps, and the job that
 * can be estimated. Areas and waits come from survey and plan, rates from the parameters that the plan was made with, the
 * rest from the caller. What has no rate is listed, never taken as done in no time.
 */
@NullMarked
package stoneprocess.core.site;

import org.jspecify.annotations.NullMarked;
