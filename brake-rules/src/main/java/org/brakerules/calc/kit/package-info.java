/** Which kits cover what a job needs. */
@NullMarked
package org.brakerules.calc.kit;

import org.jspecify.annotations.NullMarked;
