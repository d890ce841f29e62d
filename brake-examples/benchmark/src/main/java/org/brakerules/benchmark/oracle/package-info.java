/**
 * A second decision maker, written in plain Java from the trade's own rules, which shares nothing
 * with the rule base but the model. Where the two disagree, one of them is wrong.
 *
 * <p>Each group of parts has one class with two tables: what must be looked at, and what follows
 * from what was found, in sentences with the id of the rule that says the same. The figures stand
 * together. {@code Bench} speaks the sentences, {@code Conclusion} makes an answer of them.
 */
@NullMarked
package org.brakerules.benchmark.oracle;

import org.jspecify.annotations.NullMarked;
