package org.brakerules.benchmark.oracle;

import java.util.Optional;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Reading;

/**
 * How the readings of a part stand against one limit.
 *
 * @param limit the id of the limit
 * @param status how they stand
 * @param side the side of the figure on which a reading passes; empty if no figure is known
 * @param figure the figure; empty if none is known
 * @param reading the reading that decided: the worst of those that count, or the first if none does
 *     or no figure is known; empty if none was taken
 * @param margin how far from the figure it is, never negative; empty if none counts
 */
public record OracleCheck(
    String limit,
    CheckStatus status,
    Optional<Comparison> side,
    Optional<Quantity<?>> figure,
    Optional<Reading<?>> reading,
    Optional<Quantity<?>> margin) {}
