/**
 * From a survey, a job log and closed decisions to facts. {@code FactTable} says where each fact comes from, the classes
 * named for what they classify turn answers into classes, and {@code Facts} answers what other rooms ask.
 */
@NullMarked
package stoneprocess.rules.internal.classify;

import org.jspecify.annotations.NullMarked;
