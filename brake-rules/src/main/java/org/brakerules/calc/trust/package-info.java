/** How far a reading can be trusted against its limit. */
@NullMarked
package org.brakerules.calc.trust;

import org.jspecify.annotations.NullMarked;
