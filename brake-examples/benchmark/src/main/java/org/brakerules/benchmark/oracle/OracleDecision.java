package org.brakerules.benchmark.oracle;

import org.brakerules.model.decision.Disposition;

/**
 * What the oracle says of one part.
 *
 * @param disposition what to do with it
 * @param hold whether work on it must stop
 */
public record OracleDecision(Disposition disposition, boolean hold) {}
