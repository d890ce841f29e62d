/** Readings: what was measured, where, and how. */
@NullMarked
package org.brakerules.model.reading;

import org.jspecify.annotations.NullMarked;
