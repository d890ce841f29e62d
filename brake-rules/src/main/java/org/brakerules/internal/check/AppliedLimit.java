package org.brakerules.internal.check;

import org.brakerules.limit.Limit;
import org.brakerules.model.decision.LimitInForce;

/**
 * A limit in force for one part.
 *
 * @param row the row of the table that says how it is read
 * @param limit the value and its source, the maker's or the row's own
 */
record AppliedLimit(Limit row, LimitInForce limit) {}
