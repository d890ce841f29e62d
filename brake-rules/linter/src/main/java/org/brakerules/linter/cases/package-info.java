/** From what a case changes to the job that it makes. */
@NullMarked
package org.brakerules.linter.cases;

import org.jspecify.annotations.NullMarked;
