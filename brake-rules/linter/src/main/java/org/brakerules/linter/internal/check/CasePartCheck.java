package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.AuthoredCase.Word;
import org.brakerules.linter.internal.cases.CaseKey;
import org.brakerules.linter.internal.language.PartPaths;

/** The parts that a case names are parts that a wheel end can have. */
final class CasePartCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.cases()
        .forEach(
            one -> {
              check(one, changed(one), PartPaths::isBelowWheelEnd, findings);
              check(one, expected(one), PartPaths::isPath, findings);
            });
  }

  /** What is changed is a part of the wheel end of the case, or of the one across the axle. */
  private static Stream<Word> changed(AuthoredCase one) {
    return Stream.of(
            one.names(CaseKey.CHANGE), one.names(CaseKey.PARTNER), one.list(CaseKey.REMOVE))
        .flatMap(List::stream);
  }

  private static Stream<Word> expected(AuthoredCase one) {
    return Stream.of(
            one.names(CaseKey.THEN),
            one.wordsBelow(CaseKey.ALSO),
            one.wordsBelow(CaseKey.SPEAKS),
            one.list(CaseKey.HOLDS),
            one.names(CaseKey.ROAD))
        .flatMap(List::stream);
  }

  private static void check(
      AuthoredCase one, Stream<Word> paths, Predicate<String> isKnown, Findings findings) {
    paths
        .filter(path -> !isKnown.test(path.text()))
        .forEach(
            path ->
                findings.add(
                    LintKind.CASE_PART,
                    path.spot(),
                    one.says("\"" + path.text() + "\" is no part of a wheel end"),
                    remedy(path.text())));
  }

  private static String remedy(String path) {
    if (PartPaths.isPath(path)) {
      return "write it without the wheel end; the one across the axle is changed under partner";
    }
    return PartPaths.nearest(path)
        .map(near -> "write \"" + near + "\"")
        .orElseGet(() -> ofKind(PartPaths.of(path)));
  }

  private static String ofKind(List<String> paths) {
    return paths.isEmpty()
        ? "write the kind of part and its station, such as \"camshaft-bushing/head-end\""
        : Remedy.oneOf(paths);
  }
}
