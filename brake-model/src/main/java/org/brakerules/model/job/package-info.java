/** A brake job: what was inspected, on which date, under which rules, how far apart. */
@NullMarked
package org.brakerules.model.job;

import org.jspecify.annotations.NullMarked;
