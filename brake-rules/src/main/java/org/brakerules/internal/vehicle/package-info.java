/** Holds a vehicle against the published criteria in {@code work/criteria.csv}. */
@NullMarked
package org.brakerules.internal.vehicle;

import org.jspecify.annotations.NullMarked;
