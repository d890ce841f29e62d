package org.brakerules.figure;

import org.brakerules.calc.Working;

/**
 * One figure of a job.
 *
 * @param about the path of the part, wheel end or unit it is about; empty if it is about the
 *     vehicle and the vehicle has no name
 * @param working what was worked out, with its steps
 */
public record Figure(String about, Working working) {}
