package org.brakerules.linter.internal.check;

import org.brakerules.linter.internal.base.RuleBase;

/** One thing to look for in a rule base. */
interface Check {

  /** Adds everything it finds. */
  void check(RuleBase base, Findings findings);
}
