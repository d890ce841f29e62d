/** The status of a vehicle as text. */
@NullMarked
package org.brakerules.harness.vehicle;

import org.jspecify.annotations.NullMarked;
