/** Runs the cases that lie beside the rules. */
@NullMarked
package org.brakerules.harness.cases;

import org.jspecify.annotations.NullMarked;
