/** Limits: the numbers of the rule base, each with its source and the dates it holds. */
@NullMarked
package org.brakerules.limit;

import org.jspecify.annotations.NullMarked;
