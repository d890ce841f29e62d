/**
 * What a technician works out with a pencil, each result with its steps shown. The functions stand
 * on their own: they need no job and no rule base.
 */
@NullMarked
package org.brakerules.calc;

import org.jspecify.annotations.NullMarked;
