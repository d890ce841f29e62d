/** The report of a decision, for people to read. */
@NullMarked
package org.brakerules.harness.report;

import org.jspecify.annotations.NullMarked;
