/**
 * The order of work of a job: what is done, in which order, with each caution at the step where the
 * danger is, the points at which nobody goes on until they pass, and what is written down.
 */
@NullMarked
package org.brakerules.work;

import org.jspecify.annotations.NullMarked;
