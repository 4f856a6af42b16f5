/**
 * A text before it is a page: a document of sections and items that holds keys with named arguments, never sentences; the
 * languages, each a set of bundles; and the pages that are made of it.
 */
@NullMarked
package stoneprocess.rules.text.document;

import org.jspecify.annotations.NullMarked;
