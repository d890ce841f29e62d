/** Readings held against limits, before any rule is asked. */
@NullMarked
package org.brakerules.internal.check;

import org.jspecify.annotations.NullMarked;
