/**
 * The tiny reader for the tab-separated tables that are shipped with the library. Not promised to users.
 */
@NullMarked
package stoneprocess.core.internal.table;

import org.jspecify.annotations.NullMarked;
