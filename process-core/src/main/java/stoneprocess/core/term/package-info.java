/**
 * Words of the trade with a stable key: what JSON, tables and text bundles call a constant.
 */
@NullMarked
package stoneprocess.core.term;

import org.jspecify.annotations.NullMarked;
