/** The command line: decides jobs, lists inspection points, runs the cases of the rules. */
@NullMarked
package org.brakerules.harness;

import org.jspecify.annotations.NullMarked;
