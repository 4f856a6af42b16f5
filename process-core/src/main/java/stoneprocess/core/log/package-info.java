/**
 * The job log: work done, looks, readings, events and tries on the test area, as the crew noted them.
 */
@NullMarked
package stoneprocess.core.log;

import org.jspecify.annotations.NullMarked;
