package org.brakerules.linter.internal.base;

import java.util.Optional;

/**
 * One folder of the rule base.
 *
 * @param name its name, such as {@code camshaft-bushing}
 * @param rules its rules; empty if it has no rule file
 * @param limits its limits; empty if it has no such table
 * @param points its inspection points; empty if it has no such table
 */
public record Component(
    String name, Optional<RuleFile> rules, Optional<Table> limits, Optional<Table> points) {}
