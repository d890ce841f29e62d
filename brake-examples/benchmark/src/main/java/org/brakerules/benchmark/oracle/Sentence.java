package org.brakerules.benchmark.oracle;

import java.util.Arrays;
import java.util.List;
import org.brakerules.model.part.PartKind;

/** One sentence of the trade: a part of which something is known, and what follows. */
record Sentence(Subject subject, List<Effect> effects) {

  static Sentence when(Subject subject, Effect... effects) {
    return new Sentence(
        subject, Arrays.stream(effects).map(effect -> effect.from(subject.kind())).toList());
  }

  /** A sentence on parts that were found and do not go back. */
  static Sentence whenRenewed(PartKind kind, Effect... effects) {
    return when(Subject.renewed(kind), effects);
  }
}
