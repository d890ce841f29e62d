/**
 * Push-rod stroke: what is left of it, what each looseness costs, and how far the cam has turned
 * for wear.
 */
@NullMarked
package org.brakerules.calc.stroke;

import org.jspecify.annotations.NullMarked;
