package org.brakerules.linter.internal.check;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.LintProblem;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Mistake;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.linter.internal.text.Token;

/** Collects what the checks find. */
final class Findings {

  private final List<LintProblem> problems = new ArrayList<>();

  List<LintProblem> sorted() {
    return problems.stream().sorted().distinct().toList();
  }

  void add(LintKind kind, AuthoredRule rule, int offset, String message, String remedy) {
    add(kind, rule.spot(offset), rule.id(), message, remedy);
  }

  void add(LintKind kind, AuthoredRule rule, Token token, String message, String remedy) {
    add(kind, rule, token.offset(), message, remedy);
  }

  void add(LintKind kind, Spot spot, String message, String remedy) {
    add(kind, spot, "", message, remedy);
  }

  void add(LintKind kind, Mistake mistake, String rule) {
    add(kind, mistake.spot(), rule, mistake.message(), mistake.remedy());
  }

  private void add(LintKind kind, Spot spot, String rule, String message, String remedy) {
    problems.add(
        new LintProblem(spot.file(), spot.line(), spot.column(), rule, kind, message, remedy));
  }
}
