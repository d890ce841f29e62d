/**
 * Exact quantities: what is compared with a limit is never rounded and never floating point.
 *
 * <p>Two quantities are equal when they are the same amount, in whatever units they were written:
 * {@code 0.030 in} equals {@code 0.762 mm}.
 */
@NullMarked
package org.brakerules.model.quantity;

import org.jspecify.annotations.NullMarked;
