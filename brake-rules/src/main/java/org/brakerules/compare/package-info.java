/** One job under two rule sets, side by side. */
@NullMarked
package org.brakerules.compare;

import org.jspecify.annotations.NullMarked;
