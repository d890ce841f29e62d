/** What is said of the results, held against them. */
@NullMarked
package org.brakerules.benchmark.result;

import org.jspecify.annotations.NullMarked;
