/** Holds the rule base against the last release, and the difference against the changelog. */
@NullMarked
package org.brakerules.harness.changes;

import org.jspecify.annotations.NullMarked;
