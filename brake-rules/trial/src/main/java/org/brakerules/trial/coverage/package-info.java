/** What the cases of a rule base show of its rules and limits, and what they leave open. */
@NullMarked
package org.brakerules.trial.coverage;

import org.jspecify.annotations.NullMarked;
