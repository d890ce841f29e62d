/**
 * What a whole axle and a whole vehicle need: what must be alike at both ends, how many brakes
 * count as defective, and what published criteria say of that.
 */
@NullMarked
package org.brakerules.vehicle;

import org.jspecify.annotations.NullMarked;
