/**
 * Surveys, job logs and the answers to them as JSON. The only room of the core that knows Jackson.
 */
@NullMarked
package stoneprocess.core.json;

import org.jspecify.annotations.NullMarked;
