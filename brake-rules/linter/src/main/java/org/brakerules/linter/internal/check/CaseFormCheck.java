package org.brakerules.linter.internal.check;

import com.fasterxml.jackson.databind.JsonNode;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.CaseKey;

/** Every file of cases can be read, and every key has something of its form behind it. */
final class CaseFormCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.caseFiles()
        .flatMap(file -> file.mistakes().stream())
        .forEach(mistake -> findings.add(LintKind.CASE_FORM, mistake, ""));
    base.cases().forEach(one -> check(one, findings));
  }

  private static void check(AuthoredCase one, Findings findings) {
    for (CaseKey key : CaseKey.values()) {
      JsonNode value = one.written().path(key.word());
      if (value.isNull()) {
        add(one, key, "has nothing behind it", ", or take the key out", findings);
      } else if (!value.isMissingNode() && !key.fits(value)) {
        add(one, key, "is not written in the form that is read", "", findings);
      }
    }
  }

  private static void add(
      AuthoredCase one, CaseKey key, String what, String or, Findings findings) {
    findings.add(
        LintKind.CASE_FORM,
        one.spots().key("/" + key.word()),
        one.says("\"" + key.word() + "\" " + what),
        "write it as in " + key.example() + or);
  }
}
