/**
 * Programs, stages and the ledger: one run from facts to closed topics.
 */
@NullMarked
package stoneprocess.rules.internal.run;

import org.jspecify.annotations.NullMarked;
