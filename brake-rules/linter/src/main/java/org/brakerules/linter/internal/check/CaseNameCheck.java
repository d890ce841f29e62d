package org.brakerules.linter.internal.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.CaseFile;
import org.brakerules.linter.internal.cases.CaseKey;
import org.brakerules.linter.internal.text.Spot;

/** Every case says what it shows, in words of its own, and expects something. */
final class CaseNameCheck implements Check {

  private static final List<CaseKey> EXPECTATIONS =
      List.of(
          CaseKey.FIRES,
          CaseKey.NEAR,
          CaseKey.SPEAKS,
          CaseKey.THEN,
          CaseKey.ALSO,
          CaseKey.HOLDS,
          CaseKey.NEEDS,
          CaseKey.ROAD);

  @Override
  public void check(RuleBase base, Findings findings) {
    base.caseFiles().forEach(file -> checkNames(file, findings));
    base.cases().forEach(one -> checkExpectations(one, findings));
  }

  private static void checkNames(CaseFile file, Findings findings) {
    Map<String, Spot> seen = new HashMap<>();
    for (AuthoredCase one : file.cases()) {
      Spot spot = one.spots().key("/" + CaseKey.CASE.word());
      Spot first = seen.putIfAbsent(one.name(), spot);
      if (one.name().isEmpty()) {
        findings.add(
            LintKind.CASE_NAME,
            spot,
            "a case without a name",
            "begin it with \"- case:\" and what it shows, and on which side of the limit");
      } else if (first != null) {
        findings.add(
            LintKind.CASE_NAME,
            spot,
            one.says("the case in line " + first.line() + " has the same name"),
            "say in the name what tells the two apart");
      }
    }
  }

  private static void checkExpectations(AuthoredCase one, Findings findings) {
    if (EXPECTATIONS.stream().noneMatch(one::has)) {
      findings.add(
          LintKind.CASE_EXPECTS_NOTHING,
          one.spots().key("/" + CaseKey.CASE.word()),
          one.says("it expects nothing, so it shows nothing"),
          "name the rule under fires or near, and what becomes of the part under then");
    }
  }
}
