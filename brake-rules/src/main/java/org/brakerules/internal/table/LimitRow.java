package org.brakerules.internal.table;

import org.brakerules.limit.Limit;

/**
 * A limit with what its row selects and reads.
 *
 * @param limit the limit
 * @param selector the parts it is for
 * @param property the property it limits
 */
public record LimitRow(Limit limit, Selector selector, Property property) {}
