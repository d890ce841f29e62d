/** Measures the rule base, and holds it against its opponent. */
@NullMarked
package org.brakerules.benchmark;

import org.jspecify.annotations.NullMarked;
