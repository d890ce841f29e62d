/** What all JSON answers have in common. */
@NullMarked
package org.brakerules.internal.json;

import org.jspecify.annotations.NullMarked;
