/** Reads how long records are kept. */
@NullMarked
package org.brakerules.internal.record;

import org.jspecify.annotations.NullMarked;
