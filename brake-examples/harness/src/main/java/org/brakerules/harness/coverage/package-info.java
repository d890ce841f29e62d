/** What the cases show of the rule base, as text, JSON and HTML. */
@NullMarked
package org.brakerules.harness.coverage;

import org.jspecify.annotations.NullMarked;
