/** HTML and SVG, written as well-formed text. */
@NullMarked
package org.brakerules.harness.html;

import org.jspecify.annotations.NullMarked;
