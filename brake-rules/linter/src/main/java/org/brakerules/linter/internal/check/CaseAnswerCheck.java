package org.brakerules.linter.internal.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.AuthoredCase.Word;
import org.brakerules.linter.internal.cases.CaseKey;
import org.brakerules.linter.internal.language.Words;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.RoadAnswer;

/** What a case expects of a part is something that a part can come out as, and one thing only. */
final class CaseAnswerCheck implements Check {

  private static final List<String> DISPOSITIONS = Words.all(Disposition.class);
  private static final List<String> ROAD_ANSWERS = Words.all(RoadAnswer.class);

  @Override
  public void check(RuleBase base, Findings findings) {
    base.cases()
        .forEach(
            one -> {
              check(one, one.wordsBelow(CaseKey.THEN), DISPOSITIONS, "disposition", findings);
              check(one, one.names(CaseKey.ALSO), DISPOSITIONS, "disposition", findings);
              check(one, one.wordsBelow(CaseKey.ROAD), ROAD_ANSWERS, "road answer", findings);
              checkOnce(one, findings);
            });
  }

  private static void check(
      AuthoredCase one, List<Word> answers, List<String> known, String what, Findings findings) {
    answers.stream()
        .filter(answer -> !known.contains(answer.text()))
        .forEach(
            answer ->
                findings.add(
                    LintKind.CASE_ANSWER,
                    answer.spot(),
                    one.says("\"" + answer.text() + "\" is no " + what),
                    Remedy.known(answer.text(), known, Remedy.oneOf(known))));
  }

  private static void checkOnce(AuthoredCase one, Findings findings) {
    List<Word> named = new ArrayList<>(one.names(CaseKey.THEN));
    named.addAll(one.wordsBelow(CaseKey.ALSO));
    Set<String> seen = new HashSet<>();
    named.stream()
        .filter(path -> !seen.add(path.text()))
        .forEach(
            path ->
                findings.add(
                    LintKind.CASE_ANSWER,
                    path.spot(),
                    one.says("\"" + path.text() + "\" is named twice under then and also"),
                    "name each part once"));
  }
}
