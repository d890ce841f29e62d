package org.brakerules.linter.internal.base;

import java.util.Optional;
import org.brakerules.linter.internal.cases.CaseFile;

/**
 * One folder of the rule base.
 *
 * @param name its name, such as {@code camshaft-bushing}
 * @param rules its rules; empty if it has no rule file
 * @param limits its limits; empty if it has no such table
 * @param points its inspection points; empty if it has no such table
 * @param equivalentChanges its changes that no case can notice; empty if it has no such table
 * @param cases its cases; empty if it has no such file
 */
public record Component(
    String name,
    Optional<RuleFile> rules,
    Optional<Table> limits,
    Optional<Table> points,
    Optional<Table> equivalentChanges,
    Optional<CaseFile> cases) {}
