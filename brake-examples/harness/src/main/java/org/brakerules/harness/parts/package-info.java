/** Parts lists for people to read. */
@NullMarked
package org.brakerules.harness.parts;

import org.jspecify.annotations.NullMarked;
