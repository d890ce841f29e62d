package org.brakerules.calc.shim;

import org.brakerules.calc.Working;

/**
 * What to do with one stack of shims, and how it was worked out.
 *
 * @param choice what to do
 * @param working how it was worked out
 */
public record ShimPlan(ShimChoice choice, Working working) {}
