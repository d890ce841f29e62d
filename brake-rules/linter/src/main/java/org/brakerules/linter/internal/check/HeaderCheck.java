package org.brakerules.linter.internal.check;

import java.util.List;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;
import org.brakerules.linter.internal.language.Header;

/** Every rule file begins with the same lines, so that all names mean the same everywhere. */
final class HeaderCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.ruleFiles().forEach(file -> check(file, findings));
  }

  private static void check(RuleFile file, Findings findings) {
    List<String> lines = file.source().lines();
    for (int i = 0; i < Header.LINES.size(); i++) {
      String found = i < lines.size() ? lines.get(i).stripTrailing() : "";
      if (!found.equals(Header.LINES.get(i))) {
        findings.add(
            LintKind.HEADER,
            file.source().spot(file.source().lineStart(i + 1)),
            "line " + (i + 1) + " of the header is " + shown(found),
            "write " + shown(Header.LINES.get(i)) + "; the header is the same in every rule file");
        return;
      }
    }
  }

  private static String shown(String line) {
    return line.isEmpty() ? "empty" : "\"" + line.replace("\uFEFF", "(byte order mark)") + "\"";
  }
}
