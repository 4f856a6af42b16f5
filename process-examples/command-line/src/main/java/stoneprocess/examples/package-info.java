/** The command line's entry point. Parsing, calling the facade and printing: no advice is made here. */
@NullMarked
package stoneprocess.examples;

import org.jspecify.annotations.NullMarked;
