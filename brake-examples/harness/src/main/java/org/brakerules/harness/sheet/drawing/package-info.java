/** The parts of a wheel end as shapes: where each lies, and where its number points. */
@NullMarked
package org.brakerules.harness.sheet.drawing;

import org.jspecify.annotations.NullMarked;
