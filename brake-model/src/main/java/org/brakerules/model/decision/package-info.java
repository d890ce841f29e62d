/** What the rules answer: one decision per part, with its reasons, and what is still to be seen. */
@NullMarked
package org.brakerules.model.decision;

import org.jspecify.annotations.NullMarked;
