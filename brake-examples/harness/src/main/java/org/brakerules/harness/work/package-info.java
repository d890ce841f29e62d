/** The order of work of a job for people to read. */
@NullMarked
package org.brakerules.harness.work;

import org.jspecify.annotations.NullMarked;
