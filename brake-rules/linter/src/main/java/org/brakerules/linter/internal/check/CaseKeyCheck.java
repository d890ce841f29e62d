package org.brakerules.linter.internal.check;

import java.util.List;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.CaseKey;

/** A key that is misspelt would be read by nobody, and the case would pass without it. */
final class CaseKeyCheck implements Check {

  private static final List<String> KEYS = CaseKey.words();

  @Override
  public void check(RuleBase base, Findings findings) {
    base.cases()
        .forEach(
            one -> one.written().fieldNames().forEachRemaining(key -> check(one, key, findings)));
  }

  private static void check(AuthoredCase one, String key, Findings findings) {
    if (!KEYS.contains(key)) {
      findings.add(
          LintKind.CASE_KEY,
          one.spots().key("/" + key),
          one.says("\"" + key + "\" is no key of a case"),
          Remedy.known(key, KEYS, "write one of " + String.join(", ", KEYS)));
    }
  }
}
