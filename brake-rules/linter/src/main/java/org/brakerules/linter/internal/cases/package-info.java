/** Files of cases as they were written. */
@NullMarked
package org.brakerules.linter.internal.cases;

import org.jspecify.annotations.NullMarked;
