/** Runs the measurements, each in a process of its own, one round after the other. */
@NullMarked
package org.brakerules.benchmark.run;

import org.jspecify.annotations.NullMarked;
