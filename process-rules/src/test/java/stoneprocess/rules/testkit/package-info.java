/** What an embedder needs to test a rulebase of their own with jqwik; docs/testkit.md tells how. */
@NullMarked
package stoneprocess.rules.testkit;

import org.jspecify.annotations.NullMarked;
