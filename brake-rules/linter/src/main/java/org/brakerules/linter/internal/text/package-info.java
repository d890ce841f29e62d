/** A file as text: positions and tokens. */
@NullMarked
package org.brakerules.linter.internal.text;

import org.jspecify.annotations.NullMarked;
