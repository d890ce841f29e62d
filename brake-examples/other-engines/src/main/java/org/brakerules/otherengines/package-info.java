/** The same answers by other engines, to see what each costs. */
@NullMarked
package org.brakerules.otherengines;

import org.jspecify.annotations.NullMarked;
