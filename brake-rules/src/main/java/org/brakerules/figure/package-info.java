/**
 * The figures of a job: everything that can be worked out from its readings, with the work shown.
 */
@NullMarked
package org.brakerules.figure;

import org.jspecify.annotations.NullMarked;
