/** Finds out what cases show of a rule base. */
@NullMarked
package org.brakerules.trial.internal.coverage;

import org.jspecify.annotations.NullMarked;
