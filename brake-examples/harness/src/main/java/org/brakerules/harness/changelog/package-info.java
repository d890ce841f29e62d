/** Reads the changelog. */
@NullMarked
package org.brakerules.harness.changelog;

import org.jspecify.annotations.NullMarked;
