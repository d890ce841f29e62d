/**
 * Many jobs, one a line: read, decided and written by several threads at once, in the order of the
 * input, so that a run that was stopped goes on where it was.
 */
@NullMarked
package org.brakerules.harness.batch;

import org.jspecify.annotations.NullMarked;
