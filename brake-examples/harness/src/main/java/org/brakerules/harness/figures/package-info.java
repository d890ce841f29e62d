/** Shows the figures of a job: as text, and as drawings. */
@NullMarked
package org.brakerules.harness.figures;

import org.jspecify.annotations.NullMarked;
