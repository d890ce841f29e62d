package org.brakerules.benchmark.oracle;

import org.brakerules.model.decision.Verdict;

/**
 * One reason for the decision on a part.
 *
 * @param rule the id of the rule that says the same
 * @param verdict what is said of the part
 */
public record OracleReason(String rule, Verdict verdict) {}
