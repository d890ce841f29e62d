package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.model.part.PartKind;

/** A reading beyond a limit is of the kind of part that the limit is for. */
final class LimitPartCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    Whereabouts whereabouts = new Whereabouts(base);
    for (Pattern pattern : rule.patterns()) {
      whereabouts
          .kindOfLimit(pattern)
          .ifPresent(ofLimit -> check(rule, pattern, ofLimit, findings));
    }
  }

  private static void check(
      AuthoredRule rule, Pattern pattern, PartKind ofLimit, Findings findings) {
    Whereabouts.demanded(pattern, Whereabouts.PART_KIND)
        .filter(one -> Whereabouts.statedKind(pattern).filter(kind -> kind != ofLimit).isPresent())
        .forEach(
            one ->
                findings.add(
                    LintKind.LIMIT_OF_ANOTHER_PART,
                    rule,
                    one.value().get(0),
                    "the limit is of the "
                        + ofLimit.inWords()
                        + ", so a reading beyond it is never of a "
                        + one.valueText(),
                    "write PartKind." + ofLimit.name() + ", or leave partKind out"));
  }
}
