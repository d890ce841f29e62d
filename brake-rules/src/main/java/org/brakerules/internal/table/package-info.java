/** The tables beside the rule files: limits, points, sources, rule sets and cautions. */
@NullMarked
package org.brakerules.internal.table;

import org.jspecify.annotations.NullMarked;
