package org.brakerules.linter.internal.check;

import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;

/** A check that looks at one rule at a time. */
interface RuleCheck extends Check {

  /** Adds everything it finds in one rule. */
  void check(AuthoredRule rule, RuleBase base, Findings findings);

  @Override
  default void check(RuleBase base, Findings findings) {
    base.rules().forEach(rule -> check(rule, base, findings));
  }
}
