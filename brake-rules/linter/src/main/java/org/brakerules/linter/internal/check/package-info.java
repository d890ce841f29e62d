/** The checks, one class each, in one list. */
@NullMarked
package org.brakerules.linter.internal.check;

import org.jspecify.annotations.NullMarked;
