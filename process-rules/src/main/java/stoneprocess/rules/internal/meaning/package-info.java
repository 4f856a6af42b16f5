/**
 * What each rule reads and says, found out once from its compiled form and asked by whatever explains, audits or tells of
 * rules.
 */
@NullMarked
package stoneprocess.rules.internal.meaning;

import org.jspecify.annotations.NullMarked;
