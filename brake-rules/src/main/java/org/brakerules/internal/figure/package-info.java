/** Works out the figures of a job, one class for each matter. */
@NullMarked
package org.brakerules.internal.figure;

import org.jspecify.annotations.NullMarked;
