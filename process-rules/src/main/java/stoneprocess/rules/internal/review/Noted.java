package stoneprocess.rules.internal.review;

import stoneprocess.core.log.Entry;

/**
 * An entry with its place in the log.
 *
 * @param position position in the log, counted from 0
 * @param entry the entry
 */
record Noted<E extends Entry>(int position, E entry) {}
