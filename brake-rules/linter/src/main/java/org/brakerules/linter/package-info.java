/** Reads the rule base before it is compiled and says what is wrong, where, and what to write. */
@NullMarked
package org.brakerules.linter;

import org.jspecify.annotations.NullMarked;
