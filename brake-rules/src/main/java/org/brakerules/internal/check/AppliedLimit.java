package org.brakerules.internal.check;

import org.brakerules.internal.table.LimitRow;
import org.brakerules.model.decision.LimitInForce;

/**
 * A limit in force for one part.
 *
 * @param row the row of the table that says how it is read
 * @param limit the value and its source, the maker's or the row's own
 */
public record AppliedLimit(LimitRow row, LimitInForce limit) {}
