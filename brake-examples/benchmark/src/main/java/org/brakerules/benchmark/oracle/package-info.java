/**
 * A second decision maker, written in plain Java from the trade's own rules, which shares nothing
 * with the rule base but the model. Where the two disagree, one of them is wrong.
 *
 * <p>Each group of parts has one class with three tables: what must be looked at, which figures
 * hold, and what follows from what was found.
 */
@NullMarked
package org.brakerules.benchmark.oracle;

import org.jspecify.annotations.NullMarked;
