/** A sheet for the bench: one page of HTML for each wheel end, with pictures drawn from the job. */
@NullMarked
package org.brakerules.harness.sheet;

import org.jspecify.annotations.NullMarked;
