/**
 * Estimates of force, good for holding one brake against another. This is the only package that
 * works with floating point, and nothing in it is held against a limit.
 */
@NullMarked
package org.brakerules.calc.force;

import org.jspecify.annotations.NullMarked;
