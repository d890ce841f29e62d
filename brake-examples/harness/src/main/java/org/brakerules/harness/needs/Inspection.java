package org.brakerules.harness.needs;

import java.time.LocalDate;
import java.util.Optional;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Scope;

/**
 * An inspection that is about to be made.
 *
 * @param layout how the brake is built
 * @param scope how far it will be taken apart
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road; empty for all
 */
public record Inspection(Layout layout, Scope scope, LocalDate date, Optional<RuleSet> ruleSet) {}
