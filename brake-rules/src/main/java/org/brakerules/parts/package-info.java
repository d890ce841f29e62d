/**
 * The parts list of a job: what to order, to keep, to save from the worn shoes and to look at, and
 * which kits cover it.
 */
@NullMarked
package org.brakerules.parts;

import org.jspecify.annotations.NullMarked;
