/** Linings and drums: how much is left, how evenly worn, and for how long. */
@NullMarked
package org.brakerules.calc.wear;

import org.jspecify.annotations.NullMarked;
