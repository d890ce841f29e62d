/** Rule base and oracle run on the same jobs and compared. */
@NullMarked
package org.brakerules.benchmark;

import org.jspecify.annotations.NullMarked;
