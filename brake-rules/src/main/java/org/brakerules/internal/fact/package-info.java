/** What rule files can speak of, beside the parts themselves. */
@NullMarked
package org.brakerules.internal.fact;

import org.jspecify.annotations.NullMarked;
