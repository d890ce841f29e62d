/** Names as people write them. */
@NullMarked
package org.brakerules.model.text;

import org.jspecify.annotations.NullMarked;
