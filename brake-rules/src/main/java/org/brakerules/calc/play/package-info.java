/** Play of shafts and pins, and whose wear it is. */
@NullMarked
package org.brakerules.calc.play;

import org.jspecify.annotations.NullMarked;
