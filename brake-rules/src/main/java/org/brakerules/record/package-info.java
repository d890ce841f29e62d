/** One document of a job to file: what was found, what was decided, and what was proved. */
@NullMarked
package org.brakerules.record;

import org.jspecify.annotations.NullMarked;
