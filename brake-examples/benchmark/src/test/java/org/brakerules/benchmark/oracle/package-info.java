/** The oracle by itself. */
@NullMarked
package org.brakerules.benchmark.oracle;

import org.jspecify.annotations.NullMarked;
