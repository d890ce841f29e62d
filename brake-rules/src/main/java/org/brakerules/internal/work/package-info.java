/** From the decisions and figures of a job to its order of work. */
@NullMarked
package org.brakerules.internal.work;

import org.jspecify.annotations.NullMarked;
