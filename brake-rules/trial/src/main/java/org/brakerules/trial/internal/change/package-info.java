/** Changes of rules and limits that a case should notice. */
@NullMarked
package org.brakerules.trial.internal.change;

import org.jspecify.annotations.NullMarked;
