/** What was measured, as a file and as a page. */
@NullMarked
package org.brakerules.benchmark.result;

import org.jspecify.annotations.NullMarked;
