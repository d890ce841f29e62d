/** What the rows of the tables say, taken apart. */
@NullMarked
package org.brakerules.linter.internal.table;

import org.jspecify.annotations.NullMarked;
