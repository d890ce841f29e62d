package org.brakerules.benchmark.oracle;

import java.util.HashSet;
import java.util.Set;
import org.brakerules.benchmark.oracle.Effect.Verdict;
import org.brakerules.model.decision.Disposition;

/** All that was said of one part. */
final class Findings {

  private Disposition worst = Disposition.REUSE;
  private boolean hold;
  private final Set<String> asked = new HashSet<>();
  private final Set<String> answered = new HashSet<>();

  void say(Effect effect) {
    worst = worst.worse(effect.verdict().disposition);
    hold |= effect.verdict() == Verdict.HOLD;
    if (effect.verdict() == Verdict.LOOK) {
      asked.add(effect.property());
    }
  }

  void undecided() {
    worst = worst.worse(Disposition.UNDECIDED);
  }

  /** A finding was spoken of. */
  void answer(Subject by) {
    answered.addAll(by.signs());
    answered.addAll(by.limits());
  }

  Set<String> asked() {
    return asked;
  }

  boolean isAnswered(String finding) {
    return answered.contains(finding);
  }

  boolean isReplaced() {
    return worst == Disposition.REPLACE;
  }

  OracleDecision decision() {
    return new OracleDecision(worst, hold);
  }
}
