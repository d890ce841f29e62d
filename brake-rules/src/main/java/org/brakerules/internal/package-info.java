/** A rule base put together: what decides behind the public face. */
@NullMarked
package org.brakerules.internal;

import org.jspecify.annotations.NullMarked;
