/** From what the rules found to one decision per part. */
@NullMarked
package org.brakerules.internal.decide;

import org.jspecify.annotations.NullMarked;
