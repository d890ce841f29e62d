package org.brakerules.linter.internal.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.decision.Verdict;

/** More than one verdict after {@code then}: which one the rule keeps, and where the others go. */
final class SeveralVerdicts {

  private static final String SUBJECT = "$part";

  /** The part of the rule before others, then what settles it, then the heavier verdict. */
  private static final Comparator<VerdictCall> BY_WEIGHT =
      Comparator.comparing(SeveralVerdicts::isOfSubject)
          .thenComparing(SeveralVerdicts::settles)
          .thenComparing(call -> call.verdict().map(VerdictWord::verdict).orElse(Verdict.REUSE));

  private final AuthoredRule rule;
  private final List<VerdictCall> calls = new ArrayList<>();

  SeveralVerdicts(AuthoredRule rule) {
    this.rule = rule;
    List<Token> action = rule.block().action();
    int end = action.size();
    for (int at = end - 1; at >= 0; at--) {
      if (action.get(at).is("verdict")) {
        calls.add(0, new VerdictCall(action.subList(at, end)));
        end = at;
      }
    }
  }

  int count() {
    return calls.size();
  }

  String remedy(RuleIds ids) {
    VerdictCall kept = calls.stream().max(BY_WEIGHT).orElseThrow();
    StringBuilder remedy = new StringBuilder("keep " + text(kept));
    for (VerdictCall call : calls) {
      if (!call.equals(kept)) {
        remedy.append(
            isNeedlessBeside(kept, call)
                ? "; take " + text(call) + " out"
                : "; " + ownRule(call, ids.next()));
      }
    }
    return remedy.toString();
  }

  /** Of two verdicts that settle one part the milder never counts; a hold or a look does. */
  private boolean isNeedlessBeside(VerdictCall kept, VerdictCall call) {
    boolean ofOnePart = part(kept).equals(part(call));
    return ofOnePart
        && (call.verdict().isEmpty() || settles(call) || text(call).equals(text(kept)));
  }

  private String ownRule(VerdictCall call, String id) {
    String naming =
        isOfSubject(call) ? "" : ", and let $part name there what " + part(call) + " names here";
    return "give %s a rule of its own with the same conditions, %s, at the end of the file%s"
        .formatted(text(call), id, naming);
  }

  private String text(VerdictCall call) {
    List<Token> said = call.action().stream().takeWhile(token -> !token.is(";")).toList();
    return rule.source().text().substring(said.get(0).offset(), said.get(said.size() - 1).end());
  }

  private static boolean settles(VerdictCall call) {
    return call.verdict().filter(VerdictWord::settles).isPresent();
  }

  private static boolean isOfSubject(VerdictCall call) {
    return part(call).equals(SUBJECT);
  }

  private static String part(VerdictCall call) {
    Optional<Token> variable = call.action().stream().filter(Token::isVariable).findFirst();
    return variable.map(Token::text).orElse(SUBJECT);
  }
}
